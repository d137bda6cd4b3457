"""The routines app: the bank, plans, lessons, prints and coverage."""

from django.apps import AppConfig


class RoutinesConfig(AppConfig):
    name = "routines"
    default_auto_field = "django.db.models.BigAutoField"
