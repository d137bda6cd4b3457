"""The words that the lesson's scripts say, translated with the page. `{count}` and the like are filled in by the script."""

from django.utils.translation import gettext as _


def status_words() -> dict[str, str]:
    """How safe the lesson is: on board and lectern."""
    return {
        "all-sent": _("all sent"),
        "one-waiting": _("1 count is on this device only"),
        "many-waiting": _("{count} counts are on this device only"),
        "ink-waiting": _("some marks are on this device only"),
        "one-on-page": _("1 count is on this page only: leave it open"),
        "many-on-page": _("{count} counts are on this page only: leave it open"),
        "ink-on-page": _("some marks are on this page only: leave it open"),
        "one-anothers": _("1 waits here until whoever wrote it signs in"),
        "many-anothers": _("{count} wait here until whoever wrote them signs in"),
        "page-only": _("kept on this page only"),
        "offline": _("no connection, trying again"),
        "server-trouble": _("the server cannot save right now, trying again"),
        "sign-in": _("sign in again to send"),
        "open-again": _("open this page again to send"),
        "another-person": _("someone else has signed in here: sign in yourself to send"),
        "not-yours": _("whoever is signed in here is not in this lesson"),
        "not-paired": _("this device is not in the lesson any more: pair it again to send"),
        "deleted": _("this lesson was removed"),
        "one-removed": _("1 text is gone: words in it were removed everywhere"),
        "many-removed": _("{count} texts are gone: words in them were removed everywhere"),
        "page-behind": _("another device does more than this page shows: load it again after the lesson"),
        "one-refused": _("1 was not taken:"),
        "many-refused": _("{count} were not taken:"),
        "no-count": _("This count is not on this device yet, and the server cannot be reached."),
    }


def log_words() -> dict[str, str]:
    """How a stretch is tapped on the log."""
    return {"voice-first": _("Tap the first cell of the stretch."), "voice-last": _("Now its last cell.")}


def replay_words() -> dict[str, str]:
    """The one button of the replay whose words change."""
    return {"play": _("Play"), "stop": _("Stop")}


def free_text_words() -> dict[str, str]:
    """What is asked of a text before it is kept: on board and lectern."""
    return {
        "is-a-child": _("Is {names} a child? Write the idea, not who said it."),
        "or": _(" or "),
        "too-long": _("That is {length} characters long; {longest} is the most here."),
    }


def board_words() -> dict[str, str]:
    """What the board says about cells, tools and typing."""
    return (
        status_words()
        | free_text_words()
        | {
            # Cells, for those who hear the board
            "cell-next": _("next count"),
            "cell-empty": _("empty"),
            "cell-covered": _("covered"),
            "cell-guessed": _("guess: {text}"),
            "cell-left-out": _("left out"),
            "cell-struck": _("struck: {text}"),
            "cell-tint": _("tinted"),
            "cell-ring": _("ringed"),
            "cell-underline": _("underlined"),
            "cell-hatch": _("hatched"),
            "cell-phrase": _("with a phrase"),
            "heard-corrected": _("{said} struck, {text}"),
            # How a tool in hand is used
            "use-said": _("Tap the cell to write in."),
            "use-tint": _("Tap the cells to tint."),
            "use-ring": _("Tap the cells to ring."),
            "use-underline": _("Tap the digit to underline."),
            "use-hatch": _("Tap the cells to hatch."),
            "use-jump": _("Tap where the jump starts, then where it lands."),
            "jump-where": _("Now where does it land?"),
            "use-phrase": _("Tap the cells that the phrase is about."),
            "use-guess": _("Tap the empty cell that the guess is for."),
            "guess-empty": _("A guess goes into an empty cell."),
            "use-cover": _("Tap the cells to cover or uncover."),
            "use-again": _("Tap the line that is counted again."),
            # Typing
            "type-said": _("What was said?"),
            "type-over": _("Instead of {text}"),
            "type-guess": _("What is the guess?"),
            "type-phrase": _("What was noticed?"),
            "no-names": _("Write the idea, not who said it."),
            "phrase-most": _("A phrase can be pinned to 12 cells."),
            "write-it": _("write"),
            "as-it-counts": _("as it counts"),
            "left-out": _("left out"),
            "guess-it": _("guess"),
            "class-corrects": _("the class corrects"),
            "mistyped": _("I mistyped"),
            "pin-it": _("pin"),
            "take-away": _("remove"),
            "take-phrase-away": _("remove: {text}"),
            "close": _("close"),
            "key-enter": _("Enter"),
            "key-shift-enter": _("Shift Enter"),
            "key-escape": _("Esc"),
            # The end, and lines out of view
            "planned-end": _("The planned count ends here. Once more to go on."),
            "no-further": _("The board goes no further than this."),
            "one-rows-earlier": _("1 line above"),
            "many-rows-earlier": _("{count} lines above"),
            "one-rows-later": _("1 line below"),
            "many-rows-later": _("{count} lines below"),
            "one-columns-earlier": _("1 column before"),
            "many-columns-earlier": _("{count} columns before"),
            "one-columns-later": _("1 column after"),
            "many-columns-later": _("{count} columns after"),
            "tools-back": _("Press B to have the tools back."),
            "no-full-screen": _("This browser does not fill the screen here."),
        }
    )


