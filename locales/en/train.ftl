# Train: before, during and after a session.

figure-play = { $name }: show the movement
figure-still = { $name }
