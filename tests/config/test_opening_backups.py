"""Damaged, odd and malicious backup files: each is refused in a sentence, or opens to exactly what was written.

One backup is written by the command a school uses; the tests spoil copies of it.
"""

import hashlib
import json
import sqlite3
import struct
import tempfile
import zipfile
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from django.test import override_settings
from hypothesis import given
from hypothesis import strategies as st

from config import opening_backups
from config.opening_backups import ABOUT, DATABASE, BackupRefused, open_backup


class Written:
    """A sound backup: its bytes, what is in it, and the key of the server that made it."""

    def __init__(self, folder: Path) -> None:
        (path,) = (folder / "backups").glob("*.zip")
        self.file = path.read_bytes()
        self.key = (folder / "secret_key").read_text()
        with zipfile.ZipFile(path) as archive:
            self.about, self.database = archive.read(ABOUT), archive.read(DATABASE)


@pytest.fixture(scope="session")
def written(founded) -> Written:
    return Written(founded)


def opened(written: Written, file: bytes, *, from_another_server: bool = False) -> bytes | str:
    """The database inside, or the sentence of the refusal. Whatever else is raised fails the test."""
    with tempfile.TemporaryDirectory() as place, override_settings(SECRET_KEY=written.key):
        path = Path(place) / "some.zip"
        path.write_bytes(file)
        try:
            return open_backup(path, Path(place), from_another_server=from_another_server).read_bytes()
        except BackupRefused as refusal:
            said = str(refusal)
    assert said.startswith("some.zip ")
    assert said.endswith(".")
    return said


def packed(pack: Callable[[zipfile.ZipFile], None]) -> bytes:
    with tempfile.TemporaryFile() as file:
        with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as archive:
            pack(archive)
        file.seek(0)
        return file.read()


def with_about(written: Written, about: str | bytes) -> bytes:
    def pack(archive: zipfile.ZipFile) -> None:
        archive.writestr(DATABASE, written.database)
        archive.writestr(ABOUT, about)

    return packed(pack)


def with_database(
    written: Written, change: Callable[[sqlite3.Connection], object], *, server: str = "elsewhere"
) -> bytes:
    """A backup whose own checksum fits, as whoever wishes to deceive would make it."""
    with tempfile.TemporaryDirectory() as place:
        path = Path(place) / DATABASE
        path.write_bytes(written.database)
        with closing(sqlite3.connect(path)) as database:
            change(database)
            database.commit()
        changed = path.read_bytes()

    def pack(archive: zipfile.ZipFile) -> None:
        archive.writestr(DATABASE, changed)
        plain = hashlib.sha256(changed).hexdigest()
        archive.writestr(ABOUT, json.dumps({**json.loads(written.about), "plain": plain, "server": server}))

    return packed(pack)


def refused(written: Written, file: bytes, **options: bool) -> str:
    said = opened(written, file, **options)
    assert isinstance(said, str), "it was opened"
    return said


def test_a_sound_backup_opens_to_what_was_written(written):
    assert opened(written, written.file) == written.database


# Damaged by chance


@given(flips=st.lists(st.tuples(st.floats(0, 1, exclude_max=True), st.integers(0, 7)), min_size=1, max_size=4))
def test_flipped_bits(written, flips):
    file = bytearray(written.file)
    for place, bit in flips:
        file[int(place * len(file))] ^= 1 << bit
    assert isinstance(said := opened(written, bytes(file)), str) or said == written.database


@given(from_end=st.integers(1, 900), bit=st.integers(0, 7))
def test_flipped_bits_where_the_file_says_what_is_in_it(written, from_end, bit):
    file = bytearray(written.file)
    file[-min(from_end, len(file))] ^= 1 << bit
    assert isinstance(said := opened(written, bytes(file)), str) or said == written.database


@given(cut=st.floats(0, 1), length=st.integers(0, 5000), junk=st.binary(max_size=200))
def test_a_piece_missing_or_put_in(written, cut, length, junk):
    at = int(cut * len(written.file))
    file = written.file[:at] + junk + written.file[at + length :]
    assert isinstance(said := opened(written, file), str) or said == written.database


@given(st.binary(max_size=300))
def test_any_bytes(written, file):
    refused(written, file)


# What the file says about itself

JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=20),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=5), inner, max_size=3),
    max_leaves=8,
)


