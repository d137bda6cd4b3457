// One cell of the small grid, opened by a tap: what was said there, what the class corrected, or, far ahead, a guess.

import { setNumeral } from "../board/numeral.js";
import { CELL_TEXT } from "./acts.js";
import { button, made } from "./elements.js";
import { WrittenWords } from "./written_words.js";

export class CellSheet {
  constructor({ sheet, count, acts, names, say, openSheet }) {
    Object.assign(this, { sheet, count, acts, say, openSheet });
    this.heading = sheet.querySelector("h2");
    this.choices = sheet.querySelector("[data-part=choices]");
    this.typed = new WrittenWords({ form: sheet.querySelector(".l-words"), names, say, longest: CELL_TEXT, keep: () => {} });
    this.label = sheet.querySelector(".l-words label");
    this.keep = sheet.querySelector(".l-words [type=submit]");
  }

  open(n, { type = false } = {}) {
    const { acts, say, count } = this;
    const entry = acts.entry(n);
    const isGuess = !entry && n > acts.state.next;
    this.heading.replaceChildren(setNumeral(count.texts[n - 1]));
    this.choices.replaceChildren(...(isGuess ? [] : this.#offers(n, entry)));
    this.label.textContent = say(isGuess ? "type-guess" : "type-said");
    this.keep.textContent = say(isGuess ? "guess-it" : "write-it");
    this.typed.begin("", (text) => this.#done(() => (isGuess ? acts.predict(n, text) : acts.write(n, text))));
    this.openSheet(this.sheet, type ? this.typed.input : null);
  }

  #offers(n, entry) {
    const { acts, say, count } = this;
    const right = count.texts[n - 1], before = acts.entry(n - 1)?.text ?? "";
    const offers = [];
    const offer = (words, act) => offers.push(button(words, () => this.#done(act)));
    if (entry && entry.text !== right) offer(say("class-corrects", { text: right }), () => acts.correct(n, right));
    if (!entry) offer(say("as-it-counts", { text: right }), () => acts.write(n, right));
    for (const { heard, equal } of count.coming[String(n)] ?? []) {
      if (heard.length <= CELL_TEXT && heard !== entry?.text) offer(say(equal ? "also-right" : "they-said", { words: heard }), () => acts.write(n, heard));
    }
    if (before && before !== entry?.text) offer(say("again", { text: before }), () => acts.write(n, before));
    if (!entry?.left_out) offer(say("left-out"), () => acts.leaveOut(n));
    if (entry) offer(say("count-again"), () => acts.recountLine(n));
    const covered = acts.state.covered.includes(n);
    offer(say(covered ? "uncover" : "cover"), () => acts.toggleCover(n));
    const struck = entry?.struck.filter(Boolean) ?? [];
    const stands = entry && made("p", { className: "quiet", text: [entry.left_out ? say("cell-left-out") : say("stands", { text: entry.text }),
      ...struck.map((text) => say("cell-struck", { text }))].join(", ") });
    return [...(stands ? [stands] : []), made("div", { className: "l-buttons", children: offers })];
  }

  #done(act) {
    this.sheet.close();
    act();
  }
}
