"""What happened: entries, corrections, merge, migrations, current state."""
