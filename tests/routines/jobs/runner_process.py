"""A process beside the test's own, on the test's own database: `python runner_process.py DATABASE serve|run`."""

import os
import sys
from pathlib import Path


def main(database: str, how: str) -> None:
    import django
    from django.conf import settings
    from django.core.management import call_command

    settings.DATABASES["default"]["NAME"] = database
    if how == "serve":
        from config.serving import go_on_serving, http_server

        django.setup()
        go_on_serving(http_server("127.0.0.1", 0))
    else:
        django.setup()
        call_command("run_jobs")


if __name__ == "__main__":
    os.environ["DJANGO_SETTINGS_MODULE"] = "config.settings"
    sys.path.insert(0, str(Path(__file__).resolve().parents[3]))
    main(*sys.argv[1:])
