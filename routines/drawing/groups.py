"""The groups of a pattern as they are drawn: pairs that hang together become one line."""

from .said import SaidPattern


def drawn_groups(pattern: SaidPattern) -> tuple[tuple[int, ...], ...]:
    """The pattern's groups, with those that begin where another ends joined to it: (1, 6) and (6, 11) are (1, 6, 11)."""
    groups = [group for group in pattern.groups or (pattern.cells,) if group]
    begins = {group[0]: group for group in groups if len(group) > 1}
    ends = {group[-1] for group in groups if len(group) > 1}
    if len(begins) < len([group for group in groups if len(group) > 1]):
        return tuple(groups)  # several begin at one count: no single line runs through them
    joined = []
    for group in groups:
        if len(group) > 1 and group[0] in ends:
            continue  # drawn as the rest of another
        line = group
        while len(line) > 1 and line[-1] in begins:
            line = line + begins[line[-1]][1:]
        joined.append(line)
    return tuple(joined)
