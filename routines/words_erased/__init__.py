"""Taking words about children out of everything that is kept, and keeping them out when an older state comes back."""
