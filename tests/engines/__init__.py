"""The offline journey in the two browser engines besides Chromium's."""
