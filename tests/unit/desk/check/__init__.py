"""The room check of the desk, module by module."""
