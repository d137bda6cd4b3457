"""Drawings of folded counts as SVG: one drawing language for cards, plan, phone, board and paper.

    draw_grid(grid, size="card"|"fold"|"tile"|"phone"|"plan"|"print"|"board", lit=(Pattern, ...), overlays=((key, Pattern), ...),
              landmarks=(n, ...), title="", upto=None, entries={n: Entry(...)}, interactive=False, chosen=(n, ...),
              language="en", labels={n: "crate 3"}, ink=Ink(marks, jumps, phrases, recounts, voices))
    draw_strip(grid, landmarks=(n, ...), width=1140, on_paper=False, language="en")
    draw_timeline(ideas, stops, terms, count=count, width=1216, on_paper=False, language="en")
    draw_sign("always"|"shown"|"flag")    draw_folded_glyph("none"|"few"|"good")    draw_week_bars((1, 0, 2, ...))
    Entry(state, text="", said="")        state: written, corrected, prediction, covered, next, free, left-out
    draw_letter(0)                        the sign of the first phrase, as it stands in the cells it is pinned to

In templates: {% load countfold %} {% grid grid size="plan" lit=lit landmarks=landmarks overlays=overlays %},
{% strip grid %}, {% timeline ideas stops count %}, {% sign pattern.holds %}, {% folded_glyph "few" %},
{% week_bars lessons %}, {{ words|typeset }}.

On screen the drawings carry classes that static/css/drawing.css colours. With size="print" or on_paper=True the
same rules are written as attributes, because paper takes no document CSS into a drawing. `overlays` are patterns that
js/light_patterns.js lights without a round trip: <g data-pattern="key">.
Pure Python: imports the counting engine's public face and the standard library only.
"""

from .drawn import Drawn
from .entries import Entry
from .glyphs import draw_folded_glyph, draw_said_mark, draw_sign, draw_week_bars
from .grid import draw_grid
from .ink import Ink, Mark, VoiceLine
from .jumps import JumpArc
from .phrase_letters import Phrase, draw_letter
from .strip import draw_strip
from .timeline import draw_timeline

__all__ = [
    "Drawn",
    "Entry",
    "Ink",
    "JumpArc",
    "Mark",
    "Phrase",
    "VoiceLine",
    "draw_folded_glyph",
    "draw_grid",
    "draw_letter",
    "draw_said_mark",
    "draw_sign",
    "draw_strip",
    "draw_timeline",
    "draw_week_bars",
]
