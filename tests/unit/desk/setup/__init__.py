"""The room setup of the desk, module by module."""
