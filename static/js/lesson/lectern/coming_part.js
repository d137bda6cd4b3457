// What was said otherwise and still stands, what two devices wrote differently, and what comes: each as one tap.

import { setNumeral } from "../board/numeral.js";
import { CELL_TEXT } from "./acts.js";
import { button, made, redraw } from "./elements.js";
import { coming, differing, saidOtherwise } from "./guide.js";

const STANDING = 2, HEARD_AHEAD = 3, FLAGS = 2;

export class ComingPart {
  #letStand = new Set(); // entries that stay as they were said

  constructor({ root, said, differ, count, acts, say, openCell }) {
    Object.assign(this, { root, said, differ, count, acts, say, openCell });
  }

  paint(state) {
    this.#paintDiffering(differing(state));
    const said = saidOtherwise(state, this.count).filter(({ event }) => !this.#letStand.has(event)).slice(0, STANDING);
    this.said.hidden = !said.length;
    redraw(this.said, said, () => said.map((row) => this.#saidRow(row, state)));
    const rows = coming(state, this.count);
    const before = state.entries[String(state.next - 1)]?.at(-1)?.text ?? "";
    redraw(this.root, [rows, before], () => (rows.length
      ? rows.map((row, at) => (row.plain ? this.#plain(row) : this.#row(row, at === 0, before)))
      : [made("li", { className: "quiet", text: this.say("no-further") })]));
  }

  #row({ n, text, heard, flags }, isNext, before) {
    const { say } = this;
    const parts = flags.slice(0, FLAGS).map((sentence) => made("p", { className: "l-flag", lang: this.count.language, text: say("ends-here", { sentence }) }));
    if (isNext) parts.push(...heard.map((slip) => this.#slip(n, slip)), this.#buttons(n, before));
    else parts.push(...this.#mayHear(heard));
    return made("li", { className: isNext ? "l-coming is-first" : "l-coming", children: [
      made("p", { className: "l-number", children: [setNumeral(text)] }), made("div", { className: "l-coming-words", children: parts })] });
  }

  #slip(n, { heard, why, reply, equal }) {
    const { say, acts } = this;
    const told = [equal ? "" : why, reply && say("ask", { words: reply })].filter(Boolean).join(" ");
    const children = heard.length <= CELL_TEXT
      ? [button(say(equal ? "also-right" : "they-said", { words: heard }), () => acts.write(n, heard), { key: `heard-${heard}`, className: "button l-heard" })]
      : [made("p", { text: say(equal ? "right-too" : "may-hear", { words: `“${heard}”` }) })];
    if (told) children.push(made("p", { className: "l-told", text: told, lang: this.count.language }));
    return made("div", { className: "l-slip", children });
  }

  // Of a count further ahead: only what may be heard, in one line.
  #mayHear(heard) {
    const listed = (equal) => heard.filter((slip) => slip.equal === equal).slice(0, HEARD_AHEAD).map((slip) => `“${slip.heard}”`).join(", ");
    return [["may-hear", listed(false)], ["right-too", listed(true)]].filter(([, words]) => words)
      .map(([name, words]) => made("p", { text: this.say(name, { words }) }));
  }

  #buttons(n, before) {
    const { say, acts } = this;
    const buttons = [];
    if (before) buttons.push(button(say("again", { text: before }), () => acts.write(n, before), { key: "again" }));
    buttons.push(button(say("left-out"), () => acts.leaveOut(n), { key: "left-out" }));
    buttons.push(button(say("other-words"), () => this.openCell(n, { type: true }), { key: "other" }));
    return made("div", { className: "l-buttons", children: buttons });
  }

  #plain({ plain, more }) {
    return made("li", { className: "l-coming is-plain", children: [
      made("p", { className: "quiet", text: this.say(more ? "follow-more" : plain.length === 1 ? "follows" : "follow", { texts: plain.join(", ") }) })] });
  }

  #saidRow({ n, event, text, leftOut, right, reply, why }, state) {
    const { say, acts } = this;
    const words = leftOut ? say("was-left-out", { right }) : say("was-said", { text, right });
    const told = [why, reply && say("ask", { words: reply })].filter(Boolean).join(" ");
    return made("div", { className: "l-said", children: [
      made("p", { children: [made("strong", { text: words })] }),
      ...(told ? [made("p", { className: "l-told", text: told, lang: this.count.language })] : []),
      made("div", { className: "l-buttons", children: [
        button(say("class-corrects", { text: right }), () => acts.correct(n, right), { key: `correct-${n}` }),
        button(say("let-stand"), () => { this.#letStand.add(event); this.paint(state); }, { key: `stand-${n}` })] })] });
  }

  #paintDiffering(cells) {
    const { say, acts } = this;
    this.differ.hidden = !cells.length;
    redraw(this.differ, cells, () => cells.map(({ n, entries }) => made("div", { className: "l-said", children: [
      made("p", { children: [made("strong", { text: say("which-stands", { right: this.count.texts[n - 1] }) })] }),
      made("div", { className: "l-buttons", children: entries.map((entry) => button(
        entry.left_out ? say("left-out") : `“${entry.text}”`, () => acts.settle(n, entry, entries), { key: `${n}-${entry.event}` })) })] })));
  }
}
