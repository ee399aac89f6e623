# Ladders, variants and their cues. Ids stand in crates/engine/data/catalogue.json.
# .setup: what is held and where one stands. .breath: when to breathe out. .cue1 to .cue3: what to mind.
# Words, order of levels and ready marks are common practice, no source, unless catalogue.json names one.

## Squat

ladder-squat = Squat

variant-squat-high-chair = Sit to stand, high seat
    .setup = Firm cushion on a steady chair, feet under your knees
    .breath = Breathe out standing up
    .cue1 = Lean forward until your weight is over your feet
    .cue2 = Stand up through the whole foot
    .cue3 = Sit down slowly, for three counts
variant-squat-chair = Sit to stand from a chair
    .setup = Steady chair against a wall, feet hip-width apart
    .breath = Breathe out standing up
    .cue1 = Nose over toes, then stand
    .cue2 = Knees follow the line of the toes
    .cue3 = Touch the seat softly before you rise again
variant-squat-goblet-chair = Goblet squat to a chair
    .setup = One weight upright at your chest, chair behind you
    .breath = Breathe out standing up
    .cue1 = Keep the weight close to your breastbone
    .cue2 = Sit back until you just touch the seat
    .cue3 = Push the floor away to stand
variant-squat-free = Free squat
    .setup = Feet a little wider than your hips, hands in front
    .breath = Breathe out standing up
    .cue1 = Hips back and down, as if to a low seat
    .cue2 = Heels stay heavy on the floor
    .cue3 = Only as deep as you can keep steady
variant-squat-goblet = Goblet squat
    .setup = One weight at your chest, feet a little wider than hips
    .breath = Breathe out standing up
    .cue1 = Sit down between your knees
    .cue2 = Elbows stay under the weight
    .cue3 = Whole foot on the floor all the way
variant-squat-two-dumbbells = Squat with two weights
    .setup = A weight in each hand, by your sides or at your shoulders
    .breath = Breathe out standing up
    .cue1 = Chest stays open on the way down
    .cue2 = Knees follow the line of the toes
    .cue3 = Stand tall before the next one

## Hip hinge

ladder-hinge = Hip hinge

variant-hinge-wall-tap = Hip hinge to the wall
    .setup = A foot’s length from a wall, your back to it
    .breath = Breathe out coming up
    .cue1 = Send your hips back to tap the wall
    .cue2 = Knees soft, shins upright
    .cue3 = Long back from head to tailbone
variant-hinge-one-dumbbell = Hip hinge, one weight
    .setup = One weight in both hands, in front of your thighs
    .breath = Breathe out coming up
    .cue1 = Hips go back before the chest tips
    .cue2 = The weight stays close to your legs
    .cue3 = Bring the hips forward to stand tall
variant-hinge-band = Hip hinge with a band
    .setup = Stand on the band, an end in each hand
    .breath = Breathe out coming up
    .cue1 = Take up the slack before the first one
    .cue2 = Hips back, shins upright
    .cue3 = Stand tall and stay there for a moment
variant-hinge-two-dumbbells = Hip hinge, two weights
    .setup = A weight in each hand, in front of your thighs
    .breath = Breathe out coming up
    .cue1 = The weights stay close to your legs
    .cue2 = Stop where your back would begin to round
    .cue3 = Push the floor away to come up
variant-hinge-barbell = Barbell hip hinge
    .setup = Bar at your thighs, hands just outside your legs
    .breath = Breathe out coming up
    .cue1 = The bar stays in touch with your legs
    .cue2 = Hips back, back long
    .cue3 = Shoulders down, away from the ears

## Offset hinge

ladder-offset-hinge = Offset hinge

variant-offset-hinge-held = Offset hinge, hand held
    .setup = One foot half a step back on its toes, one hand on the wall
    .breath = Breathe out coming up
    .cue1 = Most of your weight on the front foot
    .cue2 = Both hips face forward
    .cue3 = Fold only as far as it feels steady
variant-offset-hinge-loaded = Offset hinge with a weight
    .setup = One weight in front of you, one foot half a step back
    .breath = Breathe out coming up
    .cue1 = The front foot carries, the back toes steady you
    .cue2 = The weight stays close to the front leg
    .cue3 = Keep both hips level
variant-offset-hinge-single-held = Single-leg hinge, held
    .setup = Stand on one leg, one hand on the wall
    .breath = Breathe out coming up
    .cue1 = Soft knee in the standing leg
    .cue2 = Reach the free leg long behind you
    .cue3 = Both hip bones face the floor
variant-offset-hinge-single-free = Single-leg hinge, free
    .setup = Stand on one leg, a wall within reach
    .breath = Breathe out coming up
    .cue1 = Head and back heel move as one line
    .cue2 = Slow enough that you could stop anywhere
    .cue3 = Put the toes down when you need to
variant-offset-hinge-single-loaded = Single-leg hinge with a weight
    .setup = One weight in the hand opposite the standing leg
    .breath = Breathe out coming up
    .cue1 = Let the weight hang under the shoulder
    .cue2 = Both hip bones face the floor
    .cue3 = Put the toes down when you need to

## Bridge

ladder-bridge = Bridge

variant-bridge-two-legs = Bridge
    .setup = On your back, knees bent, feet near your hips
    .breath = Breathe out lifting
    .cue1 = Press through the heels
    .cue2 = Lift until shoulders, hips and knees line up
    .cue3 = Lower slowly, one count at a time
variant-bridge-two-legs-incline = Bridge, on an incline
    .setup = Head and back raised on firm cushions, knees bent
    .breath = Breathe out lifting
    .cue1 = Press through the heels
    .cue2 = Lift until shoulders, hips and knees line up
    .cue3 = Lower slowly, one count at a time
variant-bridge-band = Loop band bridge
    .setup = On your back, loop band just above the knees
    .breath = Breathe out lifting
    .cue1 = Press the knees gently out into the band
    .cue2 = Lift until shoulders, hips and knees line up
    .cue3 = Keep the band wide on the way down
variant-bridge-band-incline = Loop band bridge, on an incline
    .setup = Back raised on cushions, loop band above the knees
    .breath = Breathe out lifting
    .cue1 = Press the knees gently out into the band
    .cue2 = Lift until shoulders, hips and knees line up
    .cue3 = Keep the band wide on the way down
variant-bridge-paused = Paused bridge
    .setup = On your back, knees bent, feet near your hips
    .breath = Breathe out lifting
    .cue1 = Press through the heels
    .cue2 = Stay at the top for three counts, still breathing
    .cue3 = Ribs stay down, buttocks do the work
variant-bridge-paused-incline = Paused bridge, on an incline
    .setup = Head and back raised on firm cushions, knees bent
    .breath = Breathe out lifting
    .cue1 = Press through the heels
    .cue2 = Stay at the top for three counts, still breathing
    .cue3 = Ribs stay down, buttocks do the work
