"""The lesson: what happens while a class counts, how it is kept, and what is made of it afterwards."""
