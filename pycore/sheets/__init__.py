"""What is printed: scales, cards and slips as SVG in true millimetres."""
