"""Stops in words: what is asked, what a child may answer, and what makes the place a good one."""

from .spoken import SpokenStop, suggest_stops

__all__ = ["SpokenStop", "suggest_stops"]