@given(field=st.sampled_from(["format", "made_at", "server", "migrations", "plain", "keyed", "another"]), value=JSON)
def test_any_value_in_any_field(written, field, value):
    about = {**json.loads(written.about), field: value}
    said = opened(written, with_about(written, json.dumps(about)), from_another_server=True)
    # From another server this program can't know the date, the mark and the keyed checksum to be wrong.
    assert isinstance(said, str) or (said == written.database and field in ("made_at", "server"))


@given(JSON)
def test_any_json(written, value):
    refused(written, with_about(written, json.dumps(value)))


@pytest.mark.parametrize(
    "about",
    [
        "[" * 100_000,
        '{"format":' * 50_000,
        '{"format": ' + "9" * 5_000 + "}",
        '{"format": 1e999}',
        "",
        "\x00",
        b"\xff\xfe\x00",
        b"\xef\xbb\xbf{}",
        '"\\ud800"',
        " " * 2_000_000,
    ],
    ids=["deep list", "deep object", "huge number", "infinite", "empty", "NUL", "UTF-16", "BOM", "surrogate", "long"],
)
def test_odd_json(written, about):
    assert "no backup of Countfold, or is damaged" in refused(written, with_about(written, about))


def test_a_changed_database(written):
    def pack(archive: zipfile.ZipFile) -> None:
        archive.writestr(DATABASE, written.database.replace(b"Ada Ames", b"Bob Ames"))
        archive.writestr(ABOUT, written.about)

    assert "its checksum does not fit" in refused(written, packed(pack))


def test_a_changed_database_with_its_plain_checksum_made_anew(written):
    change = "UPDATE accounts_user SET display_name = 'Bob Ames'"
    file = with_database(written, lambda database: database.execute(change), server=json.loads(written.about)["server"])
    assert "was changed after it was made" in refused(written, file)


def test_a_changed_date(written):
    about = json.dumps({**json.loads(written.about), "made_at": "2030-01-01T00:00:00+00:00"})
    assert "was changed after it was made" in refused(written, with_about(written, about))


def test_a_migration_to_come_is_called_newer(written):
    about = json.dumps({**json.loads(written.about), "migrations": ["accounts.9999_from_the_future"]})
    assert "made by a newer Countfold" in refused(written, with_about(written, about))


def test_a_format_to_come_is_called_newer(written):
    about = json.dumps({**json.loads(written.about), "format": 2})
    assert "made by a newer Countfold" in refused(written, with_about(written, about))


# How it is packed


@pytest.mark.parametrize("method", [zipfile.ZIP_BZIP2, zipfile.ZIP_LZMA])
@pytest.mark.parametrize("name", [DATABASE, ABOUT])
def test_another_compression(written, method, name):
    def pack(archive: zipfile.ZipFile) -> None:
        archive.writestr(DATABASE, written.database, compress_type=method if name == DATABASE else None)
        archive.writestr(ABOUT, written.about, compress_type=method if name == ABOUT else None)

    assert "packed in another way" in refused(written, packed(pack))


def directory_entry(file: bytes, name: str) -> int:
    """Where the central directory speaks of this member (APPNOTE 4.3.12)."""
    at = file.rindex(b"PK\x01\x02", 0, file.rindex(name.encode()))
    assert file[at + 46 : at + 46 + len(name)] == name.encode()
    return at


def patched(file: bytes, at: int, value: bytes) -> bytes:
    return file[:at] + value + file[at + len(value) :]


@pytest.mark.parametrize("method", [1, 9, 93, 95, 98, 99, 65535])
def test_an_unknown_compression(written, method):
    file = patched(written.file, directory_entry(written.file, DATABASE) + 10, struct.pack("<H", method))
    assert "packed in another way" in refused(written, file)


@pytest.mark.parametrize("flag", [0x1, 0x20, 0x40, 0x2000])
@pytest.mark.parametrize("name", [DATABASE, ABOUT])
def test_an_encrypted_member(written, flag, name):
    file = patched(written.file, directory_entry(written.file, name) + 8, struct.pack("<H", flag))
    assert "locked with a passphrase" in refused(written, file)


def test_a_version_of_zip_to_come(written):
    refused(written, patched(written.file, directory_entry(written.file, DATABASE) + 6, struct.pack("<H", 255)))


@pytest.mark.parametrize("size", [0, 1, 2**31, 2**32 - 2, 2**32 - 1])
@pytest.mark.parametrize("field", [20, 24, 42], ids=["packed", "unpacked", "offset"])
def test_a_size_or_place_that_is_wrong(written, field, size):
    file = patched(written.file, directory_entry(written.file, DATABASE) + field, struct.pack("<I", size))
    said = opened(written, file)
    assert isinstance(said, str) or said == written.database  # the database lies at 0 indeed


