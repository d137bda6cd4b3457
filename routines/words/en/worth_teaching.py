"""English clauses about what a grid is good for."""

WORTH_TEACHING = {
    "on": "lands on {mark} at the {nth} count",
    "over": "crosses {mark} at the {nth} count",
    "below": "drops below {mark} at the {nth} count",
    "back": "goes back past {mark} at the {nth} count",
    "later on": "lands on {mark} later, at the {nth} count",
    "later over": "crosses {mark} later, at the {nth} count",
    "later below": "drops below {mark} later, at the {nth} count",
    "later back": "goes back past {mark} later, at the {nth} count",
    "never": "ask about {value}: it never comes",
    "comes": "ask where {value} will stand: {line}",
}
