# Symptom kinds, amounts and body places. Ids stand in crates/engine/data/symptoms.json and rules.json.
# The value is the plain label of the chip, .term the trade term for the coach.
# .do is shown when the class of a mark has come out as hold or red: what to do now.
# .refer stands with the kinds that say whom to turn to, whatever their class.
# No sentence here diagnoses; each defers to her own midwife, doctor or emergency number.

## First on the mark card

symptom-heaviness = Heaviness or dragging
    .term = pelvic pressure
    .do = Rest lying on your side for a while. This movement rests until your coach, midwife or doctor has answered.
symptom-leak-effort = A leak of urine on effort
    .term = stress urinary incontinence
    .do = Empty your bladder and rest a little. This movement rests until your coach, midwife or doctor has answered.
symptom-doming = A ridge down the belly
    .term = doming of the midline
    .do = Keep to movements where the belly stays flat. This movement rests until your coach, midwife or doctor has answered.
symptom-girdle-pain = Pelvic pain, front or back
    .term = pelvic girdle pain
    .do = Stop this movement and rest in a position that eases it. This movement rests until your coach, midwife or doctor has answered.
symptom-joint-pain = Pain in a joint
    .term = joint pain
    .do = Rest this joint today. This movement rests until your coach, midwife or doctor has answered.
symptom-bulge = A new bulge in the vagina
    .term = vaginal bulging
    .do = Work for hips and legs rests for now. Ask your midwife, your doctor or a pelvic health physiotherapist to have a look.
    .refer = A pelvic health physiotherapist, or your midwife or doctor.
symptom-dizzy-brief = Dizzy for a moment
    .term = light-headedness
    .do = Sit down or lie on your side; if it does not pass, call your midwife or doctor now. Training rests until your coach, midwife or doctor has answered.
symptom-something-else = Something else
    .term = other, in her own words
    .do = If it could be one of the signs that stop training, choose that one. Otherwise this movement rests until your coach has answered.
symptom-not-sure = Not sure what it is
    .term = not yet described
    .do = If it could be one of the signs that stop training, choose that one. Otherwise this movement rests until your coach has answered.

## Signs that stop training

symptom-bleeding = Bleeding from the vagina
    .term = vaginal bleeding
    .do = Stop and rest. Call your midwife, doctor or clinic now; if it is heavy, call your emergency number.
symptom-fluid-leak = Fluid from the vagina, or unsure
    .term = possible rupture of membranes
    .do = Stop and rest. Call your midwife, doctor or clinic now, also if you cannot tell whether it is urine.
symptom-tightenings-painful = Regular, painful tightenings
    .term = contractions
    .do = Stop and rest. Call your midwife, doctor or clinic now and tell them how often they come.
symptom-baby-moving-less = Baby moving less
    .term = reduced fetal movement
    .do = Stop training. Call your midwife or maternity unit now; do not wait until tomorrow.
symptom-belly-blow = A fall or a blow to the belly
    .term = abdominal trauma
    .do = Stop and rest. Be seen today by your midwife, doctor or clinic, even if you feel well.
symptom-belly-pain = Belly pain, strong or staying
    .term = abdominal pain
    .do = Stop and rest. Call your midwife, doctor or clinic now; if it is severe, call your emergency number.
symptom-chest-pain = Chest pain
    .term = chest pain
    .do = Stop and sit down. Call your emergency number now.
symptom-breathless-before-effort = Breathless before any effort
    .term = dyspnoea at rest
    .do = Stop and sit upright. Call your emergency number now.
symptom-breathless-not-settling = Breathless, rest does not help
    .term = dyspnoea that does not settle
    .do = Stop and sit upright. Call your emergency number now.
symptom-palpitations = Racing or uneven heart that stays
    .term = palpitations
    .do = Stop and sit down. Call your midwife, doctor or clinic now; with faintness, chest pain or short breath, call your emergency number.
