// Now: the stop the class is at, or the one that comes; its times as buttons; all stops in a list.

import { ThinkBar } from "../board/think.js";
import { button, made, redraw } from "./elements.js";
import { stopComing, stopNow } from "./guide.js";

const TIMES = ["think", "partner", "share"];

export class StopsPart {
  #started = null; // which of the times was begun here

  constructor({ root, times, list, count, acts, say, device }) {
    Object.assign(this, { root, times, all: list, count, acts, say });
    this.left = times.querySelector("[data-left]");
    this.bar = new ThinkBar({ root: times, bar: times.querySelector("[data-bar]"), device, tell: (seconds) => this.#tell(seconds) });
    times.querySelector("[data-does=stop-time]").addEventListener("click", () => acts.think(0));
  }

  paint(state, { heardLive }) {
    const { count, say } = this;
    const now = stopNow(state, count), coming = stopComing(state, count);
    const shown = now ?? coming;
    redraw(this.root, [now, coming], () => (shown === null ? [made("p", { className: "quiet", text: say(count.stops.length ? "no-more-stops" : "no-stops") })] : this.#card(shown, shown === now)));
    redraw(this.all, [now, Object.keys(state.stops)], () => count.stops.map((stop, at) => this.#row(stop, at, now === at, String(at) in state.stops)));
    this.bar.paint(state.ended ? null : state.think, { heardLive });
    this.times.hidden = !this.bar.isRunning;
    if (!state.think) this.#started = null;
  }

  #card(position, isNow) {
    const { say, acts, count } = this;
    const stop = count.stops[position];
    const buttons = TIMES.filter((name) => stop[name] > 0).map((name) => button(
      say(`time-${name}`, { seconds: stop[name] }), () => this.#begin(name, stop[name]), { key: name }));
    const go = isNow
      ? button(say("go-on"), () => acts.leaveStop(position), { key: "stop" })
      : button(say("open-stop"), () => acts.enterStop(position), { key: "stop" });
    return [
      made("p", { className: "l-stop-place", children: [
        made("strong", { text: say("stop-number", { number: position + 1 }) }), " ", made("span", { text: this.#place(stop) }),
        ...(isNow ? [] : [` · ${say("coming-stop")}`])] }),
      made("p", { className: "l-question", text: stop.question || say("no-question"), lang: count.language }),
      ...(stop.answer ? [made("p", { className: "l-answer", text: stop.answer, lang: count.language })] : []),
      ...(stop.routes.length ? [made("ul", { className: "routes plain", lang: count.language,
        children: stop.routes.map((route) => made("li", { text: route })) })] : []),
      made("div", { className: "l-buttons", children: [...(isNow ? buttons : []), go] }),
    ];
  }

  #row(stop, position, isNow, wasAt) {
    const { say, acts } = this;
    const words = [made("strong", { text: say("stop-number", { number: position + 1 }) }), made("span", { text: this.#place(stop) }),
      made("span", { className: "l-row-words", text: stop.question, lang: this.count.language })];
    const note = isNow ? say("stop-now") : wasAt ? say("stop-was") : "";
    if (note) words.push(made("span", { className: "quiet", text: note }));
    const open = button(words, () => acts.enterStop(position), { key: `row-${position}`, className: "l-row" });
    if (isNow) open.setAttribute("aria-current", "true");
    return made("li", { children: [open] });
  }

  #place({ said }) {
    return said ? this.say("after-count", { text: said }) : this.say("before-first");
  }

  #begin(name, seconds) {
    this.#started = name;
    this.acts.think(seconds);
  }

  #tell(seconds) {
    const words = this.say("time-left", { what: this.say(this.#started ?? "think"), seconds });
    if (this.left.textContent !== words) this.left.textContent = words;
    if (seconds === 0) this.times.hidden = true;
  }
}
