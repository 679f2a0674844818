"""The room contract of the desk, module by module."""