symptom-fainted = Fainted
    .term = syncope
    .do = Lie on your side and do not stay alone. Call your midwife, doctor or clinic now; if it happens again, call your emergency number.
symptom-dizzy-staying = Dizzy, rest does not clear it
    .term = presyncope
    .do = Lie on your side, somewhere safe. Call your midwife, doctor or clinic now.
symptom-headache = Headache, strong, growing, lasting
    .term = headache
    .do = Stop and rest. Call your midwife, doctor or clinic now; if it came suddenly and is severe, call your emergency number.
symptom-eyesight = Change in eyesight
    .term = visual disturbance
    .do = Stop and sit down, and do not drive. Call your midwife, doctor or clinic now.
symptom-calf-one-sided = One calf or leg sore or swollen
    .term = possible clot, leg
    .do = Stop, and do not rub or stretch it. Call your midwife, doctor or clinic now; with chest pain or short breath, call your emergency number.
symptom-arm-one-sided = One arm sore or swollen
    .term = possible clot, arm
    .do = Stop, and do not rub or stretch it. Call your midwife, doctor or clinic now; with chest pain or short breath, call your emergency number.
symptom-weakness = Weakness that upsets balance
    .term = muscle weakness
    .do = Sit down where you are safe. Call your midwife, doctor or clinic now; if one side is weak or speech is hard, call your emergency number.
symptom-swelling-face-hands = Sudden swelling of face or hands
    .term = oedema
    .do = Stop training. Call your midwife, doctor or clinic now; if breathing is hard, call your emergency number.
symptom-bp-very-high = Blood pressure 160/110 or more
    .term = severe hypertension
    .do = Stop and sit down. Call your midwife, doctor or clinic now and tell them both numbers; with a headache or changed eyesight, call your emergency number.
symptom-fever = Fever of 38 °C (100.4 °F) or more
    .term = fever
    .do = Stop and rest. Call your midwife, doctor or clinic now.
symptom-vomiting = Vomiting that will not stop
    .term = persistent vomiting
    .do = Stop and rest. Call your midwife, doctor or clinic now.
symptom-discharge = Foul-smelling discharge
    .term = foul vaginal discharge
    .do = Stop training. Call your midwife, doctor or clinic now.
symptom-bleeding-soaking = A pad soaked in an hour
    .term = haemorrhage
    .do = Stop and lie down. Call your midwife, doctor or clinic now; if it goes on or you feel faint, call your emergency number.
symptom-bleeding-clot = A clot as large as an egg
    .term = haemorrhage, large clot
    .do = Stop and lie down. Call your midwife, doctor or clinic now; if more follow or you feel faint, call your emergency number.
symptom-seizure = A seizure
    .term = seizure
    .do = Call your emergency number now. Lie on your side and do not stay alone.
symptom-harm-thoughts = Thoughts of harm to me or others
    .term = thoughts of harm to self or others
    .do = You do not have to carry this alone. Call your emergency or crisis number now, and stay with someone you trust.
symptom-numb-between-legs = Numb between the legs
    .term = possible cauda equina, with bladder or bowel change
    .do = Stop. Call your emergency number now, or go to emergency care; say if bladder or bowel have changed.
symptom-retention = Cannot pass urine
    .term = urinary retention
    .do = Stop training. Be seen today by your midwife, doctor or clinic.
symptom-cannot-bear-weight = Cannot put weight on a leg
    .term = unable to bear weight
    .do = Stop and take the weight off it. Be seen today by your midwife, doctor or clinic.

## Behind more

symptom-back-pain = Low back pain
    .term = low back pain
    .do = Stop this movement and rest in a position that eases it. This movement rests until your coach, midwife or doctor has answered.
symptom-wrist-pain = Wrist pain
    .term = wrist pain
    .do = Rest this joint today. This movement rests until your coach, midwife or doctor has answered.
symptom-shoulder-pain = Shoulder pain
    .term = shoulder pain
    .do = Rest this joint today. This movement rests until your coach, midwife or doctor has answered.
