"""The process of booklets: makes one, in a database of the server's choosing, and says on and on how far it is.

Run as `python -m routines.paper.booklet_worker`, with the environment of the server. It reads one line of JSON,
{"database": name, "job": id}, and answers in lines of JSON: {"part": part, "done": n, "total": n}, and at the end
{"file": length, "said": sentence, "refused": sentence, "error": ""} and the PDF. Saying how far it is also ends it, where
the server is gone. It writes nothing to the database.
"""

import json
import logging
import os
import sys
from pathlib import Path
from typing import Any, BinaryIO

import django
from django.conf import settings

logger = logging.getLogger(__name__)


def serve(source: BinaryIO, target: BinaryIO) -> None:
    def answer(content: dict[str, Any], rest: bytes = b"") -> None:
        try:
            target.write(json.dumps(content).encode() + b"\n" + rest)
            target.flush()
        except OSError:  # the server is gone: another goes on with this, from its beginning
            os._exit(1)

    order = json.loads(source.readline())
    settings.DATABASES["default"]["NAME"] = order["database"]  # a test's own is not the one of the settings
    django.setup()

    from django.utils.translation import gettext

    from routines.jobs.claim import Refused
    from routines.models import Job
    from routines.paper.booklet_writing import write_booklet
    from routines.paper.worker import Press

    said = refused = error = ""
    pdf = b""
    try:
        job = Job.objects.select_related("owner").filter(pk=order["job"]).first()
        if job is None:
            raise Refused(gettext("This booklet was removed."))
        written = write_booklet(
            job,
            Press(Path(settings.BASE_DIR) / "static" / "fonts"),
            lambda part, done, total: answer({"part": part, "done": done, "total": total}),
        )
        pdf, said = written.pdf, written.said
    except Refused as sentence:
        refused = str(sentence)
    except Exception as failure:
        logger.exception("A booklet could not be written")
        error = f"{type(failure).__name__}: {failure}"
    answer({"file": len(pdf), "said": said, "refused": refused, "error": error}, pdf)


if __name__ == "__main__":
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "config.settings")
    answers = sys.stdout.buffer
    sys.stdout = sys.stderr  # whatever a library prints is no answer
    serve(sys.stdin.buffer, answers)
