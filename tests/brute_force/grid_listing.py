"""A page filled cell by cell, as a hand would, to check where the engine says each term stands."""


def page(terms: int, length: int, fill: str, lead: int) -> list[list[int | None]]:
    """The rows of the page, top row first; None for an empty cell."""
    strip: list[int | None] = [None] * lead
    strip.extend(range(1, terms + 1))
    while len(strip) % length:
        strip.append(None)
    lines = []
    while strip:
        lines.append(strip[:length])
        strip = strip[length:]
    if fill == "across":
        return lines
    if fill == "across-up":
        return lines[::-1]
    rows = []
    for row in range(length):
        rows.append([line[row] for line in lines])
    return rows


def lines(rows: list[list[int | None]], along: str) -> list[list[int]]:
    """The counted cells of each row or column, in page order, each sorted into counting order."""
    columns = [[row[column] for row in rows] for column in range(len(rows[0]))]
    found = []
    for line in rows if along == "row" else columns:
        counted = sorted(n for n in line if n is not None)
        if counted:
            found.append(counted)
    return found
