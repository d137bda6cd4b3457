"""The application that waitress and granian serve. Whatever serves it also makes booklets and adds imports."""

import gc
import os

from django.core.wsgi import get_wsgi_application

from .one_pool import share_one_pool
from .room_for_calls import with_room
from .text_gate import disarm_content_type

share_one_pool()
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "config.settings")
pages = disarm_content_type(get_wsgi_application())

from routines.jobs.runner import with_jobs  # noqa: E402 - the models are there only now

application = with_room(with_jobs(pages))

# What the program is made of stays: nobody waits while Python looks through it for what could be freed, which takes 50 ms.
gc.freeze()
