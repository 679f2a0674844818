"""The room desk, module by module."""
