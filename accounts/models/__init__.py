from .one_time_link import OneTimeLink
from .school import School
from .user import User

__all__ = ["OneTimeLink", "School", "User"]