def lectern_words() -> dict[str, str]:
    """What the lectern says about the count, the plan and what was said."""
    board = board_words()
    cells = {name: words for name, words in board.items() if name.startswith("cell-")}
    return (
        status_words()
        | free_text_words()
        | cells
        | {
            # On top
            "nothing-yet": _("nothing yet"),
            "how-far": _("{ordinal} of {terms}"),
            "planned": _("{terms} counts planned"),
            "ordinal-one": _("{n}st"),
            "ordinal-two": _("{n}nd"),
            "ordinal-few": _("{n}rd"),
            "ordinal-many": _("{n}th"),
            "ordinal-other": _("{n}th"),
            "planned-end": board["planned-end"],
            "no-further": board["no-further"],
            # Stops
            "no-stops": _("This plan has no stops."),
            "no-more-stops": _("No more stops are planned."),
            "stop-number": _("Stop {number}"),
            "after-count": _("after {text}"),
            "before-first": _("before the first count"),
            "coming-stop": _("still to come"),
            "no-question": _("No question is written for this stop."),
            "open-stop": _("We are at this stop"),
            "go-on": _("Go on"),
            "stop-now": _("now"),
            "stop-was": _("was there"),
            "think": _("think"),
            "partner": _("partner"),
            "share": _("share"),
            "time-think": _("Think, {seconds} s"),
            "time-partner": _("Partner, {seconds} s"),
            "time-share": _("Share, {seconds} s"),
            "time-left": _("{what}, {seconds} s left"),
            # What is said
            "they-said": _("They said “{words}”"),
            "may-hear": _("You may hear {words}."),
            "also-right": _("They said “{words}”, right in another form"),
            "right-too": _("Right too, in another form: {words}."),
            "ask": _("Ask: {words}"),
            "ends-here": _("It ends here: {sentence}"),
            "again": _("“{text}” again"),
            "left-out": _("Left out"),
            "other-words": _("Other words"),
            "follows": _("{texts} follows."),
            "follow": _("{texts} follow."),
            "follow-more": _("{texts} … follow."),
            "was-said": _("“{text}” stands where {right} belongs."),
            "was-left-out": _("{right} was left out."),
            "class-corrects": _("The class corrects: {text}"),
            "let-stand": _("Let it stand"),
            "which-stands": _("Two devices wrote different things for {right}. Which stands?"),
            "as-it-counts": _("{text}, as it counts"),
            "stands": _("“{text}” stands"),
            "count-again": _("This line is counted again"),
            "cover": _("Cover it"),
            "uncover": _("Uncover it"),
            "type-said": _("Other words that were said"),
            "write-it": _("Write it"),
            "type-guess": _("A guess for this cell"),
            "guess-it": _("Write the guess"),
            # Voice
            "voice": _("The voice so far"),
            "voice-since": _("The voice since {text}"),
            "voice-from-to": _("The voice from {from} to {to}"),
            "voice-was": _("{from} to {to}: {how}"),
            "voice-later": _("Once something is written."),
            "pick-stretch": _("Tap the first and the last cell on the small grid."),
            "strong": _("strong"),
            "mixed": _("mixed"),
            "faded": _("faded"),
            "alone": _("me alone"),
            # Noticings and targets
            "own-words": _("In your words"),
            "change-words": _("Change the words"),
            "nothing-noticed": _("Nothing kept yet."),
            "change": _("change"),
            "change-this": _("change: {text}"),
            "take-away": _("remove"),
            "take-this-away": _("remove: {text}"),
            "target-seen": _("seen"),
            "target-not-yet": _("not yet"),
            # Undo
            "nothing-to-undo": _("There is nothing to undo."),
            "undo-term.write": "{text}",
            "undo-term.correct": _("corrected to {text}"),
            "undo-term.left-out": _("{text} left out"),
            "undo-mark.add": _("a mark at {text}"),
            "undo-mark.remove": _("a mark taken away"),
            "undo-jump.add": _("a jump"),
            "undo-phrase.add": _("a phrase"),
            "undo-predict": _("the guess {text}"),
            "undo-cover": _("{text} covered"),
            "undo-uncover": _("{text} uncovered"),
            "undo-recount": _("a line counted again"),
            "undo-notice.add": _("a noticing"),
            "undo-notice.edit": _("changed words"),
            "undo-voice": _("the voice"),
            "undo-target": _("a target"),
        }
    )
