// Which shop this window shows: the phone's own, or the invented example. The address decides, so that
// the app's icon always opens the own one; each has a database and notes of its own.

export const isExample: boolean = new URLSearchParams(location.search).has("example");

/** Name of the database, and start of every note's name. Neither is the start of the other. */
export const STORE = isExample ? "pailwright-example" : "pailwright";
