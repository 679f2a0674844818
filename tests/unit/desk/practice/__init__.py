"""The room practice of the desk, module by module."""
