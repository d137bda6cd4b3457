from django.apps import AppConfig


class GradeBandsConfig(AppConfig):
    name = "grade_bands"