variant-bridge-loaded = Weighted bridge
    .setup = On your back, weight across the hip bones, belly free
    .breath = Breathe out lifting
    .cue1 = Hold the weight still with both hands
    .cue2 = Press through the heels
    .cue3 = Lower slowly, weight level
variant-bridge-loaded-incline = Weighted bridge, on an incline
    .setup = Back raised, weight across the hip bones, belly free
    .breath = Breathe out lifting
    .cue1 = Hold the weight still with both hands
    .cue2 = Press through the heels
    .cue3 = Lower slowly, weight level
variant-bridge-single-leg = One-leg bridge
    .setup = On your back, one foot down, the other leg lifted
    .breath = Breathe out lifting
    .cue1 = Press through the one heel
    .cue2 = Keep both sides of the pelvis level
    .cue3 = Smaller is fine while it stays level
variant-bridge-single-leg-incline = One-leg bridge, on an incline
    .setup = Back raised on cushions, one foot down, one leg lifted
    .breath = Breathe out lifting
    .cue1 = Press through the one heel
    .cue2 = Keep both sides of the pelvis level
    .cue3 = Smaller is fine while it stays level

## Thrust

ladder-thrust = Hip thrust

variant-thrust-two-legs = Hip thrust
    .setup = Shoulder blades on a sofa edge, or a chair against a wall
    .breath = Breathe out lifting
    .cue1 = Feet under your knees, press through the heels
    .cue2 = Lift until the hips are almost as high as the knees
    .cue3 = Chest stays the highest, ribs down
variant-thrust-kneeling = Kneeling hip thrust
    .setup = Kneel on a cushion, a chair in front of you to hold
    .breath = Breathe out coming up
    .cue1 = Sit back towards your heels, only as far as is easy
    .cue2 = Push the hips forward until you kneel tall
    .cue3 = Buttocks firm at the top, ribs over hips
variant-thrust-paused = Paused hip thrust
    .setup = Shoulder blades on a sofa edge, or a chair against a wall
    .breath = Breathe out lifting
    .cue1 = Press through the heels
    .cue2 = Stay up for three counts, still breathing
    .cue3 = Chest stays the highest, ribs down
variant-thrust-kneeling-paused = Paused kneeling hip thrust
    .setup = Kneel on a cushion, a chair in front of you to hold
    .breath = Breathe out coming up
    .cue1 = Push the hips forward until you kneel tall
    .cue2 = Stay tall for three counts, still breathing
    .cue3 = Sit back slowly
variant-thrust-loaded = Weighted hip thrust
    .setup = Shoulders on a sofa edge, weight on the hip bones, belly free
    .breath = Breathe out lifting
    .cue1 = Hold the weight still with both hands
    .cue2 = Lift until the hips are almost as high as the knees
    .cue3 = Lower slowly, chest stays the highest
variant-thrust-kneeling-loaded = Kneeling hip thrust, one weight
    .setup = Kneel on a cushion, one weight upright at your chest
    .breath = Breathe out coming up
    .cue1 = Keep the weight close to your breastbone
    .cue2 = Sit back towards your heels, only as far as is easy
    .cue3 = Push the hips forward until you kneel tall
variant-thrust-single-leg = One-leg hip thrust
    .setup = Shoulder blades on a sofa edge, one foot down, one leg lifted
    .breath = Breathe out lifting
    .cue1 = Press through the one heel
    .cue2 = Keep both sides of the pelvis level
    .cue3 = Smaller is fine while it stays level

## Split squat

ladder-split-squat = Split squat

variant-split-squat-held-short = Short split squat, held
    .setup = One foot a long step ahead, hand on a chair
    .breath = Breathe out coming up
    .cue1 = Straight down, a hand’s width is enough
    .cue2 = Front foot flat, back heel lifted
    .cue3 = Let the hand take as much as you need
variant-split-squat-full = Split squat
    .setup = One foot a long step ahead, a wall within reach
    .breath = Breathe out coming up
    .cue1 = The back knee goes towards the floor
    .cue2 = Most of your weight in the front heel
    .cue3 = Hips face forward
variant-split-squat-loaded = Split squat with two weights
    .setup = A weight in each hand, one foot a long step ahead
    .breath = Breathe out coming up
    .cue1 = Arms long, shoulders easy
    .cue2 = Front knee follows the toes
    .cue3 = Press up through the front heel
variant-split-squat-goblet = Split squat, one weight
    .setup = One weight at your chest, one foot a long step ahead
    .breath = Breathe out coming up
    .cue1 = Keep the weight close to your breastbone
    .cue2 = Front knee follows the toes
    .cue3 = Press up through the front heel
variant-split-squat-rear-foot = Split squat, rear foot raised
    .setup = Back foot on a step or chair seat, a wall within reach
    .breath = Breathe out coming up
    .cue1 = The front leg does the work
    .cue2 = A slight lean forward is right
    .cue3 = Down only as far as you stay level
variant-split-squat-rear-foot-loaded = Rear foot raised, two weights
    .setup = Back foot on a step or chair seat, weights in both hands
    .breath = Breathe out coming up
    .cue1 = The front leg does the work
    .cue2 = Weights hang still by your sides
    .cue3 = Down only as far as you stay level

## Lunge

ladder-lunge = Lunge

variant-lunge-reverse-held = Reverse lunge, held
    .setup = Stand tall, one hand on a wall or a chair back
    .breath = Breathe out coming up
    .cue1 = One foot steps back, onto its toes
    .cue2 = Down a hand’s width, or as far as is easy
    .cue3 = Push through the front heel to step back up
variant-lunge-reverse = Reverse lunge
    .setup = Stand tall, feet hip-width apart, a wall within reach
    .breath = Breathe out coming up
    .cue1 = Long step back, the front shin stays upright
    .cue2 = The back knee goes towards the floor
    .cue3 = Push through the front heel to step back up
variant-lunge-reverse-loaded = Reverse lunge with two weights
    .setup = A weight in each hand, feet hip-width apart
    .breath = Breathe out coming up
    .cue1 = Weights hang still by your sides
    .cue2 = Front knee follows the toes
    .cue3 = Push through the front heel to step back up
variant-lunge-reverse-goblet = Reverse lunge, one weight
    .setup = One weight at your chest, feet hip-width apart
    .breath = Breathe out coming up
    .cue1 = Keep the weight close to your breastbone
    .cue2 = Front knee follows the toes
    .cue3 = Push through the front heel to step back up
variant-lunge-walking = Walking lunge
    .setup = A clear path along a wall, one step after the other
    .breath = Breathe out coming up
    .cue1 = Each step counts as one rep
    .cue2 = Steps long enough for both knees to bend
    .cue3 = Stand tall between two steps
variant-lunge-walking-loaded = Walking lunge with two weights
    .setup = A weight in each hand, a clear path along a wall
    .breath = Breathe out coming up
    .cue1 = Each step counts as one rep
    .cue2 = Weights hang still by your sides
    .cue3 = Put them down before your steps get unsteady

## Side lunge

