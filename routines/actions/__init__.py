"""Writes that touch two or more models: keyword-only functions, each one short transaction."""
