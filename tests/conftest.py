"""Settings shared by every test: how many examples hypothesis tries."""

import os

from hypothesis import HealthCheck, settings

settings.register_profile("quick", max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.register_profile("ci", parent=settings.get_profile("quick"), max_examples=200)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "quick"))
