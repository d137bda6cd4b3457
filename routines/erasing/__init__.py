"""Taking words about children out of everything that is kept."""
