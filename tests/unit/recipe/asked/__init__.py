"""What a plan is asked with, and whole questions."""
