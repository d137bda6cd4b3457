"""The languages in which numbers are said and a class is heard."""

LANGUAGES = ("en", "es")