ladder-side-lunge = Side lunge

variant-side-lunge-short = Short side lunge, held
    .setup = Facing a counter, both hands on it, feet hip-width apart
    .breath = Breathe out coming back
    .cue1 = Short step to the side, sit back over that foot
    .cue2 = The other leg stays long
    .cue3 = Only as wide as the pelvis feels at ease
variant-side-lunge-full = Side lunge
    .setup = Feet hip-width apart, a wall within reach
    .breath = Breathe out coming back
    .cue1 = Wide step to the side, sit back over that foot
    .cue2 = Knee follows the toes, the other leg stays long
    .cue3 = Push the floor away to come back
variant-side-lunge-goblet = Side lunge, one weight
    .setup = One weight at your chest, feet hip-width apart
    .breath = Breathe out coming back
    .cue1 = Keep the weight close to your breastbone
    .cue2 = Sit back over the bent leg, chest open
    .cue3 = Push the floor away to come back

## Step-up

ladder-step-up = Step-up

variant-step-up-10-held = Low step-up, held
    .setup = Step of about 10 cm, one hand on a wall or rail
    .breath = Breathe out stepping up
    .cue1 = Whole foot on the step
    .cue2 = The top leg lifts you, the lower foot only follows
    .cue3 = Come down slowly, one foot at a time
variant-step-up-knee-lift-held = Knee lift, held
    .setup = Stand tall, one hand on a counter
    .breath = Breathe out lifting the knee
    .cue1 = Grow tall through the standing leg
    .cue2 = Lift the other knee as high as is easy
    .cue3 = Put the foot down without a sound
variant-step-up-20 = Step-up, 20 cm
    .setup = Step of about 20 cm, a wall within reach
    .breath = Breathe out stepping up
    .cue1 = Whole foot on the step
    .cue2 = Lean a little forward, then stand up tall
    .cue3 = Come down slowly on the other foot
variant-step-up-loaded = Step-up with two weights
    .setup = Step of about 20 cm, a weight in each hand
    .breath = Breathe out stepping up
    .cue1 = Weights hang still by your sides
    .cue2 = The top leg lifts you
    .cue3 = Come down as slowly as you went up
variant-step-up-goblet = Step-up, one weight
    .setup = Step of about 20 cm, one weight at your chest
    .breath = Breathe out stepping up
    .cue1 = Keep the weight close to your breastbone
    .cue2 = The top leg lifts you
    .cue3 = Look where you step
variant-step-up-30 = High step-up, 30 cm
    .setup = Sturdy step of about 30 cm, a wall within reach
    .breath = Breathe out stepping up
    .cue1 = Whole foot on the step, knee over the toes
    .cue2 = No push from the lower foot
    .cue3 = Come down slowly and with control

## Step-down

ladder-step-down = Step-down

variant-step-down-5-held = Low step-down, held
    .setup = Sturdy step of about 5 cm, one hand on a wall or rail
    .breath = Breathe out coming up
    .cue1 = Bend the top leg until the other heel taps the floor
    .cue2 = Hips level, knee over the toes
    .cue3 = Your weight stays on the top foot
variant-step-down-heel-tap-held = Heel tap in front, held
    .setup = On the floor on one leg, one hand on a chair back
    .breath = Breathe out coming up
    .cue1 = Soften the standing knee, tap the other heel in front
    .cue2 = Hips level, knee over the toes
    .cue3 = Come up tall before the next tap
variant-step-down-10 = Step-down, 10 cm
    .setup = Sturdy step of about 10 cm, a wall within reach
    .breath = Breathe out coming up
    .cue1 = Bend the top leg until the other heel taps the floor
    .cue2 = Slowly: three counts down
    .cue3 = Hips level, knee over the toes
variant-step-down-heel-tap = Heel tap in front
    .setup = On the floor on one leg, a wall within reach
    .breath = Breathe out coming up
    .cue1 = Bend the standing leg, tap the heel further ahead
    .cue2 = Hips back a little, knee over the toes
    .cue3 = Put the foot down when you need to
variant-step-down-20 = Step-down, 20 cm
    .setup = Sturdy step of about 20 cm, a wall within reach
    .breath = Breathe out coming up
    .cue1 = Bend the top leg until the other heel taps the floor
    .cue2 = Only as low as the hips stay level
    .cue3 = Push through the whole top foot to come up
variant-step-down-to-chair = Sit down on one leg
    .setup = High seat behind you, a wall beside you, one foot lifted
    .breath = Breathe out standing up
    .cue1 = Sit down on one leg, for three counts
    .cue2 = Stand up on both feet
    .cue3 = Let the free foot help when you need it

## Push-up

ladder-push-up = Push-up

variant-push-up-wall = Wall push-up
    .setup = Arm’s length from a wall, hands at chest height
    .breath = Breathe out pushing away
    .cue1 = One line from head to heels
    .cue2 = Elbows point back and a little out
    .cue3 = No ridge down the middle of the belly
variant-push-up-counter = Counter push-up
    .setup = Hands on the edge of a counter, feet well back
    .breath = Breathe out pushing away
    .cue1 = Bring the breastbone to the edge
    .cue2 = One line from head to heels
    .cue3 = No ridge down the middle of the belly
variant-push-up-chair = Push-up, hands on a chair
    .setup = Chair against a wall, hands on the seat, feet back
    .breath = Breathe out pushing away
    .cue1 = Lower the chest between your hands
    .cue2 = Hips neither sag nor rise
    .cue3 = No ridge down the middle of the belly
variant-push-up-kneeling = Kneeling push-up
    .setup = Hands under your shoulders, knees behind your hips
    .breath = Breathe out pushing away
    .cue1 = One line from head to knees
    .cue2 = Elbows point back and a little out
    .cue3 = No ridge down the middle of the belly
variant-push-up-floor = Push-up
    .setup = Hands under your shoulders, on your toes
    .breath = Breathe out pushing away
    .cue1 = One line from head to heels
    .cue2 = Lower slowly, push the floor away
    .cue3 = No ridge down the middle of the belly

## Chest press

ladder-chest-press = Chest press

variant-chest-press-seated-band = Seated band press
    .setup = On a chair, band round your upper back, ends in hands
    .breath = Breathe out pressing
    .cue1 = Sit tall, feet flat
    .cue2 = Press forward at chest height
    .cue3 = Let the band draw you back slowly
variant-chest-press-palms = Seated palm press
    .setup = Sit tall, palms together in front of your chest
    .breath = Breathe out reaching forward
    .cue1 = Press the palms firmly, then reach forward
    .cue2 = Keep pressing as you come back
    .cue3 = Shoulders stay low
variant-chest-press-incline-one = Incline press, one weight
    .setup = Lean back on firm cushions, one weight in both hands
    .breath = Breathe out pressing
    .cue1 = Weight starts close to the chest
    .cue2 = Press up towards the ceiling
    .cue3 = Elbows come down close to your sides
