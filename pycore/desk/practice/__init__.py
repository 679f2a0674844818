"""Practice: a sump is dealt, worked out by hand, judged, and tried change by change."""
