// A browser may keep a page that was left as it stands, to show it at once when somebody goes back. WebKit
// keeps even one whose transaction is under way: it never ends then, and holds its stores closed to every
// later page. So whatever is under way is ended where the page is left, and begun anew where it comes back.
const underWay = new Set<IDBTransaction>();
let comeBack: (() => void) | null = null;
let here: Promise<void> = Promise.resolve();

function end(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // It ends by itself: the store has all of it already.
  }
}

/** Ends it where the page is left before it is complete. */
export function endWhenLeft(transaction: IDBTransaction): void {
  // Begun by what still ran while the page was left.
  if (comeBack !== null) end(transaction);
  underWay.add(transaction);
  for (const ending of ["complete", "abort"]) {
    transaction.addEventListener(ending, () => {
      underWay.delete(transaction);
    });
  }
}

/** The same for every transaction that begins on this connection, by whatever way. */
export function endAllWhenLeft(db: IDBDatabase): void {
  const begin = db.transaction.bind(db);
  db.transaction = (...given) => {
    const transaction = begin(...given);
    endWhenLeft(transaction);
    return transaction;
  };
}

/** Settles at once, or when somebody has come back to the page. */
export function whenHere(): Promise<void> {
  return here;
}

addEventListener("pagehide", ({ persisted }) => {
  if (!persisted || comeBack !== null) return;
  here = new Promise((done) => {
    comeBack = done;
  });
  underWay.forEach(end);
});

function goOn(): void {
  comeBack?.();
  comeBack = null;
}

addEventListener("pageshow", goOn);
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") goOn();
});