variant-chest-press-floor = Floor press
    .setup = On your back, knees bent, a weight in each hand
    .breath = Breathe out pressing
    .cue1 = Upper arms touch the floor softly
    .cue2 = Wrists stay over elbows
    .cue3 = Press up until the arms are long
variant-chest-press-incline-pair = Incline press, two weights
    .setup = Lean back on firm cushions, a weight in each hand
    .breath = Breathe out pressing
    .cue1 = Wrists stay over elbows
    .cue2 = Press up towards the ceiling
    .cue3 = Shoulder blades rest on the cushions
variant-chest-press-bench = Bench press, two weights
    .setup = On a flat bench, feet on the floor, a weight in each hand
    .breath = Breathe out pressing
    .cue1 = Lower until the elbows are level with the bench
    .cue2 = Wrists stay over elbows
    .cue3 = Feet stay heavy on the floor
variant-chest-press-bench-incline = Incline bench press
    .setup = On a bench raised at the head, a weight in each hand
    .breath = Breathe out pressing
    .cue1 = Lower to the upper chest
    .cue2 = Wrists stay over elbows
    .cue3 = Shoulder blades rest on the bench

## Overhead press

ladder-overhead-press = Overhead press

variant-overhead-press-seated-one-arm = Seated one-arm press
    .setup = Sit tall on a chair, one weight at one shoulder
    .breath = Breathe out pressing up
    .cue1 = Press up beside your ear
    .cue2 = Ribs stay down as the arm goes up
    .cue3 = Lower to the shoulder slowly
variant-overhead-press-seated-band = Seated one-arm band press
    .setup = Sit on one end of the band, the other at one shoulder
    .breath = Breathe out pressing up
    .cue1 = Press up beside your ear
    .cue2 = Ribs stay down as the arm goes up
    .cue3 = Do not let the band pull you down
variant-overhead-press-seated-reach = Seated overhead reach
    .setup = Sit tall on a chair, hands at your shoulders
    .breath = Breathe out reaching up
    .cue1 = Reach both hands up beside your ears
    .cue2 = Ribs stay down as the arms go up
    .cue3 = Shoulders low again at the bottom
variant-overhead-press-seated-two-arms = Seated press, two weights
    .setup = Sit tall on a chair, a weight at each shoulder
    .breath = Breathe out pressing up
    .cue1 = Press both up beside your ears
    .cue2 = Ribs stay down, neck long
    .cue3 = Lower to the shoulders slowly
variant-overhead-press-seated-one-weight = Seated press, one weight
    .setup = Sit tall on a chair, one weight in both hands
    .breath = Breathe out pressing up
    .cue1 = Press from the chest to above the head
    .cue2 = Ribs stay down, neck long
    .cue3 = Lower slowly in front of your face
variant-overhead-press-standing = Standing press, two weights
    .setup = Feet hip-width apart, a weight at each shoulder
    .breath = Breathe out pressing up
    .cue1 = Stand tall, buttocks gently firm
    .cue2 = Press both up beside your ears
    .cue3 = Stop before your back arches
variant-overhead-press-standing-one = Standing press, one weight
    .setup = Feet hip-width apart, one weight in both hands
    .breath = Breathe out pressing up
    .cue1 = Stand tall, buttocks gently firm
    .cue2 = Press from the chest to above the head
    .cue3 = Stop before your back arches
variant-overhead-press-barbell = Standing barbell press
    .setup = Bar at your collarbones, hands outside your shoulders
    .breath = Breathe out pressing up
    .cue1 = Stand tall, buttocks gently firm
    .cue2 = The bar passes close to your face
    .cue3 = Stop before your back arches

## Row

ladder-row = Row

variant-row-seated-band = Seated band row
    .setup = On a chair, band fixed in front of you at rib height
    .breath = Breathe out pulling
    .cue1 = Tug the band first: it has to hold
    .cue2 = Elbows go back close to your sides
    .cue3 = Let the band draw you forward slowly
variant-row-seated-towel = Seated towel row
    .setup = Sit tall, towel round one foot, an end in each hand
    .breath = Breathe out pulling
    .cue1 = Press the foot away as you pull
    .cue2 = Elbows go back close to your sides
    .cue3 = Change feet halfway
variant-row-chair-supported = Supported row
    .setup = Forearm on a chair back, weight in the other hand
    .breath = Breathe out pulling
    .cue1 = Elbow goes up past your ribs
    .cue2 = Back long, both shoulders level
    .cue3 = Lower until the arm is long
variant-row-hinged = Hinged row, two weights
    .setup = Hips folded back, a weight in each hand
    .breath = Breathe out pulling
    .cue1 = Hold the fold still while the arms work
    .cue2 = Elbows go up close to your ribs
    .cue3 = Lower until the arms are long
variant-row-hinged-one = Hinged row, one weight
    .setup = Hips folded back, one weight in both hands
    .breath = Breathe out pulling
    .cue1 = Hold the fold still while the arms work
    .cue2 = Pull towards the lower ribs
    .cue3 = Lower until the arms are long
variant-row-hinged-barbell = Barbell row
    .setup = Hips folded back, bar just below the knees
    .breath = Breathe out pulling
    .cue1 = Hold the fold still while the arms work
    .cue2 = Pull towards the lower ribs
    .cue3 = Shoulders stay away from the ears
variant-row-hinged-band = Hinged band row
    .setup = Stand on the band, hips folded, an end in each hand
    .breath = Breathe out pulling
    .cue1 = Hold the fold still while the arms work
    .cue2 = Elbows go up close to your ribs
    .cue3 = Lower slowly against the band
variant-row-suspended = Suspended row
    .setup = A strap in each hand, lean back on your heels
    .breath = Breathe out pulling
    .cue1 = One line from head to heels
    .cue2 = Bring the ribs to the handles
    .cue3 = Walk the feet forward to make it harder

## Vertical pull

ladder-vertical-pull = Vertical pull

variant-vertical-pull-band = Seated band pull-down
    .setup = On a chair, band fixed high, an end in each hand
    .breath = Breathe out pulling down
    .cue1 = Tug the band first: it has to hold
    .cue2 = Elbows go down towards your back pockets
    .cue3 = Let the arms rise slowly
variant-vertical-pull-towel = Seated towel pull-down
    .setup = Sit tall, towel held wide and taut above your head
    .breath = Breathe out pulling down
    .cue1 = Pull the ends apart all the way
    .cue2 = Bring the towel down to the chest
    .cue3 = Shoulders stay low
variant-vertical-pull-feet-assisted = Pull-up with feet helping
    .setup = Hands on the bar, feet on a steady chair
    .breath = Breathe out pulling
    .cue1 = Let the legs help as much as you need
    .cue2 = Elbows go down towards your ribs
    .cue3 = Lower slowly, still breathing
variant-vertical-pull-band-assisted = Pull-up with band help
    .setup = Band over the bar, one knee or foot in it
    .breath = Breathe out pulling
    .cue1 = Shoulders down first, then pull
    .cue2 = Ribs stay down
    .cue3 = Step out of the band with one foot on a chair
