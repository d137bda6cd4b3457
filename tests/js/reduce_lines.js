// Reduces one list of events a line of standard input, and writes one state a line: for comparing with Python's.

import { createInterface } from "node:readline";
import { reduceEvents } from "../../static/js/lesson/reduce.js";

for await (const line of createInterface({ input: process.stdin })) {
  process.stdout.write(`${JSON.stringify(reduceEvents(JSON.parse(line)))}\n`);
}
