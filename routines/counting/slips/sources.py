"""The published sources behind the rules; every other rule says "common practice, no source".

Only titles, abstracts or the passages named were read, so each supports the general finding.
"""

NRC_2009 = "National Research Council (2009), Mathematics Learning in Early Childhood, p. 143 (reporting Fuson 1988)"
NSW_2010 = "Numeracy continuum notes (NSW Department of Education and Training, 2010), difficulties with the teen words"
BYRGE_2014 = "Byrge, Smith & Mix (2014), Child Development 85(2), expanded number writing"
PROGRESSIONS_NBT = (
    "common practice, no source for the exact slip; Progressions K-5 NBT (grade 2) flags crossing tens and hundreds"
    " as the harder parts"
)
ADD_ACROSS = (
    'Young-Loveridge, Taylor, Hawera & Sharma, "add across" error study, years 7-8; also NFER note on adding fractions'
)
NI_ZHOU_2005 = "Ni & Zhou (2005), Educational Psychologist 40(1), whole number bias (general finding, review)"
HACKENBERG_2007 = (
    "Hackenberg (2007), Journal of Mathematical Behavior 26(1), fractions beyond one whole (general finding)"
)
STEINLE_STACEY = (
    "Steinle, Stacey & colleagues, Teaching and Learning about Decimals, University of Melbourne (whole number"
    " thinking)"
)
KAMII_RUSSELL_2012 = (
    "Kamii & Russell (2012), Journal for Research in Mathematics Education 43(3), coordinating hours and minutes"
    " (general finding)"
)
BOFFERDING_2014 = (
    "Bofferding (2014), Journal for Research in Mathematics Education 45(2), over-use of whole-number ideas with"
    " negatives (general finding)"
)
AQAZADE_BOFFERDING_2021 = (
    "Aqazade & Bofferding (2021), Journal of Numerical Cognition 7(2), signs ignored or appended (general finding)"
)
SECADA_FUSON_HALL_1983 = (
    "Secada, Fuson & Hall (1983), Journal for Research in Mathematics Education 14(1), 47-57: counting on begins with the"
    " next word, which is learned by itself (general finding)"
)
NIST_TIME = "NIST, Time Questions and Answers (noon and midnight)"
NRC_2009_TEENS = (
    "National Research Council (2009), Mathematics Learning in Early Childhood, p. 147 (teens written reversed)"
)