@pytest.mark.parametrize("size", [0, 2**40, 2**63 - 1, 2**64 - 1])
def test_sizes_beyond_zip_that_are_wrong(written, size):
    def pack(archive: zipfile.ZipFile) -> None:
        archive.writestr(DATABASE, written.database)
        archive.writestr(ABOUT, written.about)
        archive.infolist()[0].extra = struct.pack("<HHQQQ", 1, 24, size, size, size)

    at = directory_entry(file := packed(pack), DATABASE)
    for field in (20, 24, 42):
        file = patched(file, at + field, b"\xff" * 4)
    refused(written, file)


def test_sizes_as_for_a_large_database_open(written):
    def pack(archive: zipfile.ZipFile) -> None:
        with archive.open(DATABASE, "w", force_zip64=True) as member:
            member.write(written.database)
        archive.writestr(ABOUT, written.about)

    assert opened(written, packed(pack)) == written.database


@pytest.mark.filterwarnings("ignore:Duplicate name")
@pytest.mark.parametrize(
    "names",
    [
        (DATABASE,),
        (ABOUT,),
        (),
        (DATABASE, ABOUT, ABOUT),
        (DATABASE, DATABASE, ABOUT),
        (DATABASE, ABOUT, "more.txt"),
        ("../" + DATABASE, ABOUT),
        (DATABASE.upper(), ABOUT),
        (DATABASE + "/", ABOUT),
    ],
)
def test_other_members_than_a_backup_has(written, names):
    def pack(archive: zipfile.ZipFile) -> None:
        for name in names:
            archive.writestr(name, written.about if name == ABOUT else written.database)

    assert "no backup of Countfold, or is damaged" in refused(written, packed(pack))


def test_a_file_that_unpacks_to_more_than_a_database_could(written, monkeypatch):
    monkeypatch.setattr(opening_backups, "ALWAYS_UNPACKED", 1_000_000)

    def pack(archive: zipfile.ZipFile) -> None:
        archive.writestr(DATABASE, bytes(20_000_000))
        archive.writestr(ABOUT, written.about)

    assert refused(written, packed(pack)) == "some.zip would unpack to 19 MB, more than a database could."


def test_more_than_is_claimed_is_never_unpacked(written):
    """A member that claims 100 bytes and holds 50 MB: no more than a piece of it is in memory or on the disk."""
    import tracemalloc

    def pack(archive: zipfile.ZipFile) -> None:
        archive.writestr(DATABASE, written.database)
        archive.writestr(ABOUT, b" " * 50_000_000)

    file = packed(pack)
    file = patched(file, directory_entry(file, ABOUT) + 24, struct.pack("<I", 100))
    tracemalloc.start()
    refused(written, file)
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak < 10_000_000


def test_a_disk_without_the_room_to_unpack(written, small_disk, tmp_path):
    path = tmp_path / "some.zip"
    path.write_bytes(written.file)
    with override_settings(SECRET_KEY=written.key), pytest.raises(BackupRefused, match="Make some room"):
        open_backup(path, small_disk("400k"))


def test_a_disk_that_fills_up_while_unpacking(written, small_disk, tmp_path, monkeypatch):
    path = tmp_path / "some.zip"
    path.write_bytes(written.file)
    monkeypatch.setattr(opening_backups, "refuse_what_is_not_read", lambda *words, **room: None)
    with override_settings(SECRET_KEY=written.key), pytest.raises(BackupRefused, match="There is no room to unpack"):
        open_backup(path, small_disk("400k"))


# A database that is not what a backup holds, from whoever can make the checksum fit


@pytest.mark.parametrize(
    "change",
    [
        lambda database: database.execute("CREATE TRIGGER t AFTER INSERT ON accounts_user BEGIN SELECT 1; END"),
        lambda database: database.execute("CREATE VIEW v AS SELECT 1"),
        lambda database: database.execute("DELETE FROM django_migrations WHERE app = 'accounts'"),
        lambda database: database.execute("DROP TABLE django_migrations"),
        lambda database: database.execute("UPDATE django_migrations SET name = x'ff'"),
        lambda database: database.execute("UPDATE accounts_user SET id = 5").connection.execute(
            "INSERT INTO django_migrations (app, name, applied) VALUES ('later', '0001', '2030-01-01')"
        ),
    ],
    ids=["trigger", "view", "migrations taken", "no migrations", "migrations that are no text", "more migrations"],
)
def test_a_database_that_is_none_of_ours(written, change):
    assert "holds a damaged database" in refused(written, with_database(written, change), from_another_server=True)
