"""Tokens: contrast as WCAG 2.2 computes it, on every ground a colour may stand on; raw colours in tokens.css only."""

import re
from pathlib import Path

import pytest

from routines.drawing.svg import rules, tokens

STATIC = Path(__file__).resolve().parents[3] / "static"
THEMES = ("paper", "slate", "print")
RAW_COLOUR = re.compile(r"#[0-9A-Fa-f]{3,8}\b|\brgba?\(|\bhsla?\(")

TEXT, GRAPHIC = 4.5, 3.0  # WCAG 2.2, success criteria 1.4.3 and 1.4.11
PAIRS = [
    *(("--ink", ground, TEXT) for ground in ("--page", "--sheet", "--pleat", "--wash", "--blue-wash", "--tint")),
    *(("--ink-2", ground, TEXT) for ground in ("--page", "--sheet", "--pleat", "--wash")),
    *(("--accent-deep", ground, TEXT) for ground in ("--page", "--sheet", "--pleat", "--wash")),
    *(("--accent", ground, TEXT) for ground in ("--page", "--sheet", "--pleat")),
    *(("--blue", ground, TEXT) for ground in ("--page", "--sheet", "--pleat", "--blue-wash")),
    ("--on-accent", "--accent", TEXT),
    ("--on-accent", "--accent-press", TEXT),
    ("--on-blue", "--blue", TEXT),
    ("--page", "--ink", TEXT),
    *(("--edge", ground, GRAPHIC) for ground in ("--page", "--sheet", "--pleat")),
    ("--accent", "--wash", GRAPHIC),
]


def luminance(colour: str) -> float:
    """Relative luminance. Source: WCAG 2.2, definition of relative luminance (sRGB)."""
    channels = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(a: str, b: str) -> float:
    """Source: WCAG 2.2, definition of contrast ratio."""
    lighter, darker = sorted((luminance(a), luminance(b)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def test_the_formula_gives_the_known_extremes() -> None:
    assert contrast("#FFFFFF", "#000000") == pytest.approx(21)
    assert contrast("#777777", "#FFFFFF") == pytest.approx(4.48, abs=0.005)  # the well-known grey that just fails


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize(("colour", "ground", "least"), PAIRS)
def test_contrast(theme: str, colour: str, ground: str, least: float) -> None:
    assert contrast(tokens(theme)[colour], tokens(theme)[ground]) >= least


def test_every_theme_sets_the_same_colours() -> None:
    colours = [{name for name, value in tokens(theme).items() if value.startswith("#")} for theme in THEMES]
    assert colours[0] == colours[1] == colours[2]


def test_raw_colours_stand_in_the_tokens_only() -> None:
    for sheet in (STATIC / "css").rglob("*.css"):
        if sheet.name != "tokens.css":
            assert not RAW_COLOUR.search(sheet.read_text(encoding="utf-8")), sheet.name


def set_by_scripts() -> set[str]:
    """Sizes and places that a script works out, one by one or as the parts of an object."""
    found = set()
    for path in (STATIC / "js").rglob("*.js"):
        script = path.read_text(encoding="utf-8")
        found |= set(re.findall(r'setProperty\("(--[\w-]+)"', script))
        if "setProperty(`--${name}`" in script:
            found |= {f"--{name}" for name in re.findall(r'"?([\w-]+)"?: ', script)}
    return found


def test_every_token_that_is_used_exists() -> None:
    css = "\n".join(sheet.read_text(encoding="utf-8") for sheet in (STATIC / "css").rglob("*.css"))
    defined = set(re.findall(r"(--[\w-]+)\s*:", css)) | set_by_scripts()
    assert set(re.findall(r"var\((--[\w-]+)", css)) <= defined


def test_drawing_rules_hold_only_what_paper_can_write_as_attributes() -> None:
    allowed = {
        "fill", "stroke", "stroke-width", "stroke-dasharray", "stroke-linecap", "stroke-linejoin",
        "font-family", "font-weight",
    }  # fmt: skip
    assert {name for declared in rules().values() for name, _ in declared} <= allowed


def test_every_class_the_drawings_use_has_its_rule() -> None:
    used = set()
    for source in (STATIC.parent / "routines" / "drawing").glob("*.py"):
        used |= set(re.findall(r'"(g-[a-z-]+)"', source.read_text(encoding="utf-8")))
    only_on_screen = {"g-layer", "g-off", "g-cell", "g-hit", "g-small", "g-mark", "g-phrase"}
    assert used - only_on_screen <= set(rules())
