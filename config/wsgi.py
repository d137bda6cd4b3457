"""The application that waitress and granian serve."""

import os

from django.core.wsgi import get_wsgi_application

from .text_gate import disarm_content_type

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "config.settings")
application = disarm_content_type(get_wsgi_application())
