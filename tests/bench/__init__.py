"""Figures about the built app: bytes and starts. Nothing here passes or fails."""
