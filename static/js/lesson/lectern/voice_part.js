// How the class sounded, by one tap on the stretch since the last mark, or on a stretch picked on the grid.

import { redraw, made } from "./elements.js";
import { voiceStretch } from "./guide.js";

export class VoicePart {
  #picked = null;

  constructor({ root, heading, pick, hint, grid, count, acts, say }) {
    Object.assign(this, { root, heading, pickButton: pick, hint, grid, count, acts, say });
    for (const button of root.querySelectorAll("[data-how]")) button.addEventListener("click", () => this.#mark(button.dataset.how));
    pick.addEventListener("click", () => this.#pick());
  }

  paint(state) {
    this.state = state;
    const { say, count } = this;
    const since = voiceStretch(state);
    const stretch = this.#picked ?? since;
    const text = (n) => count.texts[n - 1];
    let words = say("voice");
    if (stretch && this.#picked) words = say("voice-from-to", { from: text(stretch.from), to: text(stretch.to) });
    else if (stretch?.how) words = say("voice-from-to", { from: text(stretch.from), to: text(stretch.to) });
    else if (stretch && stretch.from > 1) words = say("voice-since", { text: text(stretch.from) });
    redraw(this.heading, words, () => [words]);
    const picking = this.grid.picked !== null;
    this.pickButton.setAttribute("aria-pressed", String(picking));
    this.hint.textContent = picking ? say("pick-stretch") : stretch ? "" : say("voice-later");
    for (const button of this.root.querySelectorAll("[data-how]")) {
      button.disabled = !stretch;
      button.setAttribute("aria-pressed", String(Boolean(stretch?.how) && stretch.how === button.dataset.how));
    }
  }

  #mark(how) {
    const stretch = this.#picked ?? voiceStretch(this.state);
    if (!stretch) return;
    this.#picked = null;
    this.acts.voice(stretch, how);
    this.paint(this.state);
  }

  #pick() {
    const begin = this.grid.picked === null;
    this.#picked = null;
    this.grid.pick(begin ? (stretch) => {
      const last = Math.max(1, this.state.next - 1);
      this.#picked = { from: Math.min(stretch.from, last), to: Math.min(stretch.to, last) };
      this.paint(this.state);
      this.root.querySelector("[data-how]").focus();
    } : null);
    this.paint(this.state);
    if (begin) this.grid.grid.focus(Math.max(1, this.state.next - 1), { take: true });
  }
}

// What was marked so far, in words.
export function voicesInWords(state, count, say) {
  return state.voices.map(({ from, to, how }) => made("li", { text: say("voice-was", {
    how: say(how), from: count.texts[from - 1], to: count.texts[to - 1] }) }));
}
