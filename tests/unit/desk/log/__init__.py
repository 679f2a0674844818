"""The room log of the desk, module by module."""
