// The reducer against the vectors that Python is held to as well, and against every order of arrival.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import { reduceEvents } from "../../static/js/lesson/reduce.js";

const folder = new URL("../routines/lessons/vectors/", import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith(".json"));
const plain = (state) => JSON.parse(JSON.stringify(state));

test("there are vectors", () => assert.ok(names.length > 50));

for (const name of names) {
  const { says, events, state } = JSON.parse(readFileSync(new URL(name, folder)));
  test(`${name}: ${says}`, () => assert.deepEqual(plain(reduceEvents(events)), state));
  test(`${name} backwards and twice`, () => {
    const again = [...events].reverse();
    assert.deepEqual(plain(reduceEvents([...again, ...again])), state);
  });
}
