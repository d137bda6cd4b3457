// The targets of the plan: seen, not yet, or not recorded. Nothing is chosen beforehand.

import { button, made, redraw } from "./elements.js";

export class TargetsPart {
  constructor({ root, count, acts, say }) {
    Object.assign(this, { root, count, acts, say });
  }

  paint(state) {
    redraw(this.root, state.targets, () => this.count.targets.map((sentence, position) => made("li", { className: "l-target", children: [
      made("p", { text: sentence, lang: this.count.language, id: `target-${position}` }),
      made("div", { className: "l-buttons", role: "group", "aria-labelledby": `target-${position}`, children: ["seen", "not-yet"].map((seen) =>
        button(this.say(`target-${seen}`), () => this.acts.target(position, seen), { key: `${position}-${seen}`, className: "button l-choice",
          "aria-pressed": String(state.targets[String(position)] === seen) })) })] })));
  }
}
