"""Files that are sent: no more of one is kept than any form here reads."""

from django.core.files.uploadhandler import TemporaryFileUploadHandler

MOST_BYTES = 16 * 1024 * 1024
"""Over the largest file that a form takes, so that the form's own sentence answers one that is too large."""


class BoundedUpload(TemporaryFileUploadHandler):
    """Keeps the beginning of a file, and how large the whole was: the form reads that first and says so."""

    def receive_data_chunk(self, raw_data: bytes, start: int) -> None:
        if start < MOST_BYTES:
            super().receive_data_chunk(raw_data, start)
