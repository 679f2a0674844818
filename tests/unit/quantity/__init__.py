"""The room quantity, module by module."""
