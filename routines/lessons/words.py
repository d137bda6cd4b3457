"""The words that the lesson's scripts say, translated with the page. `{count}` and the like are filled in by the script."""

from django.utils.translation import gettext as _


def status_words() -> dict[str, str]:
    """How safe the lesson is: on board and lectern."""
    return {
        "all-sent": _("all sent"),
        "one-waiting": _("1 count is on this device only"),
        "many-waiting": _("{count} counts are on this device only"),
        "ink-waiting": _("some marks are on this device only"),
        "page-only": _("This browser keeps nothing: the lesson is kept on this page only. Leave it open."),
        "offline": _("no connection, trying again"),
        "sign-in": _("sign in again to send"),
        "open-again": _("open this page again to send"),
        "not-yours": _("Whoever is signed in here may not open this lesson; what is written stays on this device."),
        "deleted": _("This lesson was deleted."),
        "one-refused": _("1 was not taken:"),
        "many-refused": _("{count} were not taken:"),
        "no-count": _("This count is not on this device yet, and the server cannot be reached."),
    }


def board_words() -> dict[str, str]:
    """What the board says about cells, tools and typing."""
    return status_words() | {
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
        "take-away": _("take away"),
        "take-phrase-away": _("take away: {text}"),
        "close": _("close"),
        "key-enter": _("Enter"),
        "key-shift-enter": _("Shift Enter"),
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
