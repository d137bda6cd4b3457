"""Write the page anew: `python -m tests.what_a_teacher_hears`, then read what has changed."""

import os
from pathlib import Path

import django

PAGE = Path(__file__).with_name("what_a_teacher_hears.md")

if __name__ == "__main__":
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "config.settings")
    django.setup()
    from .page import page

    PAGE.write_text(page(), encoding="utf-8")
