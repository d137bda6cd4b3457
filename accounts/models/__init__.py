from .one_time_link import OneTimeLink
from .school import School
from .sent_form import SentForm
from .set_up_tries import SetUpTries
from .user import User

__all__ = ["OneTimeLink", "School", "SentForm", "SetUpTries", "User"]
