"""When two typed texts are the same: for passphrases, and for the names and e-mails people sign in with.

One keyboard sends é as one character, another as e and an accent; both mean the same and must count as the same, on
every database (SQLite's own lower() knows only the letters a to z).
"""

import unicodedata


def passphrase_text(typed: str) -> str:
    """The form in which a passphrase is measured, hashed and checked.

    Source: NIST SP 800-63B-4 (2025) 3.1.1.2 asks for Normalization Form C before hashing (its drafts and 800-63B-3
    allowed NFKC or NFKD); RFC 8265 4.2 (OpaqueString) gives the same form, and takes every kind of space for a space.
    Capitals, and signs such as ² and 2, stay as different as they look.
    """
    spaced = "".join(" " if unicodedata.category(sign) == "Zs" else sign for sign in typed)
    return unicodedata.normalize("NFC", spaced)


def sign_in_text(typed: str) -> str:
    """A sign-in name or e-mail as it is stored and looked up: without capitals, in one form, without spaces around it.

    Source: Unicode Standard 3.13, D146 and D147 (caseless matching of identifiers), by NFKC and full case folding.
    """
    folded = unicodedata.normalize("NFKC", unicodedata.normalize("NFD", typed)).casefold()
    return unicodedata.normalize("NFKC", folded).strip()
