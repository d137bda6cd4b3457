"""Backwards design."""
