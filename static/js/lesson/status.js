// Says in words how safe the lesson is: what is sent, what is on this device only, and why.

const TROUBLES = { "signed-out": "sign-in", refused: "open-again", unknown: "not-yours", deleted: "deleted" };

// The sentences, most pressing first.
export function statusOf({ list, sync, say }) {
  const sentences = [];
  const waiting = list.unsent;
  const counts = waiting.filter((record) => record.event.kind.startsWith("term.")).length;
  if (!list.stored) sentences.push(say("page-only"));
  if (counts) sentences.push(say(counts === 1 ? "one-waiting" : "many-waiting", { count: counts }));
  else if (waiting.length) sentences.push(say("ink-waiting"));
  if (sync.trouble in TROUBLES) sentences.push(say(TROUBLES[sync.trouble]));
  else if (sync.trouble) sentences.push(say("offline"));
  if (!waiting.length && !sync.trouble) sentences.push(say("all-sent"));
  const refused = list.refused.length;
  if (refused) sentences.push(say(refused === 1 ? "one-refused" : "many-refused", { count: refused }));
  return sentences;
}

export function showStatus(root, parts) {
  const words = statusOf(parts).join(" ");
  if (root.dataset.trouble !== parts.sync.trouble) root.dataset.trouble = parts.sync.trouble;
  if (root.dataset.said !== words) {
    root.dataset.said = words;
    root.querySelector("p").textContent = words;
  }
  const list = root.querySelector("ul");
  const sentences = parts.list.refused.map((record) => record.refused);
  if (!sentences.length && list.hidden) return;
  list.hidden = !sentences.length;
  list.replaceChildren(...sentences.map((sentence) => {
    const item = document.createElement("li");
    item.textContent = sentence;
    return item;
  }));
}
