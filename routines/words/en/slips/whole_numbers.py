"""What is said in English about slips in counts of whole numbers."""

from ...language import SlipWords

WORDS = {
    "W01": SlipWords(
        "After {a} the words of this ten go on past nine; a new ten is due.",
        "Which ten comes after the nine in {a}?",
        "Which ten comes after {a}?",
    ),
    "W02": SlipWords(
        "After {a} a ten other than {b} is said: the order of the tens is not yet sure.",
        "Which ten are we in at {a}, and which ten comes next?",
        "Is that the very next ten after {a}?",
    ),
    "W03": SlipWords(
        "{b} is left out: after nine numbers with ones to hear comes one without.",
        "Is there a number between {a} and that one?",
        "Did we skip one after {a}?",
    ),
    "W04": SlipWords(
        "{a} is said again while the next word is being looked for.",
        "We have just said {a}: what is one more?",
        "We said {a}: what is one more?",
    ),
    "W05": SlipWords(
        "The end of the word for {b} sounds like that of a ten, so the tens are counted on.",
        "How many ones does the next number have?",
        "How many ones come with the ten?",
    ),
    "W06": SlipWords(
        "The word for {a} sounds like ninety, so the count goes on from there.",
        "How many tens does {a} have?",
        "How many tens are in {a}?",
    ),
    "W07": SlipWords(
        "In the word for {b} the ones are said first, so they are written first.",
        "Which digit tells how many tens, and which one tells the ones?",
        "Which digit shows the ten?",
    ),
    "W08": SlipWords(
        "After {a}, ten tens are not yet renamed as one hundred.",
        "Nine tens are ninety: what do we call the ten tens after {a}?",
        "Nine tens are ninety. What do we call ten tens?",
    ),
    "W09": SlipWords(
        "After {a} the hundreds are counted on instead of the ones.",
        "We are counting by ones: what is just one more than {a}?",
        "What is one more than {a}?",
    ),
    "W10": SlipWords(
        "The nine at the end of {a} is taken for the end of the hundred.",
        "Which place of {a} changes when we count one more: the tens or the hundreds?",
        "Which ten comes after {a}?",
    ),
    "W11": SlipWords(
        "After {a} the words of this ten go on past nine.",
        "When the ones have reached nine in {a}, which place changes next?",
        "Which ten comes after {a}?",
    ),
    "W12": SlipWords(
        "The nines in {a} are taken to lead to a thousand.",
        "The tens and the ones of {a} are full: which place goes up by one?",
    ),
    "W13": SlipWords(
        "After {a} the last three digits go on by themselves, without a new thousand.",
        "When the last three digits of {a} are all nines, which place must change?",
    ),
    "W14": SlipWords(
        "After {a} the tens digit turns over, but the hundreds digit is left as it was.",
        "The tens go past nine after {a}: what else in the number must change?",
    ),
    "W15": SlipWords(
        "After {a} the next hundred is said instead of the next ten.",
        "We jump by a ten, not by a hundred: what changes in {a}?",
        "What is ten more than {a}?",
    ),
    "W16": SlipWords(
        "{b} has no hundreds to hear, so the digits after them slide into their place, or the hundreds are counted on.",
        "Which places has a number past one thousand, and what stands in each?",
    ),
    "W17": SlipWords(
        "After {a} the next thousand is said instead of the next hundred.",
        "We jump by a hundred: which digit of {a} changes, and which ones stay?",
    ),
    "W18": SlipWords(
        "Each spoken part of {b} is written out in full.",
        "How many hundreds, tens and ones do you hear in that number?",
    ),
    "W19": SlipWords(
        "The jump from {a} is split at the ten, and one too many is counted.",
        "How far is it from {a} to the next ten, and how much of our {size} is left then?",
    ),
    "W20": SlipWords(
        "The well-known multiples of {size} take over, though the count began at {start}.",
        "How far is it from {a} to that number, and how long is our jump?",
        "Is that our jump from {a}?",
    ),
    "W21": SlipWords(
        "Up a ten and down a one does not work from {a}: it has no ones to lower.",
        "Nine is nearly ten: how does that help when {a} ends in zero?",
    ),
    "W22": SlipWords(
        "The matching digits are carried on past {a}.",
        "The digits have matched up to {a}: does a jump of eleven keep them so?",
    ),
    "W23": SlipWords(
        "After {a} the nine is found, but the ten is not lowered.",
        "We are counting back: is that number less than {a}, or more?",
        "Is that less than {a}?",
    ),
    "W24": SlipWords(
        "After {a} the word for the ten below is said, one ten too early.",
        "What is just one less than {a}, and which ten does it belong to?",
        "What is one less than {a}?",
    ),
    "W25": SlipWords(
        "After {a} the nines are found, but the hundred is not lowered.",
        "We are counting back from {a}: how many hundreds can be left?",
    ),
    "W26": SlipWords(
        "After {a} the hundred drops, but the tens stay at zero.",
        "To take ten from {a} we break a hundred apart: how many tens does it give?",
    ),
    "W27": SlipWords(
        "After {a} the nine hundred is found, but the thousand is not lowered.",
        "We are counting back from {a}: can there still be as many thousands?",
    ),
    "W28": SlipWords(
        "The jump of {size} from {a} crosses a hundred, and the hundreds digit is left as it was.",
        "Does the jump from {a} cross a hundred, and where would we see it?",
    ),
    "W29": SlipWords(
        "The jump back of {size} from {a} crosses a hundred, and the hundreds digit is left as it was.",
        "When we jump back from {a}, do we stay in the same hundred?",
    ),
    "W30": SlipWords(
        "The ones of {a} and of {size} make a new ten, and it is lost.",
        "What do the ones make together in the jump from {a}?",
    ),
    "W31": SlipWords(
        "The ones are taken the other way around in the jump back from {a}: the smaller from the larger.",
        "What must we break apart in {a} so that there are enough ones to take {size} away?",
    ),
}
WORDS["W16 named"] = WORDS["W16"]._replace(
    why="{b} is said in hundreds, as the counts before it: it is the same number."
)
WORDS["W19 landed"] = SlipWords(
    "The jump from {a} is counted in ones up to the full ten, and one too many is counted.",
    "How far is it from {a} to the next ten, and how long is our jump?",
)
