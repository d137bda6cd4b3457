"""The style sheet of everything printed: the tokens of the screen, print rules, and the school's paper size."""

from base64 import b64encode
from functools import cache
from pathlib import Path

from django.conf import settings

from routines.drawing import draw_folded_glyph
from routines.drawing.glyphs import AMOUNTS
from routines.drawing.svg import tokens

SIZES = {"letter": "Letter", "a4": "A4"}

# Looks of a plan page, from the roomiest to the tightest: the first that keeps it on one page is taken.
LOOKS = (
    ":root { --text: 10.5pt; --small: 9.5pt; --gap: 14pt; --ruled: 17pt; --row: 3.5pt }",
    ":root { --text: 10pt; --small: 9pt; --gap: 11pt; --ruled: 15pt; --row: 2.5pt } .ruled-4 { display: none }",
    ":root { --text: 9.5pt; --small: 8.5pt; --gap: 8pt; --ruled: 14pt; --row: 1.5pt } .ruled-3, .ruled-4 { display: none }",
    ":root { --text: 9pt; --small: 8pt; --gap: 6pt; --ruled: 14pt; --row: 1pt } .ruled-2, .ruled-3, .ruled-4 { display: none }",
)
USUAL_LOOK = LOOKS[1]
# In a booklet plans of any length stand side by side; with this one nearly all keep to one page.
BOOKLET_LOOK = LOOKS[3]


def logo_colours() -> dict[str, str]:
    """What `_logo.html` is drawn with: custom properties cannot be read inside a drawing."""
    return {name: tokens()[f"--{name}"] for name in ("ink", "sheet", "accent")}


@cache
def paper_css(paper: str) -> str:
    """`paper` is "letter" or "a4"."""
    folder = Path(settings.BASE_DIR) / "static" / "css"
    sheets = [(folder / name).read_text(encoding="utf-8") for name in ("tokens.css", "paper.css")]
    return "\n".join([*sheets, _page_css(SIZES[paper]), _folded_glyphs()])


def _page_css(size: str) -> str:
    """Sizes, and what has a colour but belongs to the page as a whole, where custom properties cannot be read."""
    accent, quiet = tokens()["--accent"], tokens()["--ink-2"]
    margin_line = f"1.5pt solid {accent}"
    feet = " ".join(f"@bottom-{side} {{ color: {quiet} }}" for side in ("left", "right"))
    plain = "border: none; @bottom-left { border: none }"
    return (
        f"@page {{ size: {size}; border-left: {margin_line}; {feet} @bottom-left {{ border-left: {margin_line} }} }}\n"
        f"@page upright {{ size: {size}; {plain} }}\n"
        f"@page wide {{ size: {size} landscape; {plain} }}"
    )


def _folded_glyphs() -> str:
    """The small grid before an amount in a coverage, as a ground: it only repeats a word, so it must be no figure of its own."""
    box = 'content: ""; display: inline-block; width: 1.7em; height: 1.25em; margin: -0.2em 4pt 0 0; vertical-align: -0.25em'
    size = "background-size: 1.7em 1.25em; background-repeat: no-repeat"
    pictures = {amount: b64encode(draw_folded_glyph(amount, on_paper=True).encode()).decode() for amount in AMOUNTS}
    rules = (
        f".amount-{amount}::before {{ background-image: url(data:image/svg+xml;base64,{picture}) }}"
        for amount, picture in pictures.items()
    )
    return "\n".join([f".amount::before {{ {box}; {size} }}", *rules])
