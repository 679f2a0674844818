"""The journeys of a person, in Chromium at phone size."""
