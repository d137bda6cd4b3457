from .code_tries import CodeTries
from .one_time_link import OneTimeLink
from .school import School
from .sent_form import SentForm
from .user import User

__all__ = ["CodeTries", "OneTimeLink", "School", "SentForm", "User"]
