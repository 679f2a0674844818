"""Whole files on the command line of the office; no phone carries this room."""
