"""The district's server in its containers, by the commands of docs/a_district.md: opened, killed, backed up, put back.

Where Docker Compose and Docker itself are there; elsewhere tests/config/test_compose.py reads the two files.
"""

import os
import re
import socket
import subprocess
import time
import uuid
from collections.abc import Callable, Iterator
from urllib.request import urlopen

import pytest

from tests.config.commands import ROOT
from tests.config.conftest import MAKE_SCHOOL
from tests.config.test_compose import GUIDE, compose_is_there

Run = Callable[[str], str]
NAMES = "from accounts.models import User; print(list(User.objects.values_list('sign_in_name', flat=True)))"


def docker_answers() -> bool:
    return compose_is_there() and subprocess.run(["docker", "info"], capture_output=True, check=False).returncode == 0


def commands(heading: str) -> list[str]:
    """The guide's under a heading, but for those that it says are for some schools only."""
    block = re.search(rf"^## {heading}\n.*?^```\n(.*?)^```", GUIDE, re.MULTILINE | re.DOTALL)[1]
    return [line for line in block.splitlines() if not re.search(r" {4,}\S", line)]


@pytest.fixture
def port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


@pytest.fixture
def run(tmp_path, port) -> Iterator[Run]:
    """A command of the guide, in a folder of its own, for containers of their own."""
    surroundings = {
        **os.environ,
        "COMPOSE_FILE": str(ROOT / "compose.yaml"),
        "COMPOSE_PROJECT_NAME": f"countfold-{uuid.uuid4().hex[:8]}",
        "COUNTFOLD_DATABASE_PASSWORD": uuid.uuid4().hex,
        "COUNTFOLD_PORT": str(port),
    }

    def run_here(command: str) -> str:
        done = subprocess.run(
            command, shell=True, env=surroundings, cwd=tmp_path, capture_output=True, text=True, check=False
        )
        assert done.returncode == 0, f"{command}\n{done.stdout}{done.stderr}"
        return done.stdout

    yield run_here
    run_here("docker compose down --volumes --rmi local")


def manage(run: Run, code: str) -> str:
    return run(f'docker compose exec -T server .venv/bin/python manage.py shell --verbosity 0 -c "{code}"')


def health(port: int) -> str:
    for _try in range(120):
        try:
            return urlopen(f"http://127.0.0.1:{port}/health/", timeout=10).read().decode()
        except OSError:
            time.sleep(1)
    pytest.fail("The server does not open.")


if docker_answers():

    def test_a_district_opens_comes_back_by_itself_and_is_put_back_by_the_guide(run, port, tmp_path):
        run("docker compose up --detach --wait --build")
        assert '"database": "ok"' in health(port)
        said = run("docker compose logs server")
        assert "set-up code" in said
        assert f"Countfold is open: http://localhost:{port}/" in said
        manage(run, MAKE_SCHOOL.strip().replace('"', "'"))

        run("docker compose exec -T server python3 -c 'import os, signal; os.kill(1, signal.SIGTERM)'")
        assert '"database": "ok"' in health(port)
        assert "ames" in manage(run, NAMES)

        for command in commands("Backup"):
            run(command)
        key = (tmp_path / "secret_key").read_text()
        manage(run, "from accounts.models import User; User.objects.all().delete()")
        assert "ames" not in manage(run, NAMES)
        for command in commands("Putting one back"):
            run(command)
            health(port) if command.endswith("start server") else None
        assert "ames" in manage(run, NAMES)
        assert run("docker compose exec -T server cat /data/secret_key") == key
