"""The room look_back of the desk, module by module."""
