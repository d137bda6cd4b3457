// Says in words how safe the lesson is: what is sent, what is on this device only, and why.

const TROUBLES = {
  "offline": "offline", "server": "server-trouble", "signed-out": "sign-in", "another-person": "another-person", "refused": "open-again",
  "unknown": "not-yours", "not-paired": "not-paired", "deleted": "deleted",
};
const BETWEEN = " \u00b7 ";

// The sentences, most pressing first.
export function statusOf({ list, sync, say }) {
  const sentences = [];
  const waiting = list.unsent;
  const counts = waiting.filter((record) => record.event.kind.startsWith("term.")).length;
  const where = list.stored ? "waiting" : "on-page";
  if (counts) sentences.push(say(counts === 1 ? `one-${where}` : `many-${where}`, { count: counts }));
  else if (waiting.length) sentences.push(say(`ink-${where}`));
  else if (!list.stored) sentences.push(say("page-only"));
  if (sync.trouble) sentences.push(say(TROUBLES[sync.trouble]));
  const refused = list.refused.length, anothers = list.anothers.length;
  if (anothers) sentences.push(say(anothers === 1 ? "one-anothers" : "many-anothers", { count: anothers }));
  if (!waiting.length && !sync.trouble && !refused && !anothers) sentences.push(say("all-sent"));
  const removed = list.removed.length;
  if (removed) sentences.push(say(removed === 1 ? "one-removed" : "many-removed", { count: removed }));
  if (list.isBehind) sentences.push(say("page-behind"));
  if (refused) sentences.push(say(refused === 1 ? "one-refused" : "many-refused", { count: refused }));
  return sentences;
}

export function showStatus(root, parts) {
  const words = statusOf(parts).join(BETWEEN);
  if (root.dataset.trouble !== parts.sync.trouble) root.dataset.trouble = parts.sync.trouble;
  if (root.dataset.said !== words) {
    root.dataset.said = words;
    root.querySelector("p").textContent = words;
  }
  const list = root.querySelector("ul");
  const sentences = [...new Set(parts.list.refused.map((record) => record.refused))];
  if (!sentences.length && list.hidden) return;
  list.hidden = !sentences.length;
  list.replaceChildren(...sentences.map((sentence) => {
    const item = document.createElement("li");
    item.textContent = sentence;
    return item;
  }));
}
