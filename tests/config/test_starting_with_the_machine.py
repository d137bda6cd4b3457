"""What docs/starting_with_the_machine.md has people write can be read, and starts a command that there is."""

import configparser
import importlib.util
import plistlib
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.absent import absent

ROOT = Path(__file__).resolve().parents[2]
GUIDE = (ROOT / "docs/starting_with_the_machine.md").read_text(encoding="utf-8")


def written(language: str) -> str:
    return re.search(rf"^```{language}\n(.*?)^```$", GUIDE, re.MULTILINE | re.DOTALL)[1]


def unit() -> configparser.ConfigParser:
    parser = configparser.ConfigParser(interpolation=None)
    parser.optionxform = str
    parser.read_string(written("ini"))
    return parser


COMMANDS = {
    "linux": unit()["Service"]["ExecStart"],
    "mac": " ".join(plistlib.loads(written("xml").encode())["ProgramArguments"]),
    "windows": re.search(r'-Argument "([^"]*)"', written("powershell"))[1],
}


@pytest.mark.parametrize("command", COMMANDS.values(), ids=COMMANDS)
def test_the_command_is_one_that_run_py_knows(command):
    spec = importlib.util.spec_from_file_location("run_py", ROOT / "run.py")
    run = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(run)
    options = run.read_arguments(command.partition("run.py ")[2].split())
    assert options.command is run.serve
    assert options.lan


def test_the_unit_starts_again_after_a_failure_and_with_the_machine():
    assert unit()["Service"]["Restart"] == "on-failure"
    assert unit()["Install"]["WantedBy"] == "default.target"
    assert "enable-linger" in GUIDE


def verified(unit: str, folder: Path) -> subprocess.CompletedProcess[str]:
    if not shutil.which("systemd-analyze"):
        absent("systemd-analyze, to read the unit with")
    path = folder / "countfold.service"
    path.write_text(unit)
    command = ["systemd-analyze", "verify", "--man=no", str(path)]
    return subprocess.run(command, capture_output=True, text=True, check=False)


def test_systemd_finds_nothing_wrong_with_the_unit(tmp_path):
    there = written("ini").replace("/path/to/countfold", str(tmp_path)).replace("/usr/bin/python3", sys.executable)
    done = verified(there, tmp_path)
    assert (done.returncode, done.stdout, done.stderr) == (0, "", "")
    wrong = verified(there.replace("on-failure", "when-failing").replace("RestartSec", "RestartAfter"), tmp_path)
    assert "when-failing" in wrong.stderr
    assert "RestartAfter" in wrong.stderr


def test_no_log_lies_where_other_accounts_read_it():
    told = plistlib.loads(written("xml").encode())
    assert told["StandardOutPath"] == told["StandardErrorPath"] == "/Users/you/Library/Logs/countfold.log"


def test_windows_does_not_end_it_on_a_battery_nor_after_three_days():
    assert "-ExecutionTimeLimit (New-TimeSpan) -AllowStartIfOnBatteries -DontStopIfGoingOnBatteries" in GUIDE


def test_the_property_list_starts_again_after_a_failure():
    told = plistlib.loads(written("xml").encode())
    assert told["RunAtLoad"] is True
    assert told["KeepAlive"] == {"SuccessfulExit": False}


def test_it_says_what_was_not_tried():
    assert "none of the three was yet started by its system" in GUIDE
