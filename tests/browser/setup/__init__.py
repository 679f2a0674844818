"""Setting a machine up."""
