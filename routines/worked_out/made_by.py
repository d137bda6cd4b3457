"""Which program it is: a mark of every source file and package that has a say in what is drawn and said of a plan.

So nobody has to remember to raise a number. Any change to these rooms makes everything anew, which costs a school the
minute that `recompute_facts` takes, and is done page by page where nobody runs it.
"""

import sys
from hashlib import sha256
from importlib.metadata import version
from pathlib import Path

HERE = Path(__file__).resolve().parent.parent
ROOMS = ("counting", "words", "drawing", "models", "worked_out")
PACKAGES = ("Babel", "sympy")


def mark_of_folder(folder: Path) -> str:
    """A mark of every file in a folder, its name and all that is in it; of nothing that Python puts there itself."""
    mark = sha256()
    for path in sorted(folder.rglob("*")):
        if path.is_file() and "__pycache__" not in path.parts:
            content = path.read_bytes()
            mark.update(f"{path.relative_to(folder).as_posix()}\0{len(content)}\0".encode() + content)
    return mark.hexdigest()


# Read as the program is loaded: files that are replaced under a running server make no other program of it.
PARTS: dict[str, str] = {
    **{room: mark_of_folder(HERE / room) for room in ROOMS},
    **{package: version(package) for package in PACKAGES},
    "Python": sys.version,
}


def made_by() -> str:
    """The mark of this program."""
    return sha256(repr(sorted(PARTS.items())).encode()).hexdigest()
