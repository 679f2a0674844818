"""The room trend of the desk, module by module."""
