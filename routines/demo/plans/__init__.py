"""Every plan of the demo school, in the order in which they came into the bank."""

from routines.demo.plans import first_grades, measures, middle_grades, upper_areas, whole_numbers

PLANS = (
    *first_grades.PLANS,
    *whole_numbers.PLANS,
    *middle_grades.PLANS,
    *measures.PLANS,
    *upper_areas.PLANS,
)
