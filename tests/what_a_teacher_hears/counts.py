"""Forty counts of our own: every kind, level K to 6 and above, forwards and back, with empty cells first, with stories."""

from dataclasses import dataclass, field
from typing import Any

from routines.counting import Count, Grid, Style


@dataclass(frozen=True)
class Heard:
    """A count as a teacher of a level plans it. `group` and `goal` are its story's, `style` the keywords of its writing."""

    level: int
    kind: str
    start: str
    step: str
    terms: int
    line_length: int
    fill: str = "across"
    lead: int = 0
    group: str = ""
    goal: str = ""
    style: dict[str, Any] = field(default_factory=dict)

    def grid(self, language: str) -> Grid:
        """The count folded, written as a class of this language writes it."""
        style = Style(**{"language": language, **self.style})
        count = Count.parse(kind=self.kind, start=self.start, step=self.step, terms=self.terms, style=style)
        return Grid(count, self.line_length, self.fill, self.lead)


COUNTS = (
    # Kindergarten and grade 1.
    Heard(0, "whole", "1", "1", 30, 10),
    Heard(0, "whole", "27", "1", 24, 10, lead=6),
    Heard(0, "whole", "20", "-1", 20, 5),
    Heard(0, "whole", "10", "10", 12, 4),
    Heard(0, "whole", "2", "2", 20, 5, group="pair of boots", goal="30"),
    Heard(1, "whole", "93", "1", 28, 10, lead=2),
    Heard(1, "whole", "5", "5", 24, 4, fill="down"),
    Heard(1, "whole", "7", "10", 15, 3),
    Heard(1, "whole", "66", "-2", 20, 5),
    Heard(1, "money", "5c", "5c", 24, 4, group="sticker", goal="$1.00"),
    # Grades 2 and 3.
    Heard(2, "whole", "16", "6", 20, 5),
    Heard(2, "whole", "240", "100", 16, 4),
    Heard(2, "whole", "115", "-5", 20, 4),
    Heard(2, "clock", "9:05 am", "5 min", 24, 6),
    Heard(2, "length", "75 cm", "25 cm", 16, 4),
    Heard(2, "money", "35c", "25c", 16, 4),
    Heard(3, "whole", "7", "7", 20, 5, fill="down"),
    Heard(3, "whole", "58", "6", 24, 6, fill="across-up"),
    Heard(3, "whole", "904", "-8", 20, 5),
    Heard(3, "fraction", "1/4", "1/4", 20, 4, style={"wholes": "both"}),
    Heard(3, "mass", "250 g", "250 g", 16, 4),
    Heard(3, "elapsed", "25 min", "25 min", 15, 5),
    Heard(3, "clock", "11:10 am", "20 min", 18, 3, fill="down"),
    # Grades 4 and 5.
    Heard(4, "whole", "1,325", "-50", 16, 4),
    Heard(4, "whole", "34", "11", 18, 6),
    Heard(4, "fraction", "3/8", "3/8", 16, 4),
    Heard(4, "fraction", "4", "-1/3", 15, 3),
    Heard(4, "length", "1 ft 3 in", "9 in", 16, 4),
    Heard(4, "mass", "6 oz", "6 oz", 20, 4, group="box", goal="6 lb"),
    Heard(4, "decimal", "0.3", "0.3", 20, 5),
    Heard(5, "decimal", "4.75", "-0.25", 16, 4),
    Heard(5, "capacity", "150 mL", "150 mL", 20, 5, group="glass", goal="2 L 500 mL"),
    Heard(5, "capacity", "3/4 cup", "3/4 cup", 16, 4),
    Heard(5, "whole", "15", "-5", 16, 4),
    Heard(5, "money", "$12.50", "-$0.75", 15, 5),
    # Grade 6 and above.
    Heard(6, "whole", "-20", "3", 20, 5),
    Heard(6, "decimal", "-1.2", "0.4", 18, 6, lead=1),
    Heard(6, "fraction", "5/6", "5/6", 18, 6, fill="down", style={"fractions": "simplified"}),
    Heard(7, "fraction", "2 1/2", "-3/4", 16, 4),
    Heard(8, "whole", "8", "15", 16, 4, lead=1),
)
