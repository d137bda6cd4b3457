// The board's own parts, as far as they need no page.

import assert from "node:assert/strict";
import { test } from "node:test";
import { cellInWords, cellView } from "../../static/js/lesson/board/cell_view.js";
import { fit } from "../../static/js/lesson/board/fitting.js";
import { Fold } from "../../static/js/lesson/board/folding.js";
import { Gestures } from "../../static/js/lesson/board/gestures.js";
import { jumpLine } from "../../static/js/lesson/board/ink_lines.js";
import { widthOf } from "../../static/js/lesson/board/measure.js";
import { digitPlaces, piecesOf } from "../../static/js/lesson/board/numeral.js";
import { EventList } from "../../static/js/lesson/event_list.js";
import { EventMaker } from "../../static/js/lesson/event.js";
import { reduceEvents } from "../../static/js/lesson/reduce.js";
import { statusOf } from "../../static/js/lesson/status.js";
import { FakeStore } from "./fakes.js";

const kinds = (text) => piecesOf(text).map((piece) => piece.kind).join(" ");

for (const [text, expected] of [
  ["64", "number"], ["1,340", "number"], ["-22", "sign number"], ["\u221222", "sign number"], ["$0.05", "number"],
  ["35¢", "number"], ["2/3", "fraction"], ["1 2/4", "number fraction"], ["-1 2/4", "sign number fraction"],
  ["1 ft 2 in", "number unit number unit"], ["2 1/3 in", "number fraction unit"], ["12 fl oz", "number unit unit"],
  ["8:30", "number"], ["a hundred and six", "words"], ["", "words"], ["/", "words"],
]) {
  test(`"${text}" is set as ${expected}`, () => assert.equal(kinds(text), expected));
}

test("every piece knows where it starts in the text", () => {
  for (const { text, top, at } of piecesOf("12 3/4 in")) assert.equal("12 3/4 in".indexOf(text ?? top), at);
});

test("digits are underlined from the last to the first, and signs never", () => {
  assert.deepEqual(digitPlaces("$1.25").map((place) => "$1.25"[place]), ["5", "2", "1"]);
});

test("a stacked fraction is as wide as its wider part", () => {
  const measured = (words) => words.length;
  assert.equal(widthOf("11/3", measured), widthOf("3/11", measured));
  assert.ok(widthOf("1 1/3", measured) > widthOf("1/3", measured));
});

const WIDE = { width: 1600, height: 900 };

test("a small grid gets the digits wished for, and cells no larger than the drawing's", () => {
  const fitted = fit({ room: WIDE, screen: 1920, rows: 3, columns: 5, widest: 1.17, stacked: false });
  assert.equal(fitted.font, 88);
  assert.equal(fitted.width, 262);
});

test("a hundred chart stands whole on a classroom's picture, with digits that the back row reads", () => {
  const fitted = fit({ room: WIDE, screen: 1920, rows: 10, columns: 10, widest: 1.76, stacked: false });
  assert.ok(fitted.font * 0.723 >= 53);
  assert.deepEqual([fitted.rows, fitted.columns], [10, 10]);
});

test("what is too wide or too long is shown by lines rather than smaller", () => {
  const wide = fit({ room: WIDE, screen: 1920, rows: 2, columns: 10, widest: 2.66, stacked: false });
  assert.ok(wide.font >= 74);
  assert.ok(wide.columns < 10);
  const long = fit({ room: WIDE, screen: 1920, rows: 20, columns: 5, widest: 1.2, stacked: false });
  assert.ok(long.font >= 74);
  assert.ok(long.rows >= 8);
  assert.ok(long.rows < 20);
});

test("nothing stands over the room", () => {
  for (const rows of [1, 4, 9, 12]) {
    for (const columns of [1, 5, 10, 12]) {
      for (const widest of [0.6, 1.8, 4.5]) {
        for (const stacked of [false, true]) {
          const fitted = fit({ room: WIDE, screen: 1920, rows, columns, widest, stacked });
          assert.ok(fitted.rows * fitted.height <= WIDE.height + 1);
          assert.ok(fitted.columns === 1 || fitted.columns * fitted.width <= WIDE.width + 1);
        }
      }
    }
  }
});

