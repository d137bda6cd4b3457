from django.apps import AppConfig


class FrameConfig(AppConfig):
    name = "config"

    def ready(self) -> None:
        from . import checks  # noqa: F401 - registers them
        from .forms import say_limits_plainly

        say_limits_plainly()
