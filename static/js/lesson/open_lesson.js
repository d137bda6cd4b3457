// Opens one lesson on this page, for board and lectern alike: the count, the list of events, the talk with the server.
// Without network the count comes from the browser's store; null where it is in neither.

import { EventList } from "./event_list.js";
import { EventMaker } from "./event.js";
import { openStore } from "./store.js";
import { Sync } from "./sync.js";

// person: who opened the page; lesson: its key; count: the address of its count as JSON; events: of its events; token: against cross-site requests.
export async function openLesson({ lesson, count: address, events, token, person }) {
  const store = await openStore(lesson);
  const about = store ? await store.about().catch(() => ({})) : {};
  const kept = about.counts?.[address] ?? null;
  const count = (await ask(address)) ?? kept;
  if (!count) return null;
  about.counts = { ...about.counts, [address]: count };
  const keepAbout = async (now) => { if (store) await store.keepAbout(now).catch(() => {}); };
  await keepAbout(about);
  const list = new EventList({ lesson, store, maker: new EventMaker(), person });
  await list.load();
  const sync = new Sync({ list, address: events, token, about, keepAbout });
  document.addEventListener("visibilitychange", () => { if (!document.hidden) sync.wake(); });
  window.addEventListener("online", () => sync.wake());
  window.addEventListener("beforeunload", (event) => { if (!list.stored && list.unsent.length) event.preventDefault(); });
  return { count, list, sync };
}

async function ask(address) {
  try {
    const answer = await fetch(address, { credentials: "same-origin", headers: { Accept: "application/json" } });
    return answer.ok && !answer.redirected ? await answer.json() : null;
  } catch {
    return null;
  }
}
