"""The bank: every shared count as a card, the page of one count, one's own counts, copies and notes."""
