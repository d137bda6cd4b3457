"""The plan: written, seen, kept, merged and restored; what is suggested while it is written."""
