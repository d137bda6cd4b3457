"""One's own words: what is kept of them, for how long and who reads it, and all of them as files for who wrote them."""