symptom-knee-pain = Knee pain
    .term = knee pain
    .do = Rest this joint today. This movement rests until your coach, midwife or doctor has answered.
symptom-dizzy-on-back = Dizzy or sick flat on the back
    .term = supine hypotension
    .do = Turn onto your side and stay off your back. This movement rests until your coach, midwife or doctor has answered.
symptom-tightenings-painless = Painless, irregular tightenings
    .term = Braxton Hicks
    .do = Rest, and have some water. If they become regular or painful, call your midwife, doctor or clinic now.
symptom-belly-mild = Mild belly ache that passes
    .term = abdominal discomfort
    .do = This movement rests until your coach, midwife or doctor has answered. If it grows or stays, call them now.
symptom-leak-urge = A leak of urine with an urge
    .term = urgency urinary incontinence
    .do = This movement rests until your coach, midwife or doctor has answered.
    .refer = If it is new: your midwife, your doctor or a pelvic health physiotherapist.
symptom-stool-wind = Stool or wind lost, new
    .term = anal incontinence
    .do = Work for hips and legs rests for now. Ask your midwife, your doctor or a pelvic health physiotherapist for help with it.
    .refer = A pelvic health physiotherapist, or your midwife or doctor.
symptom-bp-high = Blood pressure 140/90 or more
    .term = hypertension
    .do = Training rests. Tell your midwife or doctor both numbers today, and wait for their answer.
symptom-fatigue = Overwhelming tiredness
    .term = fatigue
    .do = Rest today. Training waits until your coach, midwife or doctor has answered.
symptom-bleeding-heavier = Bleeding heavier with activity
    .term = lochia increase
    .do = Rest today. Training waits until your midwife or doctor has answered; if a pad is soaked in an hour, call them now.
symptom-wound-infection = Wound open, redder or weeping
    .term = possible wound infection
    .do = Training rests. Have your midwife or doctor look at the wound; with fever, call them now.
symptom-wound-pain = Wound hurts more with training
    .term = wound pain, caesarean or tear
    .do = Rest today. Training waits until your midwife or doctor has answered.
symptom-soreness-both-legs = Both legs sore after training
    .term = delayed-onset muscle soreness
    .do = If it is in one leg only, or you are not sure, choose the sign for one leg. This movement rests until your coach, midwife or doctor has answered.
symptom-breast-pain = Breast pain without fever
    .term = breast pain
    .do = With fever or a red, hot patch, call your midwife or doctor now. This movement rests until your coach, midwife or doctor has answered.
symptom-low-mood = Low mood
    .term = low mood
    .do = This movement rests until your coach, midwife or doctor has answered.
    .refer = Your midwife or doctor, or someone you trust. If you think of harm to yourself or others, choose that sign.
symptom-poor-sleep = Poor sleep
    .term = poor sleep
    .do = This movement rests until your coach, midwife or doctor has answered.
    .refer = Your midwife or doctor, if it goes on or weighs on you.
symptom-nausea = Feeling sick
    .term = nausea
    .do = Rest, and sip water. This movement rests until your coach, midwife or doctor has answered.
symptom-tiredness = Ordinary tiredness
    .term = tiredness
    .do = Rest today. This movement rests until your coach, midwife or doctor has answered.

## Conditions named at screening


## How much

amount-little = A little
amount-clearly = Clearly
amount-lot = A lot

## Where

where-pelvic-floor = Pelvic floor
where-belly = Belly
where-low-back = Low back
where-pelvis-front = Front of the pelvis
where-pelvis-back = Back of the pelvis
where-hip-left = Left hip
where-hip-right = Right hip
where-knee-left = Left knee
where-knee-right = Right knee
where-wrist-left = Left wrist
where-wrist-right = Right wrist
where-shoulder-left = Left shoulder
where-shoulder-right = Right shoulder
where-chest = Chest
where-head = Head
where-calf-left = Left calf
where-calf-right = Right calf
where-elsewhere = Somewhere else
