"""The room sump, module by module."""