variant-vertical-pull-lowering = Slow lowering from the bar
    .setup = From a steady chair, chin above the bar
    .breath = Breathe out slowly on the way down
    .cue1 = Step off gently, do not jump
    .cue2 = Lower for five counts
    .cue3 = Feet back on the chair before the next one
variant-vertical-pull-full = Pull-up
    .setup = Hands a little wider than your shoulders
    .breath = Breathe out pulling
    .cue1 = Shoulders down first, then pull
    .cue2 = Chin over the bar without a swing
    .cue3 = Lower until the arms are long

## Arms

ladder-arms = Arms

variant-arms-curl-band = Seated band curl
    .setup = On a chair, band under both feet, an end in each hand
    .breath = Breathe out bending the arms
    .cue1 = Elbows stay beside your ribs
    .cue2 = Bring the hands up to the shoulders
    .cue3 = Let the band draw you down slowly
variant-arms-curl-hands = Seated curl against your hand
    .setup = Sit tall, one fist palm up, the other hand on its wrist
    .breath = Breathe out bending the arm
    .cue1 = One arm bends, the other hand holds against
    .cue2 = Slow and even, up and down
    .cue3 = Shoulders stay low
variant-arms-curl-seated = Seated curl, two weights
    .setup = Sit tall on a chair, a weight in each hand
    .breath = Breathe out bending the arms
    .cue1 = Elbows stay beside your ribs
    .cue2 = Bring the weights up to the shoulders
    .cue3 = Lower until the arms are long
variant-arms-curl-seated-one = Seated curl, one weight
    .setup = Front half of a chair, one weight in both hands
    .breath = Breathe out bending the arms
    .cue1 = Elbows stay beside your ribs
    .cue2 = Bring the weight up to the chest
    .cue3 = Lower it slowly
variant-arms-curl-standing = Standing curl, two weights
    .setup = Feet hip-width apart, a weight in each hand
    .breath = Breathe out bending the arms
    .cue1 = Elbows stay beside your ribs
    .cue2 = Ribs over hips, no swing
    .cue3 = Lower until the arms are long
variant-arms-curl-standing-one = Standing curl, one weight
    .setup = Feet hip-width apart, one weight in both hands
    .breath = Breathe out bending the arms
    .cue1 = Elbows stay beside your ribs
    .cue2 = Ribs over hips, no swing
    .cue3 = Lower it slowly

## Carry

ladder-carry = Carry

variant-carry-goblet = Goblet carry
    .setup = One weight held at your chest, a clear path ahead
    .breath = Easy breaths as you walk
    .cue1 = Walk tall, short quiet steps
    .cue2 = The weight stays close
    .cue3 = Ribs over hips
variant-carry-palms = Walk with palms pressed
    .setup = Palms pressed together at your chest, a clear path
    .breath = Easy breaths as you walk
    .cue1 = Walk tall, short quiet steps
    .cue2 = Press lightly and keep it even
    .cue3 = Ribs over hips
variant-carry-two-hands = Two-hand carry
    .setup = A weight in each hand, arms long by your sides
    .breath = Easy breaths as you walk
    .cue1 = Walk tall, short quiet steps
    .cue2 = Shoulders low and wide
    .cue3 = Let the weights hang still
variant-carry-one-hand = One-hand carry
    .setup = One weight by your side, the other hand free
    .breath = Easy breaths as you walk
    .cue1 = Stay upright, do not lean away
    .cue2 = Hips level with each step
    .cue3 = Same path on the other side
variant-carry-racked = Racked carry
    .setup = A weight at each shoulder, elbows close
    .breath = Easy breaths as you walk
    .cue1 = Ribs over hips, no leaning back
    .cue2 = Walk tall, short quiet steps
    .cue3 = Put the weights down before you tire

## Balance

ladder-balance = Balance

variant-balance-tandem-held = Heel to toe, held
    .setup = One foot right in front of the other, one hand on a counter
    .breath = Keep breathing, quiet and even
    .cue1 = Weight on both feet
    .cue2 = Grow tall, eyes on a point ahead
    .cue3 = Let the hand take as much as you need
variant-balance-seated = Seated foot lift
    .setup = Front half of a chair, arms crossed at your chest
    .breath = Keep breathing, quiet and even
    .cue1 = Hold one foot just off the floor
    .cue2 = Sit tall on both sit bones
    .cue3 = Put it down when you need to
variant-balance-single-held = One-leg stand, held
    .setup = Stand on one leg, one hand on a counter
    .breath = Keep breathing, quiet and even
    .cue1 = Whole foot on the floor, knee soft
    .cue2 = Hips level
    .cue3 = Two fingers will do, once it is easy
variant-balance-tandem = Heel to toe, free
    .setup = One foot right in front of the other, a counter within reach
    .breath = Keep breathing, quiet and even
    .cue1 = Weight on both feet
    .cue2 = Grow tall, eyes on a point ahead
    .cue3 = Touch the counter when you need to
variant-balance-single = One-leg stand, free
    .setup = Stand on one leg, a counter within reach
    .breath = Keep breathing, quiet and even
    .cue1 = Whole foot on the floor, knee soft
    .cue2 = Grow tall, eyes on a point ahead
    .cue3 = Put the foot down when you need to
variant-balance-tandem-reach = Heel to toe, arms reaching
    .setup = One foot right in front of the other, a counter within reach
    .breath = Keep breathing, quiet and even
    .cue1 = Reach one arm forward, then the other, slowly
    .cue2 = Grow tall, eyes on a point ahead
    .cue3 = Touch the counter when you need to

## Front plank

ladder-front-plank = Front plank

variant-front-plank-wall = Plank at the wall
    .setup = Hands on a wall at chest height, feet a step away
    .breath = Keep breathing, quiet and even
    .cue1 = Press the wall away
    .cue2 = One line from head to heels
    .cue3 = No ridge down the middle of the belly
variant-front-plank-wall-forearms = Plank at the wall, on forearms
    .setup = Forearms on a wall, elbows at chest height, feet a step away
    .breath = Keep breathing, quiet and even
    .cue1 = Press the wall away
    .cue2 = One line from head to heels
    .cue3 = No ridge down the middle of the belly
variant-front-plank-counter = Plank at the counter
    .setup = Hands on the edge of a counter, feet well back
    .breath = Keep breathing, quiet and even
    .cue1 = Press the edge away
    .cue2 = Hips neither sag nor rise
    .cue3 = No ridge down the middle of the belly
variant-front-plank-counter-forearms = Plank at the counter, on forearms
    .setup = Forearms on a counter or steady table, feet well back
    .breath = Keep breathing, quiet and even
    .cue1 = Press the counter away
    .cue2 = Hips neither sag nor rise
    .cue3 = No ridge down the middle of the belly
