// What the class noticed: planned answers as taps, own words, each to be changed or taken back.

import { button, made, redraw } from "./elements.js";
import { heardAnswers } from "./guide.js";
import { WrittenWords } from "./written_words.js";

const NOTICE = 280;

export class NoticingsPart {
  constructor({ sheet, kept, count, acts, names, say, openSheet }) {
    Object.assign(this, { sheet, kept, count, acts, say, openSheet });
    this.expected = sheet.querySelector("[data-part=expected]");
    this.typed = new WrittenWords({ form: sheet.querySelector(".l-words"), names, say, longest: NOTICE,
      keep: (text) => this.#keep(text) });
    this.label = sheet.querySelector(".l-words label");
  }

  open(notice = null) {
    this.label.textContent = this.say(notice ? "change-words" : "own-words");
    this.typed.begin(notice?.text ?? "", (text) => (notice ? this.#change(notice, text) : this.#keep(text)));
    this.openSheet(this.sheet, notice ? this.typed.input : null);
  }

  paint(state) {
    const { count, say, acts } = this;
    const heard = heardAnswers(state);
    redraw(this.expected, [...heard], () => count.expected.flatMap((answer, position) => (isSlip(answer) ? [] : [made("li", { children: [
      button(answer.words, () => (heard.has(position) ? acts.takeBack(heard.get(position)) : acts.notice(answer.words.slice(0, NOTICE), position)),
        { key: `answer-${position}`, className: "l-row l-tick", "aria-pressed": String(heard.has(position)), lang: count.language }),
      ...(answer.reply && heard.has(position) ? [made("p", { className: "l-told", text: answer.reply, lang: count.language })] : [])] })])));
    redraw(this.kept, state.notices, () => (state.notices.length ? state.notices.map((notice) => made("li", { className: "l-kept", children: [
      made("span", { text: notice.text }),
      made("span", { className: "l-buttons", children: [
        button(say("change"), () => this.open(notice), { key: `change-${notice.event}`, className: "button button-small", "aria-label": say("change-this", { text: notice.text }) }),
        button(say("take-away"), () => acts.takeBack(notice.event), { key: `away-${notice.event}`, className: "button button-small", "aria-label": say("take-this-away", { text: notice.text }) }),
      ] }),
    ] })) : [made("li", { className: "quiet", text: say("nothing-noticed") })]));
  }

  #keep(text) {
    this.acts.notice(text);
    this.sheet.close();
  }

  #change(notice, text) {
    if (text !== notice.text) this.acts.editNotice(notice.event, text);
    this.sheet.close();
  }
}

// A slip foreseen at a count is one tap at that count.
function isSlip({ sort, n }) {
  return sort === "slip" && n > 0;
}
