// Keeps a lesson's events in the browser (IndexedDB). What is made here is kept only when its transaction has completed on the
// disk ("strict"): localStorage would lose the last seconds of a crash. What the server has already is not waited for
// ("relaxed"), so that its answers never hold up a key.

const DATABASE = "countfold-lessons";
const KEPT_DAYS = 14; // after the server has acknowledged the last event of a lesson

// The store of one lesson, or null where the browser gives none: blocked, full, or private.
export async function openStore(lesson, { indexedDB = globalThis.indexedDB, today = Date.now() } = {}) {
  if (!indexedDB) return null;
  try {
    const store = new Store(await openDatabase(indexedDB), lesson);
    await store.forgetOldLessons(today - KEPT_DAYS * 24 * 3600 * 1000);
    return store;
  } catch {
    return null;
  }
}

function openDatabase(indexedDB) {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore("events", { keyPath: ["lesson", "id"] });
      request.result.createObjectStore("lessons", { keyPath: "lesson" });
    };
    request.onsuccess = () => {
      request.result.onversionchange = () => request.result.close();
      resolve(request.result);
    };
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error("blocked"));
  });
}

class Store {
  constructor(database, lesson) {
    this.database = database;
    this.lesson = lesson;
  }

  // Everything held: [{event, own, seq, refused}]. `seq` null: not acknowledged. `refused`: the server's sentence.
  async all() {
    const range = IDBKeyRange.bound([this.lesson], [this.lesson, []]);
    return (await this.#read("events", (events) => events.getAll(range))) ?? [];
  }

  // Made here: nobody else has it.
  async put(records) {
    await this.#putAs("strict", records);
  }

  // Heard from the server, or answered by it.
  async putHeard(records) {
    await this.#putAs("relaxed", records);
  }

  async #putAs(durability, records) {
    await this.#write("events", (events) => {
      for (const record of records) events.put({ ...record, lesson: this.lesson, id: record.event.id });
    }, durability);
  }

  // What is known of the lesson itself: {epoch, last, count, heard_at}. The count's JSON makes a reload work offline.
  async about() {
    return (await this.#read("lessons", (lessons) => lessons.get(this.lesson))) ?? {};
  }

  async keepAbout(about) {
    await this.#write("lessons", (lessons) => lessons.put({ ...about, lesson: this.lesson }));
  }

  // Lessons of which everything was acknowledged, the last of it before `moment`.
  async forgetOldLessons(moment) {
    const lessons = (await this.#read("lessons", (all) => all.getAll())) ?? [];
    for (const { lesson, heard_at: heard } of lessons) {
      if (lesson === this.lesson || !heard || heard > moment) continue;
      const old = new Store(this.database, lesson);
      const events = await old.all();
      if (events.some((record) => record.seq === null)) continue;
      await old.#write("events", (all) => all.delete(IDBKeyRange.bound([lesson], [lesson, []])));
      await old.#write("lessons", (all) => all.delete(lesson));
    }
  }

  #read(name, ask) {
    return new Promise((resolve, reject) => {
      const request = ask(this.database.transaction(name, "readonly").objectStore(name));
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  }

  #write(name, act, durability = "relaxed") {
    return new Promise((resolve, reject) => {
      const transaction = this.database.transaction(name, "readwrite", { durability });
      transaction.oncomplete = () => resolve();
      transaction.onerror = () => reject(transaction.error);
      transaction.onabort = () => reject(transaction.error ?? new Error("aborted"));
      act(transaction.objectStore(name));
      transaction.commit(); // at once, not after its requests were heard of
    });
  }
}
