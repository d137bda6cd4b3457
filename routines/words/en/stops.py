"""English sentences about what is asked and answered at a stop, by level band, and why it is there."""

from routines.counting.grid import Fill

from ..language import PastTheEnd, Stops

QUESTIONS = {
    "target": (
        (
            "What do you see? What goes in {place}?",
            "What stays the same? Point, and say what goes in {place}.",
        ),
        (
            "What do you notice so far? What will stand in {place}, and how do you know?",
            "Look along the rows and down the columns: what will stand in {place}, and why?",
        ),
        (
            "What do you notice, and why does {jump} make it so? Use it to say which count will stand in {place}.",
            "Which count will stand in {place}? Find two ways to be sure before we count that far.",
        ),
        (
            "Say what you notice as a rule, and use your rule to predict {place}. How could we test whether it "
            "works everywhere?",
            "Make a conjecture about where {jump} leads from any cell, and use it to predict {place}. How would you "
            "test it?",
        ),
    ),
    "hard": (
        (
            "We said {a}. What do we say next?",
            "Point to {a}. What comes next?",
        ),
        (
            "Stop at {a}. What comes next, and what on the grid can help you?",
            "What comes after {a}, and which {parts} will change? How do you know?",
            "We said {a}. What do we say next, and how can you tell before we count?",
            "Stop at {a}. What comes next, and how would you show that it must be so?",
        ),
        (
            "We are at {a}. Where does {jump} take us? Show it in two ways: by the jump and along the grid.",
            "Before we go on from {a}: which count comes next, and which count on the grid helps you?",
            "We are at {a}. Which count does {jump} take us to, and how can you be sure before we say it?",
            "What comes after {a}? Say how you know, and how you would show it to somebody who does not believe it.",
        ),
        (
            "Look at the jump from {a}: where does it lead, and why? Predict it, and test it with another way "
            "through the grid.",
            "Which {parts} change in the next count after {a}, and how do you know? Make your conjecture before we count.",
            "Where does the jump from {a} lead, and how can you tell before we count? Say how sure you are, and why.",
            "What comes after {a}, and what makes it so? Give a reason that would do for any jump of this count.",
        ),
    ),
    "from zero": (
        ("We said {a}. What do we say next?",),
        ("Stop at {a}. What comes next, and is it above zero or below? How do you know?",),
        (
            "We are at {a}. Where does {jump} take us, and on which side of zero is that? Show it in two ways.",
            "We are at {a}. Where does {jump} take us, and on which side of zero is that? How can you be sure?",
        ),
        (
            "Look at the jump from {a}: on which side of zero does it end, and how far away? Predict it, and test it with "
            "another way through the grid.",
            "Look at the jump from {a}: on which side of zero does it end, and how far away? Predict it, and say why.",
        ),
    ),
    "to zero": (
        ("We said {a}. What do we say next?",),
        ("Stop at {a}. How far is it to zero, and what comes next? How do you know?",),
        (
            "We are at {a}. How far is it to zero, and where does {jump} take us? Show it in two ways.",
            "We are at {a}. How far is it to zero, and where does {jump} take us? How can you be sure?",
        ),
        (
            "How far is it from {a} to zero, and where does {jump} lead? Predict it, and test it with another way through "
            "the grid.",
            "How far is it from {a} to zero, and where does {jump} lead? Predict it, and say why it must be so.",
        ),
    ),
    "first whole": (
        ("We said {a}. What do we say next?",),
        ("Stop at {a}. How far is it to the next whole, and what comes next? How do you know?",),
        (
            "We are at {a}. How far is it to the next whole, and where does {jump} take us? Show it in two ways.",
            "We are at {a}. How far is it to the next whole, and where does {jump} take us? How can you be sure?",
        ),
        (
            "How far is it from {a} to the next whole, and where does {jump} lead? Predict it, and test it with another way "
            "through the grid.",
            "How far is it from {a} to the next whole, and where does {jump} lead? Predict it, and say why it must be so.",
        ),
    ),
    "dies": (
        (
            "“{idea}” And the next one?",
            "What pattern do you see so far? Will the next one fit?",
        ),
        (
            "“{idea}” Will the next count, after {a}, still say so? Why?",
            "We saw something that was true up to {a}. Will the next count still fit? Why?",
        ),
        (
            "“{idea}” Up to {a} that is so. What does {jump} do to it next, and why?",
            "Something has been true up to {a}. Will it still be true after {jump}, and how can you tell?",
        ),
        (
            "“{idea}” It is true of every count up to {a}. Is that a proof? Predict the next count, and test it.",
            "A rule of ours has been true up to {a}. Does that prove it? Predict the next count, and test the rule.",
        ),
    ),
    # Of those who have not met digits.
    "dies at its end": (("“{idea}” How does the next one end?",),),
    "dies in front": (("“{idea}” How does the next one begin?",),),
    "end": (
        (
            "If we go on, will we say {probe}? Show us.",
            "We could go on. Will we say {probe}?",
        ),
        (
            "If we kept counting, would we ever say {probe}? Where would it be, and how do you know?",
            "Will {probe} be one of our counts if we go on? In which row and column, and why?",
        ),
        (
            "If we keep making {jumps}, will we say {probe}? In which row and column? Find two ways to be sure.",
            "Would {probe} be one of our counts? Say where it would stand and which count helps you, without "
            "counting all the way.",
        ),
        (
            "Decide whether {probe} would come, without writing the counts between. Which rule tells you, and "
            "would it work for any number?",
            "Would {probe} be counted? Give a rule that answers this for any number, and test it on a count you "
            "can see.",
        ),
    ),
}

