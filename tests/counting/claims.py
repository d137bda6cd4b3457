"""Claims as the tests write them down: by family and parameters, in the plain form."""

from typing import Any

from routines.counting import Claim


def a_claim(family: str, /, **parameters: Any) -> Claim:
    return Claim.from_dict({"family": family, **parameters})
