#!/usr/bin/env python3
"""Make the school's hand: a small font of our own name from Andika (SIL Open Font License 1.1).

    python tools/build_font.py FOLDER_WITH_ANDIKA

FOLDER holds Andika-Regular.ttf and Andika-Bold.ttf (version 6; on Debian the package fonts-sil-andika puts them in
/usr/share/fonts/truetype/andika). Needs fonttools and brotli. Writes into static/fonts/:

    countfold-hand-{regular,bold}.woff2   for the screen
    countfold-hand-{regular,bold}.ttf     for paper
    OFL.txt                               the licence, as the source carries it

and routines/drawing/metrics.py, the advance widths that the drawings measure with. The same sources give the same bytes.

What is changed: only the characters in CHARACTERS stay; the font's own feature cv04 (open-top 4) becomes the default 4;
the 1 with flag and foot is the source's default and stays; other features than those needed for accents are dropped; and,
as the licence asks of a changed font with reserved names, it is called by a name of ours.
"""

import sys
from pathlib import Path

from fontTools import subset
from fontTools.ttLib import TTFont

ROOT = Path(__file__).resolve().parent.parent
FONTS = ROOT / "static" / "fonts"
METRICS = ROOT / "routines" / "drawing" / "metrics.py"
NAME = "Countfold Hand"
OPEN_FOUR = "cv04"
DIGITS = "0123456789"
LICENCE = 13  # the name record that holds the licence's text

# Latin with every letter of Spanish and the names of Europe, punctuation, money, arrows and the signs of arithmetic.
CHARACTERS = {
    *range(0x20, 0x7F),
    *range(0xA0, 0x180),
    *map(ord, "–—‘’“”„‚†•…‹›⁄€₡₱₲₹₦₩₪←↑→↓−×÷≈≠≤≥′″\u2009\u202f\u2060"),
}
# What a drawing may write: the table of widths stays small.
MEASURED = "".join(map(chr, range(0x20, 0x7F))) + "\u00a0¢£¥€°·ÁÉÍÑÓÚáéíñóúü¿¡–—‘’“”…⁄→−×÷≈≠≤≥′″"


def open_four(font: TTFont) -> str:
    """Name the glyph that the font's own open-four feature puts for 4."""
    gsub = font["GSUB"].table
    for record in gsub.FeatureList.FeatureRecord:
        if record.FeatureTag != OPEN_FOUR:
            continue
        for index in record.Feature.LookupListIndex:
            for table in gsub.LookupList.Lookup[index].SubTable:
                table = getattr(table, "ExtSubTable", table)
                if "four" in getattr(table, "mapping", {}):
                    return str(table.mapping["four"])
                if "four" in getattr(table, "alternates", {}):
                    return str(table.alternates["four"][0])
    raise SystemExit(f"The source has no feature {OPEN_FOUR} for the digit 4: is it Andika 6?")


def rename(font: TTFont, style: str) -> None:
    """Give the font our name; copyright and licence (names 0, 13, 14) stay as they were."""
    names = font["name"]
    source = f"{names.getDebugName(4)}, {names.getDebugName(5)}"
    keep = {0, 13, 14}
    names.names = [n for n in names.names if n.nameID in keep and n.platformID == 3]
    postscript = f"{NAME.replace(' ', '')}-{style}"
    for name_id, text in {
        1: NAME,
        2: style,
        3: f"1.0;{postscript}",
        4: f"{NAME} {style}",
        5: "Version 1.000",
        6: postscript,
        10: f"A subset of {source}, with its open-top 4 as the default.",
    }.items():
        names.setName(text, name_id, 3, 1, 0x409)


def shrink(source: Path, style: str) -> TTFont:
    """Return the source font with our characters, our 4 and our name."""
    font = TTFont(source, recalcTimestamp=False)
    four = open_four(font)
    for table in font["cmap"].tables:
        if table.isUnicode() and ord("4") in table.cmap:
            table.cmap[ord("4")] = four
    options = subset.Options()
    options.layout_features = ["ccmp", "locl", "mark", "mkmk", "kern"]
    options.name_IDs = ["*"]
    options.name_languages = ["*"]
    options.notdef_outline = True
    options.recalc_timestamp = False
    options.drop_tables += ["FFTM", "Glat", "Gloc", "Silf", "Sill", "Silt", "Feat", "DSIG", "meta"]
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=CHARACTERS)
    cutter.subset(font)
    rename(font, style)
    make_tabular(font)
    return font