variant-front-plank-kneeling = Kneeling plank
    .setup = Hands under your shoulders, knees behind your hips
    .breath = Keep breathing, quiet and even
    .cue1 = Press the floor away
    .cue2 = One line from head to knees
    .cue3 = No ridge down the middle of the belly
variant-front-plank-kneeling-forearms = Kneeling plank, on forearms
    .setup = Elbows under your shoulders, knees behind your hips
    .breath = Keep breathing, quiet and even
    .cue1 = Press the floor away
    .cue2 = One line from head to knees
    .cue3 = No ridge down the middle of the belly
variant-front-plank-all-fours = Hands and knees, leaning forward
    .setup = Hands under shoulders, knees under hips
    .breath = Keep breathing, quiet and even
    .cue1 = Lean forward over the hands and stay there
    .cue2 = Press the floor away, back long
    .cue3 = No ridge down the middle of the belly
variant-front-plank-floor = Plank
    .setup = Hands under your shoulders, on your toes
    .breath = Keep breathing, quiet and even
    .cue1 = One line from head to heels
    .cue2 = Come down before it shakes
    .cue3 = No ridge down the middle of the belly
variant-front-plank-forearms = Plank, on forearms
    .setup = Elbows under your shoulders, on your toes
    .breath = Keep breathing, quiet and even
    .cue1 = One line from head to heels
    .cue2 = Come down before it shakes
    .cue3 = No ridge down the middle of the belly
variant-front-plank-knees-off = Hands and knees, knees lifted
    .setup = Hands under shoulders, knees under hips, toes tucked under
    .breath = Keep breathing, quiet and even
    .cue1 = Lift the knees just off the floor
    .cue2 = Press the floor away, back long
    .cue3 = No ridge down the middle of the belly

## Side plank

ladder-side-plank = Side plank

variant-side-plank-wall = Side plank at the wall
    .setup = Forearm on a wall, feet a step away from it
    .breath = Keep breathing, quiet and even
    .cue1 = Press the wall away
    .cue2 = One line from ear to ankle
    .cue3 = Step closer to make it easier
variant-side-plank-kneeling = Kneeling side plank
    .setup = On one forearm, elbow under shoulder, knees bent
    .breath = Keep breathing, quiet and even
    .cue1 = Press the floor away
    .cue2 = Lift until shoulder, hip and knee line up
    .cue3 = Come down before it shakes
variant-side-plank-straight = Side plank
    .setup = On one forearm, legs long, feet stacked or staggered
    .breath = Keep breathing, quiet and even
    .cue1 = Press the floor away
    .cue2 = One line from ear to ankle
    .cue3 = Come down before it shakes

## Dead bug

ladder-dead-bug = Dead bug

variant-dead-bug-heel-slide = Heel slide
    .setup = On your back, knees bent, change legs each time
    .breath = Breathe out sliding the heel away
    .cue1 = Low back stays where it is
    .cue2 = Slide only as far as no ridge shows
    .cue3 = Draw the heel back slowly
variant-dead-bug-heel-slide-incline = Heel slide, on an incline
    .setup = Lean back on firm cushions, change legs each time
    .breath = Breathe out sliding the heel away
    .cue1 = Back rests on the cushions
    .cue2 = Slide only as far as no ridge shows
    .cue3 = Draw the heel back slowly
variant-dead-bug-toe-tap = Toe tap
    .setup = On your back, one knee over the hip, change each time
    .breath = Breathe out lowering the toes
    .cue1 = Lower the toes to a light tap
    .cue2 = Low back stays where it is
    .cue3 = A ridge down the middle: shorten the reach
variant-dead-bug-toe-tap-incline = Toe tap, on an incline
    .setup = Lean back on firm cushions, lift one foot, then change
    .breath = Breathe out lowering the toes
    .cue1 = Lower the toes to a light tap
    .cue2 = Back rests on the cushions
    .cue3 = A ridge down the middle: shorten the reach
variant-dead-bug-leg-lower = Leg lower
    .setup = On your back, both knees over the hips, change each time
    .breath = Breathe out as the leg goes away
    .cue1 = Reach one leg long, the other knee stays
    .cue2 = Low back stays where it is
    .cue3 = A ridge down the middle: shorten the reach
variant-dead-bug-leg-reach-seated = Seated leg reach
    .setup = Front half of a chair, lean back a little, hold the seat
    .breath = Breathe out as the leg goes away
    .cue1 = Reach one leg long, heel just off the floor
    .cue2 = Sit tall, do not sink back
    .cue3 = A ridge down the middle: shorten the reach
variant-dead-bug-opposite = Opposite arm and leg
    .setup = On your back, knees over hips, arms up, change each time
    .breath = Breathe out reaching away
    .cue1 = One arm and the opposite leg reach away
    .cue2 = Low back stays where it is
    .cue3 = A ridge down the middle: shorten the reach
variant-dead-bug-opposite-seated = Seated opposite arm and leg
    .setup = Front half of a chair, lean back a little, change each time
    .breath = Breathe out reaching away
    .cue1 = One arm and the opposite leg reach away
    .cue2 = Sit tall, do not sink back
    .cue3 = A ridge down the middle: shorten the reach

## Bird dog

ladder-bird-dog = Bird dog

variant-bird-dog-slide = Leg slide, hands and knees
    .setup = Hands under shoulders, knees under hips, change each time
    .breath = Breathe out sliding the foot away
    .cue1 = Slide the toes back along the floor
    .cue2 = Press the floor away, back stays long
    .cue3 = Draw the knee back slowly
variant-bird-dog-slide-counter = Leg slide at the counter
    .setup = Hips folded, forearms on a counter, change each time
    .breath = Breathe out sliding the foot away
    .cue1 = Slide the toes back along the floor
    .cue2 = Forearms heavy, back stays long
    .cue3 = Draw the foot back slowly
variant-bird-dog-leg = Leg reach, hands and knees
    .setup = Hands under shoulders, knees under hips, change each time
    .breath = Breathe out reaching away
    .cue1 = Reach one heel long, no higher than the hip
    .cue2 = Both hip bones face the floor
    .cue3 = A ridge down the middle: shorten the reach
variant-bird-dog-leg-counter = Leg reach at the counter
    .setup = Hips folded, forearms on a counter, change each time
    .breath = Breathe out reaching away
    .cue1 = Reach one heel long, no higher than the hip
    .cue2 = Both hip bones face the floor
    .cue3 = Soft knee in the standing leg
variant-bird-dog-opposite = Bird dog
    .setup = Hands under shoulders, knees under hips, change each time
    .breath = Breathe out reaching away
    .cue1 = One arm and the opposite leg reach away
    .cue2 = Both hip bones face the floor
    .cue3 = A ridge down the middle: shorten the reach
variant-bird-dog-opposite-counter = Bird dog at the counter
    .setup = Hips folded, forearms on a counter, change each time
    .breath = Breathe out reaching away
    .cue1 = One arm and the opposite leg reach away
    .cue2 = Both hip bones face the floor
    .cue3 = The other forearm stays heavy on the counter

