"""What a log says: state, files, history, and which check is due."""
