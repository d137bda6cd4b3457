// On the sign-in page: whoever comes next reads nothing of the lessons of whoever was here before. Kept pages of board and
// lectern go, and so does each count with its plan; events that are not sent yet stay, to be sent by their own teacher.
(() => {
  const NAME = "countfold-lessons";
  globalThis.caches?.delete(NAME).catch(() => {});
  if (!globalThis.indexedDB) return;
  const opening = indexedDB.open(NAME);
  opening.onupgradeneeded = () => opening.transaction.abort(); // there is none, and none is made
  opening.onerror = (event) => event.preventDefault();
  opening.onsuccess = () => {
    const database = opening.result;
    database.onversionchange = () => database.close();
    const transaction = database.transaction("lessons", "readwrite");
    const looking = transaction.objectStore("lessons").openCursor();
    looking.onsuccess = () => {
      const found = looking.result;
      if (!found) return;
      const { counts, ...rest } = found.value;
      if (counts) found.update(rest);
      found.continue();
    };
    transaction.oncomplete = () => {
      database.close();
      document.documentElement.dataset.lessonsForgotten = "yes";
    };
  };
})();
