"""What the log says of a machine before anything is added."""
