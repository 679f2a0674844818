"""The room sheets of the desk, module by module."""
