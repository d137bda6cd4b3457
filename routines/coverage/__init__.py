"""What each grade has covered, for support: available, taught, seen."""
