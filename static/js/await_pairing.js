// A device that waits for a lesson: asks whether a teacher has typed its code, and goes on; takes a fresh code when this one is over.

const page = document.querySelector("[data-status]");
const lost = document.querySelector("[data-lost]");
const EVERY = 2000;
const LONGEST = 30000;
let wait = EVERY;

async function ask() {
  if (!document.hidden) {
    try {
      const answer = await fetch(page.dataset.status, { credentials: "same-origin", cache: "no-store" });
      const told = await answer.json();
      if (told.state === "ready") return location.replace(told.address);
      if (told.state === "over") return location.reload();
      if (told.state === "lost") return lost.removeAttribute("hidden");
      wait = EVERY;
    } catch {
      wait = Math.min(LONGEST, wait * 2);
    }
  }
  return setTimeout(ask, wait);
}

if (page) setTimeout(ask, wait);