ANSWERS = {
    "target": (
        "{far}, because {by_lower}",
        "There stands {far}, because {by_lower}",
        "I say {far}, because {by_lower}",
    ),
    "by jumps": ("{far}: {k} more jumps from {a}.",),
    "along": ("{far}: {beside} {known}, {change}.",),
    "hard": ("{next}: {how}.", "Next is {next}: {how}.", "We get {next}: {how}."),
    "plain": ("{next} comes next.", "Next is {next}.", "We get {next} next."),
    "dies": (
        "{next} comes next, and it does not fit “{idea}”",
        "Next is {next}, and it does not fit “{idea}”",
        "We get {next}, and it does not fit “{idea}”",
    ),
    "starts again": ("{next} ends in {y}: after {x} it starts again.",),
    "ends otherwise": ("{next} ends in {y}: after {x} comes {y}.",),
    "is longer": ("{next} begins with {y}: ten {places} make {a_larger}.",),
    "begins otherwise": ("{next} begins with {y}, not with {due}.",),
    "dies plain": ("It stops at {next}.", "Not at {next}.", "Up to here, not at {next}."),
    "dies why": (
        "It stops at {next}: {how}.",
        "No, {next} comes next: {how}.",
        "Then we get {next}: {how}.",
    ),
}

PAST_THE_END = PastTheEnd(
    (
        ("Yes, {value}: {beyond}, {change}.",),
        (
            "Yes, in {where}: {beyond}, {change}.",
            "Yes, in {where}: {change} than {known}.",
            "Yes, {value}: {beyond}, {change}.",
        ),
        (
            "Yes, in {where}: {beyond}, {change}; or {jumps} from {start}.",
            "Yes, in {where}: {beyond}, {change}; or {n} jumps from {start}.",
            "Yes, in {where}: {change} than {known}; or {n} jumps from {start}.",
            "Yes, {value}: {beyond}, {change}; or {n} jumps from {start}.",
        ),
        (
            "Yes, in {where}: {beyond}, {change}; as a rule, {jumps} {make} {total}.",
            "Yes, in {where}: {change} than {known}; as a rule, {jumps} {make} {total}.",
            "Yes, {value}: {beyond}, {change}; as a rule, {jumps} {make} {total}.",
        ),
    ),
    (
        "Yes. Rule: go on in whole jumps of {step} from {start}; {value} is {total} {more}, {n} × {step}.",
        "Yes. Rule: go back in whole jumps of {step} from {start}; {value} is {total} {more}, {n} × {step}.",
    ),
    "Yes, {value}: {k} more jumps from {last}.",
    {
        Fill.ACROSS: ("under {known}", "{k} rows under {known}"),
        Fill.DOWN: ("beside {known}", "{k} columns past {known}"),
        Fill.ACROSS_UP: ("above {known}", "{k} rows above {known}"),
    },
)

HOWS = {
    "to zero": "{by} more reaches zero",
    "from zero": "that is {by} below zero",
    "below zero": "{rest} and {by} make {sum}, below zero",
    "filled": "{rest} and {by} make {sum}",
    "filled in units": "{rest} and {by} more is {many}, that is {sum}",
    "over": "{to} to {landmark}, then {on} more",
    "over back": "{to} back to {landmark}, then {on} further back",
    "opened": "{by} less than {full} is {rest}",
    "opened like ten": "{full} is {rest} and {by}, so {a} is {next} and {by}",
    "both digits": "both digits change",
    "all digits": "all {k} digits change",
    "some digits": "{k} of {many} digits change",
    "more digits": "now there are {many} digits",
    "along": "it goes {beside} {known}, {change}",
    "two ways": "{first}; or {beside} {known}, {change}",
    "both": "{first}; {second}",
    "larger": "{a} is {larger}",
    "larger, on": "{larger} and {by} make {made}",
    "one part": "{part}, {x} to {y}",
    "changes": "{part} goes from {x} to {y}",
    "changes of several": "{part} go from {x} to {y}",
    "becomes": "{part} goes to {y}",
    "becomes of several": "{part} go to {y}",
    "stays": "{part} stays {x}",
    "stays of several": "{part} stay {x}",
    "sum": "the digits make {y}, not {x}",
    "in its line": "in {line}, after {before} comes {next}",
}

REASONS = {
    "target": "Enough is on the board to see “{idea}”",
    "by": "Enough is on the board to see “{idea}” What is asked for here follows from “{by}”",
    "hard": "The next jump, from {a} to {next}, passes {landmark}.",
    "hard on": "The next jump, from {a}, reaches {landmark}.",
    "hard back": "The next jump, from {a} to {next}, goes back past {landmark}: {how}.",
    "hard below": "The next jump, from {a} to {next}, goes below {landmark}: {how}.",
    "dies": "Up to {a} it fits: “{idea}” The next count, {next}, is the first that does not.",
    "end": "The whole grid is there: time to look at it and to think past its end.",
}

BESIDE = {Fill.ACROSS: "under", Fill.DOWN: "beside", Fill.ACROSS_UP: "above"}

PARTS = ("digits", "parts")

STOPS = Stops(QUESTIONS, ANSWERS, HOWS, REASONS, PARTS, PAST_THE_END, BESIDE)
