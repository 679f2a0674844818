"""What the journal tells: losses, drift, what is due."""
