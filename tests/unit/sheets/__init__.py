"""One file for each module of pycore.sheets."""
