"""The page, and the command that builds and serves it: ``python3 -m web``."""
