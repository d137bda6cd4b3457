"""The number kinds: how each is read, written and said. `registry` lists them."""
