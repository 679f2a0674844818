"""The room reading, module by module."""
