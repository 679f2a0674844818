"""Pictures of every screen, for a person to look at."""
