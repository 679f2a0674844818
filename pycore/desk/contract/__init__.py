"""Messages field for field as in ``shared/schema``: checked, built, read and refused."""
