"""Of a file that is sent no more is kept than any form reads, and the form still says how large it was."""

from django.core.files.uploadedfile import SimpleUploadedFile

from config import uploads


def test_only_the_beginning_of_a_large_file_is_kept(visit, owner, monkeypatch):
    monkeypatch.setattr(uploads, "MOST_BYTES", 3_000_000)
    kept = []
    finished = uploads.BoundedUpload.file_complete

    def watched(self, size):
        file = finished(self, size)
        self.file.seek(0)
        kept.append((len(self.file.read()), file.size))
        return file

    monkeypatch.setattr(uploads.BoundedUpload, "file_complete", watched)
    large = SimpleUploadedFile("counts.json", b" " * (13 * 1024 * 1024))
    answer = visit(owner).post("/import/", {"file": large})
    assert answer.status_code == 422
    assert "larger than 12 MB" in answer.content.decode()
    assert kept[0][0] < 3_200_000
    assert kept[0][1] == 13 * 1024 * 1024