## Curl-up

ladder-curl-up = Curl-up

variant-curl-up-head = Head lift
    .setup = On your back, knees bent, fingertips on your belly
    .breath = Breathe out lifting
    .cue1 = Chin a little tucked, lift only the head
    .cue2 = Ribs sink as you breathe out
    .cue3 = A ridge down the middle: lift less
variant-curl-up-head-incline = Head lift, on an incline
    .setup = Lean back on firm cushions, fingertips on your belly
    .breath = Breathe out lifting
    .cue1 = Chin a little tucked, lift only the head
    .cue2 = Ribs sink as you breathe out
    .cue3 = A ridge down the middle: lift less
variant-curl-up-curl = Curl-up
    .setup = On your back, knees bent, hands on your thighs
    .breath = Breathe out lifting
    .cue1 = Chin tucked, roll up until the shoulder blades lift
    .cue2 = Hands slide towards the knees
    .cue3 = A ridge down the middle: lift less
variant-curl-up-curl-incline = Curl-up, on an incline
    .setup = Lean back on firm cushions, hands on your thighs
    .breath = Breathe out lifting
    .cue1 = Chin tucked, roll up until the shoulder blades lift
    .cue2 = Hands slide towards the knees
    .cue3 = A ridge down the middle: lift less
variant-curl-up-lean-seated = Seated lean back
    .setup = Front half of a chair, feet flat, arms crossed
    .breath = Breathe out coming up
    .cue1 = Lean back a little, back long
    .cue2 = Only as far as you can breathe easily
    .cue3 = A ridge down the middle: lean less
variant-curl-up-turn = Curl-up with a turn
    .setup = On your back, knees bent, change sides each time
    .breath = Breathe out lifting
    .cue1 = Curl up, then reach past the opposite knee
    .cue2 = Both buttocks stay heavy on the floor
    .cue3 = A ridge down the middle: lift less
variant-curl-up-turn-incline = Curl-up with a turn, on an incline
    .setup = Lean back on firm cushions, change sides each time
    .breath = Breathe out lifting
    .cue1 = Curl up, then reach past the opposite knee
    .cue2 = Both buttocks stay heavy on the floor
    .cue3 = A ridge down the middle: lift less

## Press-out

ladder-press-out = Press-out

variant-press-out-seated = Seated press-out
    .setup = On a chair, band fixed at chest height to one side
    .breath = Breathe out pressing the hands away
    .cue1 = Tug the band first: it has to hold
    .cue2 = Press out until the arms are long
    .cue3 = Do not let the band turn you
variant-press-out-hands-seated = Seated press-out, hands clasped
    .setup = Sit tall, hands clasped in front of your chest
    .breath = Breathe out pressing the hands away
    .cue1 = One hand pushes sideways, the other holds against
    .cue2 = Press out and back without turning
    .cue3 = Shoulders stay low
variant-press-out-kneeling = Kneeling press-out
    .setup = On both knees, band fixed at chest height to one side
    .breath = Breathe out pressing the hands away
    .cue1 = Buttocks gently firm, ribs over hips
    .cue2 = Press out until the arms are long
    .cue3 = Do not let the band turn you
variant-press-out-standing = Standing press-out
    .setup = Feet hip-width, band fixed at chest height to one side
    .breath = Breathe out pressing the hands away
    .cue1 = Soft knees, ribs over hips
    .cue2 = Press out until the arms are long
    .cue3 = Hips and shoulders face forward
variant-press-out-split = Press-out in a split stance
    .setup = One foot ahead, band fixed at chest height to one side
    .breath = Breathe out pressing the hands away
    .cue1 = Weight shared between both feet
    .cue2 = Press out until the arms are long
    .cue3 = Hips and shoulders face forward

## Hip abduction

ladder-hip-abduction = Hip abduction

variant-hip-abduction-clam = Clam
    .setup = On your side, knees bent, pillow under your head
    .breath = Breathe out opening the knee
    .cue1 = Heels stay together
    .cue2 = Open only as far as the pelvis keeps still
    .cue3 = Close slowly
variant-hip-abduction-seated-hands = Seated knees-out press
    .setup = On a chair, hands on the outside of both knees
    .breath = Breathe out pressing outward
    .cue1 = Knees press out, hands hold against
    .cue2 = Build up slowly, let go slowly
    .cue3 = Only as firm as feels comfortable
variant-hip-abduction-side-lying = Side-lying leg lift
    .setup = On your side, lower knee bent, top leg long
    .breath = Breathe out lifting the leg
    .cue1 = Reach the top heel long, then lift
    .cue2 = Toes point forward
    .cue3 = Pelvis keeps still, lower slowly
variant-hip-abduction-seated-band = Seated knees out, loop band
    .setup = On a chair, loop band just above the knees
    .breath = Breathe out opening the knees
    .cue1 = Sit tall, feet flat
    .cue2 = Open both knees evenly
    .cue3 = Come back slowly, do not snap
variant-hip-abduction-banded-steps = Sideways steps, loop band
    .setup = Loop band above the knees, feet hip-width apart
    .breath = Breathe out stepping sideways
    .cue1 = Small steps, the band stays taut
    .cue2 = Knees soft and over the toes
    .cue3 = Hips level, no swaying

## Hip adduction

ladder-hip-adduction = Hip adduction

variant-hip-adduction-squeeze = Seated soft squeeze
    .setup = On a chair, feet flat, pillow between your knees
    .breath = Breathe out squeezing
    .cue1 = Squeeze softly, less than half of what you could
    .cue2 = Build up slowly, let go slowly
    .cue3 = Ease off if the front of the pelvis hurts
variant-hip-adduction-side-lying = Lower leg lift, lying on your side
    .setup = On your side, top foot on the floor in front, lower leg long
    .breath = Breathe out lifting the leg
    .cue1 = Reach the lower heel long, then lift
    .cue2 = Toes point forward
    .cue3 = Pelvis keeps still, lower slowly
variant-hip-adduction-squeeze-long = Seated long squeeze
    .setup = On a chair, feet flat, pillow between your knees
    .breath = Breathe out squeezing
    .cue1 = Squeeze for one whole breath out
    .cue2 = Firm, never as hard as you can
    .cue3 = Let go wholly before the next one
variant-hip-adduction-band = Leg draw-in with a band
    .setup = Band fixed low to one side, round that ankle, chair to hold
    .breath = Breathe out drawing the leg in
    .cue1 = Tug the band first: it has to hold
    .cue2 = Draw the leg in beside the other one
    .cue3 = Stand tall, hips level, let it back slowly
variant-hip-adduction-band-seated = Seated knee draw-in with a band
    .setup = On a chair, band fixed to one side, round that thigh
    .breath = Breathe out drawing the knee in
    .cue1 = Tug the band first: it has to hold
    .cue2 = Draw the knee in to the other one
    .cue3 = Let it open again slowly

## Calf raise

ladder-calf = Calf raise

