"""crossfall: a virtual tilt table for scale off-road trucks."""
