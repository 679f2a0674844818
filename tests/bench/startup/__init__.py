"""How long the app takes to start, beside Pyodide as it comes."""
