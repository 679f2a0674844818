"""The room office, module by module."""