const FOLDS = {
  across: { terms: 6, rows: 3, columns: 3, fill: "across", places: [[1, 2], [1, 3], [2, 1], [2, 2], [2, 3], [3, 1], [3, 2], [3, 3], [4, 1]] },
  down: { terms: 4, rows: 2, columns: 2, fill: "down", places: [[1, 1], [2, 1], [1, 2], [2, 2], [1, 3]] },
  up: { terms: 4, rows: 2, columns: 2, fill: "across-up", places: [[2, 1], [2, 2], [1, 1], [1, 2], [0, 1], [0, 2]] },
};
const foldOf = (name) => new Fold({ ...FOLDS[name], texts: FOLDS[name].places.map((_, index) => String(10 * (index + 1))),
  jumps: { 1: "+10", "-1": "\u221210" }, landmarks: [2] });

test("a page has the planned counts, empty cells before the first and after the last", () => {
  assert.deepEqual(foldOf("across").page(0), [[null, 1, 2], [3, 4, 5], [6, null, null]]);
  assert.deepEqual(foldOf("down").page(4), [[1, 3], [2, 4]]);
});

test("a board that goes on grows by a line where its lines go", () => {
  assert.deepEqual(foldOf("across").page(9), [[null, 1, 2], [3, 4, 5], [6, 7, 8], [9, null, null]]);
  assert.deepEqual(foldOf("down").page(5), [[1, 3, 5], [2, 4, null]]);
  assert.deepEqual(foldOf("up").page(5), [[5, null], [3, 4], [1, 2]]);
});

test("a line runs as the count is filled", () => {
  assert.deepEqual(foldOf("across").lineOf(4), [3, 4, 5]);
  assert.deepEqual(foldOf("down").lineOf(4), [3, 4]);
});

function board(name = "across") {
  const list = new EventList({ lesson: "L", store: new FakeStore(), maker: new EventMaker({ elapsed: () => 1 }), channel: null });
  return { list, gestures: new Gestures({ list, fold: foldOf(name) }) };
}

test("the next count is the count's own text, up to the end of what is known", async () => {
  const { list, gestures } = board();
  for (let time = 0; time < 9; time += 1) await gestures.writeNext();
  assert.equal(list.state.entries["9"][0].text, "90");
  assert.equal(gestures.writeNext(), null);
});

test("the class's correction strikes and keeps, a slip of the key leaves no trace", async () => {
  const { list, gestures } = board();
  await gestures.write(1, "11");
  await gestures.write(1, "12");
  assert.deepEqual(list.state.entries["1"][0].struck, []);
  await gestures.correct(1, "10");
  assert.deepEqual(list.state.entries["1"].map(({ text, struck }) => [text, struck]), [["10", ["12"]]]);
  assert.equal(gestures.correct(1, "10"), null);
});

test("a mark on a marked cell takes it away, and undo puts it back", async () => {
  const { list, gestures } = board();
  await gestures.toggleMark(1, "ring");
  await gestures.toggleMark(1, "ring");
  assert.equal(list.state.marks.length, 0);
  await gestures.undo();
  assert.equal(list.state.marks.length, 1);
});

test("undo takes back one thing after the other, and ends", async () => {
  const { list, gestures } = board();
  await gestures.writeNext();
  await gestures.jump(1, 2);
  await gestures.toggleCover(1);
  await gestures.undo();
  assert.deepEqual(list.state.covered, []);
  await gestures.undo();
  assert.deepEqual(list.state.jumps, []);
  await gestures.undo();
  assert.deepEqual(list.state.entries, {});
  assert.equal(gestures.undo(), null);
});

test("the clicker's way back takes the last count, and leaves the ink", async () => {
  const { list, gestures } = board();
  await gestures.writeNext();
  await gestures.writeNext();
  await gestures.toggleMark(1, "tint");
  await gestures.undoWrite();
  assert.equal(list.state.next, 2);
  assert.equal(list.state.marks.length, 1);
});

test("the underline goes from digit to digit and then away", async () => {
  const { list, gestures } = board();
  const seen = [];
  for (let time = 0; time < 3; time += 1) {
    await gestures.underlineNext(1, [1, 0]);
    seen.push(list.ahead.marks.map((mark) => mark.place).join());
  }
  assert.deepEqual(seen, ["1", "0", ""]);
});

test("a line is counted again as far as it is written", async () => {
  const { list, gestures } = board();
  for (let time = 0; time < 4; time += 1) await gestures.writeNext();
  await gestures.recountLine(5);
  assert.deepEqual(list.state.recounts.map(({ from, to }) => [from, to]), [[3, 4]]);
});

