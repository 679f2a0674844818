"""What is kept: the log, backups, states, trend."""
