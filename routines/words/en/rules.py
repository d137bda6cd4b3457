"""English sentences about a rule for the n-th count, as it was typed."""

RULES = {
    "holds": "Yes, for every n: {gives} and so on, as we count.",
    "differs": "No: at place {n} it gives {said}, and we count {counted}.",
    "differs later": "No: it is right up to place {before}, but at place {n} it gives {said}, and we count {counted}.",
    "from zero": "It is the rule of this count if the first place is 0.",
    "too much": "Each jump is right, but every number comes out {off} too much.",
    "too little": "Each jump is right, but every number comes out {off} too little.",
}
