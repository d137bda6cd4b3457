"""The district's server by Docker Compose: its files say nothing that the program does not know, and its backup comes back.

The containers themselves are run by tests/config/test_compose_rehearsed.py, where Docker is there.
"""

import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from django.core.management import get_commands

from tests.config.commands import ROOT
from tests.config.test_workers import ON_POSTGRESQL, around, asked

__all__ = ["around"]

COMPOSE = (ROOT / "compose.yaml").read_text(encoding="utf-8")
DOCKERFILE = (ROOT / "Dockerfile").read_text(encoding="utf-8")
GUIDE = (ROOT / "docs/a_district.md").read_text(encoding="utf-8")
SETTINGS = (ROOT / "config/settings.py").read_text(encoding="utf-8")


def program(command: str) -> list[str]:
    """Each variable as it is unless told."""
    return [re.sub(r"\$\{\w+:-(\w+)\}", r"\1", word) for word in json.loads(command)]


@pytest.mark.parametrize(
    "command",
    [re.search(r"command: (\[.*\])", COMPOSE)[1], re.search(r"^CMD (\[.*\])", DOCKERFILE, re.MULTILINE)[1]],
    ids=["compose.yaml", "Dockerfile"],
)
def test_the_server_is_started_as_run_py_knows_it(command):
    python, script, *words = program(command)
    assert (python, script) == ("python3", "run.py")
    code = f"import run; options = run.read_arguments({words!r}); raise SystemExit(options.command is not run.serve)"
    assert subprocess.run([sys.executable, "-c", code], cwd=ROOT, check=False).returncode == 0


def test_the_server_listens_on_the_port_that_people_open_so_that_it_says_the_right_one():
    port = "${COUNTFOLD_PORT:-8000}"
    assert f'"--port", "{port}"' in COMPOSE
    assert f'- "{port}:{port}"' in COMPOSE
    assert f"http://127.0.0.1:{port}/health/" in COMPOSE
    assert "8000" not in COMPOSE.replace(port, "")


def test_every_setting_is_one_that_is_read():
    named = set(re.findall(r"^      (COUNTFOLD_\w+|DATABASE_URL):", COMPOSE, re.MULTILINE))
    assert len(named) >= 5
    assert named <= set(re.findall(r'environment_\w+\(\s*"(\w+)"', SETTINGS))


def test_both_begin_again_and_the_server_waits_for_the_database():
    assert COMPOSE.count("restart: unless-stopped") == 2
    assert COMPOSE.count("healthcheck:") == 2
    assert "condition: service_healthy" in COMPOSE
    assert "/health/" in COMPOSE


def test_what_the_data_need_lies_in_volumes():
    assert "database:/var/lib/postgresql/data" in COMPOSE
    assert "data:/data" in COMPOSE
    assert "COUNTFOLD_DATA: /data" in COMPOSE


def test_every_command_of_ours_in_the_guide_exists():
    commands = re.findall(r"manage\.py (\w+)", GUIDE)
    assert commands
    assert set(commands) <= set(get_commands())
    assert set(re.findall(r"exec (?:-T )?(\w+)|logs (\w+)", GUIDE)) <= {
        ("database", ""),
        ("server", ""),
        ("", "server"),
    }


def compose_is_there() -> bool:
    docker = shutil.which("docker")
    return (
        bool(docker)
        and subprocess.run([docker, "compose", "version"], capture_output=True, check=False).returncode == 0
    )


if compose_is_there():

    def test_compose_itself_can_read_the_file():
        surroundings = {**os.environ, "COUNTFOLD_DATABASE_PASSWORD": "x"}
        command = ["docker", "compose", "--file", str(ROOT / "compose.yaml"), "config", "--quiet"]
        done = subprocess.run(command, env=surroundings, capture_output=True, text=True, check=False)
        assert done.returncode == 0, done.stderr


def client_of_postgresql(name: str) -> str:
    found = sorted(Path("/usr/lib/postgresql").glob(f"*/bin/{name}"))
    return str(found[-1]) if found else name


@pytest.mark.django_db(transaction=True)
def test_the_backup_of_a_district_comes_back_whole(around, tmp_path):
    """With the very words of the guide for pg_dump and pg_restore. On SQLite backups are tests/config/test_backups.py."""
    if not ON_POSTGRESQL:
        return
    count = "from accounts.models import User; print(sorted(User.objects.values_list('sign_in_name', flat=True)))"
    asked(around, "from django.core.management import call_command; call_command('migrate', verbosity=0)")
    asked(around, "from tests.factories import *; SchoolFactory(); UserFactory(sign_in_name='ames')")
    dump = re.search(r"pg_dump (.*) > countfold\.dump", GUIDE)[1]
    restore = re.search(r"pg_restore (.*) < countfold\.dump", GUIDE)[1]
    address = around["DATABASE_URL"]

    def words(text: str) -> list[str]:
        """The guide's, with the address of the test's database in the place of the one in the container."""
        kept = text.replace("--username countfold", "").replace("--dbname countfold", f"--dbname {address}").split()
        return [address if word == "countfold" else word for word in kept]

    written = subprocess.run([client_of_postgresql("pg_dump"), *words(dump)], capture_output=True, check=True).stdout
    asked(
        around,
        "from accounts.models import User; User.objects.all().delete(); from tests.factories import *; UserFactory()",
    )
    assert "ames" not in asked(around, count)
    back = subprocess.run(
        [client_of_postgresql("pg_restore"), *words(restore)], input=written, capture_output=True, check=False
    )
    assert back.returncode == 0, back.stderr.decode()
    assert asked(around, count).strip() == "['ames']"
