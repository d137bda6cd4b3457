"""How numbers are said, a language a file."""

from .en import ENGLISH
from .es import SPANISH
from .saying import CoinName, Saying, UnitName

SAID: dict[str, Saying] = {language.code: language for language in (ENGLISH, SPANISH)}

__all__ = ["SAID", "CoinName", "Saying", "UnitName"]
