"""The code that proves, on an empty server, that whoever opens it can also read what the server printed."""

import hmac

from django.utils.crypto import salted_hmac

# No letters or digits that are read for one another.
ALPHABET = "abcdefghjkmnpqrstuvwxyz23456789"
LENGTH = 9


def set_up_code() -> str:
    """Nine characters in threes, drawn from the secret key: nothing to store, and useless once there is a school."""
    digest = salted_hmac("accounts.set_up_code", "first visit", algorithm="sha256").digest()
    letters = "".join(ALPHABET[byte % len(ALPHABET)] for byte in digest[:LENGTH])
    return "-".join(letters[at : at + 3] for at in range(0, LENGTH, 3))


def is_set_up_code(typed: str) -> bool:
    plain = "".join(character for character in typed.lower() if character.isalnum())
    return hmac.compare_digest(plain.encode(), set_up_code().replace("-", "").encode())
