"""Laws of logs, files and what is learned from them."""