def make_tabular(font: TTFont) -> None:
    """Give every digit the width of 0, its outline in the middle of what is added (the bold open 4 is narrower)."""
    cmap, widths, outlines = font.getBestCmap(), font["hmtx"], font["glyf"]
    width = widths[cmap[ord("0")]][0]
    for name in (cmap[ord(digit)] for digit in DIGITS):
        shift = (width - widths[name][0]) // 2
        if shift:
            outlines[name].coordinates.translate((shift, 0))
            outlines[name].recalcBounds(outlines)
            widths[name] = (width, outlines[name].xMin)


def per_mille(font: TTFont) -> dict[str, int]:
    """Advance widths of the measured characters, in thousandths of the font size."""
    cmap, units = font.getBestCmap(), font["head"].unitsPerEm
    return {c: round(font["hmtx"][cmap[ord(c)]][0] * 1000 / units) for c in MEASURED if ord(c) in cmap}


def digit_height(font: TTFont) -> int:
    """Height of the digit 1 above the baseline, in thousandths of the font size (round digits overshoot a little)."""
    glyph = font["glyf"][font.getBestCmap()[ord("1")]]
    height, units = float(glyph.yMax), float(font["head"].unitsPerEm)
    return round(height * 1000 / units)


def quoted(text: str) -> str:
    """Write a string as our formatter would: in double quotes where they need no escape."""
    literal = ascii(text)
    return f'"{literal[1:-1]}"' if literal.startswith("'") and '"' not in text else literal


def table(name: str, widths: dict[str, int]) -> str:
    """Write one table of widths as source: characters of the same width on one line."""
    by_width: dict[int, str] = {}
    for character, width in widths.items():
        by_width[width] = by_width.get(width, "") + character
    rows = "".join(f"    {width}: {quoted(by_width[width])},\n" for width in sorted(by_width))
    return f"{name}: dict[int, str] = {{\n{rows}}}\n"


METRICS_TOP = '''"""Advance widths of our font in thousandths of its size. Written by tools/build_font.py; not edited by hand."""

from functools import lru_cache

DIGIT_HEIGHT = {height}

'''

METRICS_END = '''
WIDTHS = {
    "regular": {c: w for w, characters in REGULAR.items() for c in characters},
    "bold": {c: w for w, characters in BOLD.items() for c in characters},
}


def text_width(text: str, size: float, weight: str = "regular") -> float:
    """Return how wide `text` runs at font size `size`, in the unit of `size`; an unknown character counts as a digit."""
    return _units(text, weight) * size / 1000


@lru_cache(maxsize=4096)  # the same numeral is measured at several sizes, and stands in many counts
def _units(text: str, weight: str) -> int:
    widths = WIDTHS[weight]
    return sum(widths.get(character, widths["0"]) for character in text)
'''


def main(folder: Path) -> None:
    FONTS.mkdir(parents=True, exist_ok=True)
    tables, heights = {}, []
    for style in ("Regular", "Bold"):
        font = shrink(folder / f"Andika-{style}.ttf", style)
        tables[style] = per_mille(font)
        (FONTS / "OFL.txt").write_text(font["name"].getDebugName(LICENCE) + "\n", encoding="utf-8")
        heights.append(digit_height(font))
        target = FONTS / f"countfold-hand-{style.lower()}"
        font.save(target.with_suffix(".ttf"))
        font.flavor = "woff2"
        font.save(target.with_suffix(".woff2"))
    METRICS.write_text(
        METRICS_TOP.format(height=max(heights))
        + table("REGULAR", tables["Regular"])
        + "\n"
        + table("BOLD", tables["Bold"])
        + METRICS_END,
        encoding="utf-8",
    )


if __name__ == "__main__":
    if len(sys.argv) != 2:
        raise SystemExit(__doc__)
    main(Path(sys.argv[1]))
