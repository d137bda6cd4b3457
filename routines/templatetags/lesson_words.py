"""The words that the lesson's scripts say, for a page to hand to them: `{{ words|json_script:"words" }}`."""

from django import template

from routines.lessons import words

register = template.Library()
register.simple_tag(words.board_words)
register.simple_tag(words.status_words)
register.simple_tag(words.lectern_words)
register.simple_tag(words.log_words)
register.simple_tag(words.replay_words)
