"""Makes booklets and adds imports without serving pages: for a machine of their own, beside the servers."""

import signal
import threading
from types import FrameType
from typing import Any

from django.core.management.base import BaseCommand

from routines.jobs.runner import start


class Command(BaseCommand):
    help = "Makes booklets and adds imports until it is stopped. Servers do this by themselves; this is one more hand."

    def handle(self, *args: Any, **options: Any) -> None:
        stopped = threading.Event()

        def stop(number: int, frame: FrameType | None) -> None:
            stopped.set()

        signal.signal(signal.SIGTERM, stop)
        signal.signal(signal.SIGINT, stop)
        start()
        while not stopped.wait(1):  # in steps: Windows hears a signal only between them
            pass
