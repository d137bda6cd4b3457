// What the lectern adds to the lesson beside what the board may: stops, noticings, the voice, targets, which entry stands.

import { Gestures, TAKEN_BACK } from "../board/gestures.js";

const ON_THE_LECTERN = new Set([...TAKEN_BACK, "notice.add", "notice.edit", "voice", "target"]);
export const CELL_TEXT = 40; // signs, as docs/lessons.md says

export class Acts extends Gestures {
  enterStop(stop) {
    return this.state.at_stop === stop ? null : this.list.add("stop.enter", { stop });
  }

  leaveStop(stop) {
    return this.list.add("stop.leave", { stop });
  }

  notice(text, expected = null) {
    return this.list.add("notice.add", { text, expected });
  }

  editNotice(event, text) {
    return this.list.add("notice.edit", { event, text });
  }

  takeBack(event) {
    return this.list.add("undo", { event });
  }

  voice({ from, to }, how) {
    return this.list.add("voice", { from, to, how });
  }

  // A second tap on what is chosen makes it "not recorded" again.
  target(position, seen) {
    const chosen = this.state.targets[String(position)] === seen;
    return this.list.add("target", { position, seen: chosen ? "" : seen });
  }

  // Two devices wrote different things in one cell: this entry stands, for both.
  async settle(n, stands, entries) {
    for (const { event } of entries) {
      if (event === stands.event) continue;
      if (stands.left_out) await this.list.add("term.left-out", { n, over: event });
      else await this.list.add("term.write", { n, text: stands.text, over: event });
    }
  }

  undo(kinds = ON_THE_LECTERN) {
    return super.undo(kinds);
  }

  newest(kinds = ON_THE_LECTERN) {
    return super.newest(kinds);
  }
}
