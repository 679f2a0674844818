"""The room recipe, module by module."""
