// The lectern: puts its parts together and draws the lesson's state. What stands here is for the teacher's eyes.

import { Fold } from "../board/folding.js";
import { setNumeral } from "../board/numeral.js";
import { Acts } from "./acts.js";
import { CellSheet } from "./cell_sheet.js";
import { ComingPart } from "./coming_part.js";
import { redraw } from "./elements.js";
import { GridPart } from "./grid_part.js";
import { stopReached } from "./guide.js";
import { NoticingsPart } from "./noticings_part.js";
import { StopsPart } from "./stops_part.js";
import { TargetsPart } from "./targets_part.js";
import { VoicePart, voicesInWords } from "./voice_part.js";

export class LecternView {
  #before = null;
  #goingOn = false;

  constructor({ root, count, list, say, names, ruler }) {
    Object.assign(this, { root, count, list, say });
    const part = (name) => root.querySelector(`[data-part="${name}"]`);
    this.part = part;
    const fold = new Fold(count);
    const acts = this.acts = new Acts({ list, fold });
    const openSheet = (sheet, field) => this.openSheet(sheet, field);
    this.cell = new CellSheet({ sheet: part("cell-sheet"), count, acts, names, say, openSheet });
    this.grid = new GridPart({ root: part("grid"), room: part("grid-room"), earlier: part("earlier"), later: part("later"), fold, say, ruler, open: (n) => this.cell.open(n) });
    this.stops = new StopsPart({ root: part("now"), times: part("times"), list: part("stops"), count, acts, say, device: list.maker.device });
    this.coming = new ComingPart({ root: part("coming"), said: part("said"), differ: part("differ"), count, acts, say,
      openCell: (n, how) => this.cell.open(n, how) });
    this.voice = new VoicePart({ root: part("voice"), heading: part("voice-heading"), pick: part("voice-pick"), hint: part("voice-hint"),
      grid: this.grid, count, acts, say });
    this.noticings = new NoticingsPart({ sheet: part("notice-sheet"), kept: part("noticed"), count, acts, names, say, openSheet });
    this.targets = new TargetsPart({ root: part("targets"), count, acts, say });
    this.ordinals = new Intl.PluralRules(document.documentElement.lang || "en", { type: "ordinal" });
    this.#listen();
  }

  get frame() {
    const { next } = this.list.state;
    return next > this.count.terms && !this.#goingOn ? 0 : Math.min(next, this.count.texts.length);
  }

  writeNext() {
    const { next } = this.list.ahead;
    if (next > this.count.terms && !this.#goingOn) {
      this.#goingOn = true;
      this.tell(this.say("planned-end"));
      this.paint();
    } else if (this.acts.writeNext() === null) this.tell(this.say("no-further"));
    else this.tell("");
  }

  undo() {
    if (this.acts.undo() === null) this.tell(this.say("nothing-to-undo"));
  }

  paint() {
    const { state } = this.list;
    this.grid.paint(state, this.frame);
    this.#paintHead(state);
    this.stops.paint(state, { heardLive: this.#before !== null });
    this.coming.paint(state);
    this.voice.paint(state);
    redraw(this.part("voices"), state.voices, () => voicesInWords(state, this.count, this.say));
    this.noticings.paint(state);
    this.targets.paint(state);
    this.#paintUndo();
    this.part("ended").hidden = !state.ended;
    this.root.classList.toggle("is-over", state.ended);
    this.#follow(state);
    this.#before = state;
  }

  tell(words) {
    this.part("told").textContent = words;
  }

  openSheet(sheet, field = null) {
    if (!sheet.open) sheet.showModal();
    (field ?? sheet.querySelector("h2")).focus();
  }

  // The count reached a stop, or went on from one. Only of counts that came while this page was open.
  #follow(state) {
    const reached = this.#before && !state.ended ? stopReached(this.#before, state, this.count) : null;
    if (reached?.enter !== undefined) this.acts.enterStop(reached.enter);
    else if (reached) this.acts.leaveStop(reached.leave);
  }

  #paintHead(state) {
    const { say, count } = this;
    const n = state.next - 1;
    const entry = state.entries[String(n)]?.at(-1);
    const text = !n ? "" : entry?.left_out ? say("cell-left-out") : entry?.text ?? count.texts[n - 1];
    redraw(this.part("on-board"), text, () => (text ? [setNumeral(text)] : [say("nothing-yet")]));
    const ordinal = say(`ordinal-${this.ordinals.select(n)}`, { n });
    this.part("how-far").textContent = n ? say("how-far", { ordinal, terms: count.terms }) : say("planned", { terms: count.terms });
  }

  #paintUndo() {
    const event = this.acts.newest();
    const words = event ? this.#named(event) : "";
    const button = this.part("undo");
    button.disabled = !event;
    button.querySelector("[data-what]").textContent = words;
  }

  // What an undo would take back, in a word or two.
  #named({ kind, data }) {
    const { say, count } = this;
    const text = (n) => count.texts[n - 1] ?? "";
    if (kind === "term.write" || kind === "term.correct" || kind === "predict") return say(`undo-${kind}`, { text: data.text });
    if (kind === "term.left-out" || kind === "cover" || kind === "uncover" || kind === "mark.add") return say(`undo-${kind}`, { text: text(data.n) });
    return say(`undo-${kind}`);
  }

  #listen() {
    const does = {
      "next": () => this.writeNext(), "undo": () => this.undo(), "notice": () => this.noticings.open(),
      "ask": () => this.openSheet(this.part("ask-sheet")), "devices": () => this.openSheet(this.part("devices-sheet")),
      "reopen": () => this.list.add("lesson.reopen", {}),
    };
    for (const [name, act] of Object.entries(does)) {
      for (const button of this.root.querySelectorAll(`[data-does="${name}"]`)) button.addEventListener("click", act);
    }
    for (const sheet of this.root.querySelectorAll("dialog")) {
      sheet.addEventListener("click", (event) => { if (event.target === sheet) sheet.close(); });
    }
    document.addEventListener("keydown", (event) => {
      if (event.repeat || event.target.closest("input, textarea, select, dialog")) return;
      if (event.key === "PageDown") this.writeNext();
      else if (event.key === "PageUp") this.acts.undoWrite();
      else if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z") this.undo();
      else return;
      event.preventDefault();
    });
  }
}
