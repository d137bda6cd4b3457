// Ending a lesson from board or lectern: asked once, kept as an event like all else, then on to the log once it is sent.

const PATIENCE = 4000; // ms; without network the page stays and says so
const LOOK_EVERY = 150;

// dialog: with buttons [data-does=end-it] and a form that closes it; after: where to go on.
export function offerEnding({ dialog, after, list, sync }) {
  dialog.querySelector("[data-does=end-it]").addEventListener("click", async () => {
    dialog.close();
    if (!list.state.ended) await list.add("lesson.end", {});
    sync.wake();
    if (await allSent(list)) location.assign(after);
  });
  return () => dialog.showModal();
}

export async function allSent(list, { patience = PATIENCE, wait = (ms) => new Promise((done) => setTimeout(done, ms)) } = {}) {
  for (let waited = 0; list.unsent.length; waited += LOOK_EVERY) {
    if (waited >= patience) return false;
    await wait(LOOK_EVERY);
  }
  return true;
}
