"""Hostile and odd requests at pycore's one door and at its reader of files, for minutes."""
