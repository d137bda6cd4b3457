"""The scripts' own tests, run by node; and that scripts and server reduce generated events alike."""

import json
import shutil
import subprocess
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from accounts.names_of_children import as_script, look_like_names
from routines.lessons.state import reduce_events
from tests.absent import absent
from tests.routines.lessons.test_state import ROWS, made

HERE = Path(__file__).parent


@pytest.fixture(scope="module")
def node() -> str:
    return shutil.which("node") or absent("node")


def test_the_scripts_pass_their_own_tests(node):
    files = [str(path) for path in sorted(HERE.glob("*.test.js"))]
    assert files
    done = subprocess.run([node, "--test", *files], capture_output=True, text=True, timeout=120, check=False)
    assert done.returncode == 0, done.stdout[-4000:] + done.stderr[-2000:]


CALLED = """
import { namesIn } from "%s";
import { createInterface } from "node:readline";
let rule = null;
for await (const line of createInterface({ input: process.stdin })) {
  if (rule === null) rule = JSON.parse(line);
  else process.stdout.write(JSON.stringify(namesIn(JSON.parse(line), rule)) + "\\n");
}
"""


@pytest.fixture(scope="module")
def names_by_script(node) -> Iterator[Callable[[str], list[str]]]:
    script = CALLED % (HERE.parent.parent / "static/js/lesson/names.js").as_uri()
    with subprocess.Popen(
        [node, "--input-type=module", "-e", script],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, bufsize=1, encoding="utf-8",
    ) as running:  # fmt: skip
        running.stdin.write(json.dumps(as_script()) + "\n")

        def names(text: str) -> list[str]:
            running.stdin.write(json.dumps(text) + "\n")
            running.stdin.flush()
            return json.loads(running.stdout.readline())

        yield names
        running.stdin.close()


NEAR_A_NAME = ["Maya", "José", "Ñusta", "Zoë", "They", "Ellos", "Stop", "McKay", "maya", "said", "pensó", "noticed", ":",
               " ", "  ", "the tens", "2", "_", "é", ",", "\u0301", "saidy", "."]  # fmt: skip


@given(text=st.one_of(st.lists(st.sampled_from(NEAR_A_NAME), max_size=9).map("".join), st.text(max_size=30)))
def test_scripts_and_server_ask_about_the_same_names(names_by_script, text):
    assert names_by_script(text) == look_like_names(text)


@pytest.fixture(scope="module")
def reduced_by_script(node) -> Iterator[Callable[[list[dict]], dict]]:
    """One process for all lists: one list a line in, one state a line out."""
    with subprocess.Popen(
        [node, str(HERE / "reduce_lines.js")], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, bufsize=1
    ) as running:

        def reduced(events: list[dict]) -> dict:
            running.stdin.write(json.dumps(events) + "\n")
            running.stdin.flush()
            return json.loads(running.stdout.readline())

        yield reduced
        running.stdin.close()


@given(rows=st.lists(ROWS, max_size=14))
def test_scripts_and_server_reduce_alike(reduced_by_script, rows):
    events = made(rows)
    assert reduced_by_script(events) == json.loads(json.dumps(reduce_events(events).as_dict()))
