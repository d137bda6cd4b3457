"""Files in and out: routines as JSON in our own documented format, a grid as CSV."""