variant-calf-seated = Seated calf raise
    .setup = On a chair, feet flat under your knees
    .breath = Breathe out rising
    .cue1 = Lift the heels as high as they go
    .cue2 = Weight over the big and second toes
    .cue3 = Lower slowly until the heels are down
variant-calf-two-legs = Calf raise, held
    .setup = Feet hip-width apart, hands on a counter
    .breath = Breathe out rising
    .cue1 = Rise straight up, not forward
    .cue2 = Stay up for a moment
    .cue3 = Lower slowly until the heels are down
variant-calf-loaded = Calf raise with two weights
    .setup = A weight in each hand, a wall within reach
    .breath = Breathe out rising
    .cue1 = Weights hang still by your sides
    .cue2 = Rise straight up, not forward
    .cue3 = Lower slowly until the heels are down
variant-calf-loaded-one = Calf raise, one weight
    .setup = One weight at your chest, a wall within reach
    .breath = Breathe out rising
    .cue1 = Keep the weight close to your breastbone
    .cue2 = Rise straight up, not forward
    .cue3 = Lower slowly until the heels are down
variant-calf-loaded-seated = Seated calf raise, one weight
    .setup = On a chair, one weight across both thighs, near the knees
    .breath = Breathe out rising
    .cue1 = Hold the weight still with both hands
    .cue2 = Lift the heels as high as they go
    .cue3 = Lower slowly until the heels are down
variant-calf-single-leg = Calf raise on one leg, held
    .setup = Stand on one leg, both hands on a counter
    .breath = Breathe out rising
    .cue1 = Rise straight up, hips level
    .cue2 = Let the hands take as much as you need
    .cue3 = Lower slowly until the heel is down

## Breathing

ladder-breathing = Breathing

variant-breathing-side-lying = Breathing on your side
    .setup = On your side, pillows under head and between knees
    .breath = In through the nose, long breath out
    .cue1 = Ribs widen as you breathe in
    .cue2 = Belly and pelvic floor let go on the way in
    .cue3 = No effort: let the breath do it
variant-breathing-seated = Seated breathing
    .setup = On a chair, feet flat, hands on your lower ribs
    .breath = In through the nose, long breath out
    .cue1 = Ribs widen into your hands
    .cue2 = Pelvic floor lets go on the way in
    .cue3 = On the way out it rises by itself
variant-breathing-standing = Standing breathing
    .setup = Feet hip-width apart, knees soft, hands on your ribs
    .breath = In through the nose, long breath out
    .cue1 = Weight even on both feet
    .cue2 = Ribs widen to the sides and back
    .cue3 = Shoulders and jaw stay loose
variant-breathing-under-load = Breathing with a weight
    .setup = Stand tall, one light weight held at your chest
    .breath = In through the nose, long breath out
    .cue1 = Same calm breath as without the weight
    .cue2 = Pelvic floor lets go on the way in
    .cue3 = Put it down if you catch yourself holding
variant-breathing-sit-to-stand = Breathing with sit to stand
    .setup = Steady chair behind you, feet under your knees
    .breath = Out as you stand, in as you sit
    .cue1 = Begin to breathe out, then stand
    .cue2 = Sit down on the breath in
    .cue3 = Never hold the breath to get up

## Pelvic floor

ladder-pelvic-floor = Pelvic floor

variant-pelvic-floor-let-go = Let the pelvic floor go
    .setup = On your side, pillows under head and between knees
    .breath = In: it spreads and sinks. Out: leave it be
    .cue1 = One rep is one slow breath
    .cue2 = Jaw, belly and seat soften with it
    .cue3 = Nothing is squeezed
variant-pelvic-floor-short = Short holds on your side
    .setup = On your side, pillow between your knees
    .breath = Breathe out as you draw up
    .cue1 = As if to keep in wind, then lift forward and up
    .cue2 = Hold for one breath out
    .cue3 = Let it go wholly before the next one
variant-pelvic-floor-long = Long holds, seated
    .setup = On a firm chair, feet flat, weight on both sit bones
    .breath = Keep breathing while you hold
    .cue1 = Draw up gently, as much as you can keep
    .cue2 = Two easy breaths held, two to let go
    .cue3 = Seat, thighs and belly stay quiet
variant-pelvic-floor-standing = Holds standing up
    .setup = Stand tall, feet hip-width apart, knees soft
    .breath = Keep breathing while you hold
    .cue1 = Draw up gently for two easy breaths
    .cue2 = Stand as you would to wait for a bus
    .cue3 = Let go for as long as you held

## Mobility

ladder-mobility = Mobility

variant-mobility-side-bend-seated = Side bend, seated
    .setup = On a chair, one arm up, the other hand on the seat
    .breath = Breathe in along the open side
    .cue1 = Reach up first, then over
    .cue2 = Both sit bones stay on the seat
    .cue3 = Change sides after every breath
variant-mobility-round-all-fours = Round and lengthen on hands and knees
    .setup = Hands under shoulders, knees under hips
    .breath = Breathe out as you round
    .cue1 = Push the floor away and round the whole back
    .cue2 = Then lengthen, without hanging through
    .cue3 = Move only as far as it feels easy
variant-mobility-round-seated = Round and lengthen, seated
    .setup = On a chair, hands on your knees
    .breath = Breathe out as you round
    .cue1 = Roll back off the sit bones and round
    .cue2 = Roll forward and grow tall
    .cue3 = Shoulders stay loose
variant-mobility-open-chest-lying = Open the chest, lying on your side
    .setup = On your side, knees bent, hands together in front
    .breath = Breathe out as the arm opens
    .cue1 = The top arm draws a half circle over you
    .cue2 = Eyes follow the hand
    .cue3 = Knees stay stacked, as far as it goes by itself
variant-mobility-hip-half-kneeling = Hip opener, one knee down
    .setup = One knee on a cushion, the other foot in front, a chair to hold
    .breath = Breathe out as you move forward
    .cue1 = Tuck the seat under, then move forward a little
    .cue2 = Feel the front of the back hip
    .cue3 = Trunk stays tall

## Impact

ladder-impact = Impact

variant-impact-heel-drop = Heel drop
    .setup = Stand tall, a fingertip on the wall
    .breath = Breathe on, never hold
    .cue1 = Rise on your toes
    .cue2 = Let both heels drop and land softly
    .cue3 = Stop at any heaviness, leak or pain
variant-impact-bounce = Small bounces
    .setup = Feet hip-width apart, knees soft
    .breath = Breathe on, never hold
    .cue1 = Bounce just clear of the floor
    .cue2 = Land quietly, on the ball of the foot first
    .cue3 = Stop at any heaviness, leak or pain
variant-impact-hop = Hop on one leg
    .setup = Stand on one leg, a wall within reach
    .breath = Breathe on, never hold
    .cue1 = Small hops on the spot
    .cue2 = Land quietly, knee soft and over the toes
    .cue3 = Stop at any heaviness, leak or pain
