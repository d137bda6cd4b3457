"""What colleagues plan, suggest and write for each other: home, the planned week, suggestions, notes, counts handed on."""
