"""Broken storage, killed browsers, full disks: what was acknowledged must still be there."""
