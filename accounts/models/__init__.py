from .code_tries import CodeTries
from .list_marks import ListMarks
from .one_time_link import OneTimeLink
from .recovery_code import RecoveryCode
from .school import School
from .sent_form import SentForm
from .user import User

__all__ = ["CodeTries", "ListMarks", "OneTimeLink", "RecoveryCode", "School", "SentForm", "User"]