const VIEW = { frame: 2, landmarks: new Set([2]), text: (n) => `secret ${n}` };
const stateOf = (...events) => reduceEvents(events.map(([kind, data], index) => ({ v: 1, id: `e${index}`, t: index + 1, device: "d", ms: 0, at: "", kind, data })));

test("a count that is not written is not in what its cell shows", () => {
  const state = stateOf(["term.write", { n: 1, text: "10", over: null }], ["predict", { n: 3, text: "35" }]);
  for (const n of [2, 3, 4]) assert.ok(!JSON.stringify(cellView(state, n, VIEW)).includes("secret"));
});

test("a covered count is not in what its cell shows either", () => {
  const state = stateOf(["term.write", { n: 1, text: "10", over: null }], ["cover", { n: 1 }]);
  assert.ok(!JSON.stringify(cellView(state, 1, VIEW)).includes("10"));
});

test("a cell is said with what was struck, its marks and that it is next", () => {
  const say = (name, blanks = {}) => `${name}${blanks.text ? `:${blanks.text}` : ""}`;
  const state = stateOf(["term.write", { n: 1, text: "54", over: null }], ["term.correct", { n: 1, text: "64", over: "e0" }]);
  assert.equal(cellInWords(cellView(state, 1, VIEW), ["cell-ring"], say), "64, cell-struck:54, cell-ring");
  assert.equal(cellInWords(cellView(state, 2, VIEW), [], say), "cell-next");
});

test("a jump down the first column runs outside the grid, with its label beyond it", () => {
  const end = (row, y) => ({ place: [row, 0], cell: { left: 300, right: 500, top: y, bottom: y + 100 },
    ink: { left: 370, right: 430, top: y + 20, bottom: y + 80 } });
  const line = jumpLine(end(0, 0), end(1, 100), { left: 300, right: 1300, top: 0, bottom: 300 }, 80,
    { first: { row: 0, column: 0 }, last: { row: 2, column: 4 }, arcs: [], margin: { left: 200, right: 200 } });
  assert.ok(line.outside);
  assert.ok(line.label.x < 300);
});

const say = (name, { count = "" } = {}) => `${name}${count}`;
const listed = ({ stored = true, waiting = [], refused = [], removed = [], anothers = [], isBehind = false } = {}) => ({ stored, refused, removed, anothers, isBehind,
  unsent: waiting.map((kind) => ({ event: { kind } })) });

for (const [says, list, trouble, expected] of [
  ["all is sent", listed(), "", ["all-sent"]],
  ["one count waits", listed({ waiting: ["term.write"] }), "", ["one-waiting1"]],
  ["counts wait without network", listed({ waiting: ["term.write", "term.correct", "mark.add"] }), "offline", ["many-waiting2", "offline"]],
  ["only ink waits", listed({ waiting: ["mark.add"] }), "", ["ink-waiting"]],
  ["the session ended", listed({ waiting: ["term.write"] }), "signed-out", ["one-waiting1", "sign-in"]],
  ["the server keeps nothing", listed({ waiting: ["term.write"] }), "server", ["one-waiting1", "server-trouble"]],
  ["someone else signed in", listed({ waiting: ["term.write"] }), "another-person", ["one-waiting1", "another-person"]],
  ["what someone else wrote waits", listed({ anothers: [1, 1] }), "", ["many-anothers2"]],
  ["the pairing ended", listed({ waiting: ["term.write"] }), "not-paired", ["one-waiting1", "not-paired"]],
  ["words were removed from what was sent late", listed({ removed: [1] }), "", ["all-sent", "one-removed1"]],
  ["another device does more", listed({ isBehind: true }), "", ["all-sent", "page-behind"]],
  ["the browser keeps nothing", listed({ stored: false }), "", ["page-only", "all-sent"]],
  ["the browser keeps nothing and a count waits", listed({ stored: false, waiting: ["term.write"] }), "offline", ["one-on-page1", "offline"]],
  ["the browser keeps nothing and ink waits", listed({ stored: false, waiting: ["mark.add"] }), "", ["ink-on-page"]],
  ["one was refused", listed({ refused: [1] }), "", ["one-refused1"]],
]) {
  test(`when ${says} the page says so`, () => assert.deepEqual(statusOf({ list, sync: { trouble }, say }), expected));
}
