"""Work beside the pages: rows that any server process picks up, with progress, going on after a process was killed."""
