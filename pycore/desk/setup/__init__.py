"""What a shop sets up: machine, sump, fluid, instrument, water, and how each is calibrated."""
