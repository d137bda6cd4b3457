"""Every plan of the demo school, in the order in which they came into the bank."""

from routines.demo.plans import whole_numbers

PLANS = (*whole_numbers.PLANS,)
