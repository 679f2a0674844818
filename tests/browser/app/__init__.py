"""The app as a whole: start, languages, settings, headers."""
