// The page's own rules about the log, given lines: run by node in the folder web, cases on standard input.
import { readFileSync } from "node:fs";
import { rolldown } from "rolldown";

const FOLDER = `${process.cwd()}/src/store/log`;
const MAIN = `${FOLDER}/main.ts`;
// Where the app reads its store, lines are given.
const PARTS = {
  [`${FOLDER}/journal.ts`]: `
    import { computed, signal } from "@preact/signals";
    import { isOfDeed } from "./entry";
    import { sortLines } from "./lines";
    export const given = signal([]);
    export const sorted = computed(() => sortLines(given.value));
    const placed = computed(() => sorted.value.placed.map(({ entry }) => entry));
    const listed = computed(() => sorted.value.listed.map(({ entry }) => entry));
    export const recent = computed(() => placed.value.filter((entry) => !isOfDeed(entry)));
    export const opened = computed(() => ({ kind: "ready" }));
    export const recentDoubtful = computed(() => sorted.value.doubtful);
    export const coldOf = () => ({ entries: 0, checks: 0 });
    export const wantWhole = () => undefined;
    export const save = wantWhole;
    export const recentDeeds = computed(() => placed.value.filter(isOfDeed));
    export const recentTold = computed(() => listed.value.filter((entry) => !isOfDeed(entry)));
    export const recentDeedsTold = computed(() => listed.value.filter(isOfDeed));
  `,
  // A part of the log is only chosen here, never kept.
  [`${FOLDER}/database.ts`]: `export const withDatabase = () => undefined;`,
  [`${FOLDER}/exported.ts`]: `export const countedOf = () => ({});`,
  [MAIN]: `
    export { given, sorted } from "./journal";
    export { lineOf } from "./lines";
    export { checkpointOf, givenBy } from "./checkpoint";
    export { dueRecheck, unmixedAt } from "./mixing";
    export { duePartsOf, readAtOf } from "./dueparts";
    export { machineById, heldOf, statedOf } from "./machines";
    export { whoToAsk } from "../written/shop";
  `,
};
const built = await rolldown({
  input: MAIN,
  plugins: [
    {
      name: "given lines",
      resolveId: (id) => {
        if (id === MAIN) return id;
        const file = `${FOLDER}/${id.split("/").at(-1)}.ts`;
        return file in PARTS ? file : undefined;
      },
      load: (id) => PARTS[id],
    },
  ],
  transform: {
    define: { __BUILD_ID__: '"test"', "location.search": '""' },
  },
});
const { output } = await built.generate({ format: "esm" });
const code = `data:text/javascript,${encodeURIComponent(output[0].code)}`;
const {
  given,
  sorted,
  lineOf,
  checkpointOf,
  givenBy,
  dueRecheck,
  duePartsOf,
  readAtOf,
  unmixedAt,
  machineById,
  heldOf,
  statedOf,
  whoToAsk,
} = await import(code);

/** Words about a machine in a place that something else claims, nobody having decided. */
function disputedNow() {
  return sorted.value.doubtful
    .filter(({ kind, amended }) => kind === "machine_state" && !amended)
    .map(({ id }) => id)
    .sort();
}

function dueOf(machine) {
  const due = dueRecheck(machine);
  return due === undefined
    ? null
    : [due.pour.id, Date.parse(due.due_at) / 1000];
}

const isHeld = (machine) => heldOf(machine) !== undefined;

/** The part of the log that the next start reads. */
function firstPart() {
  const reach = { log: "", count: 0, taken: 0, lastTaken: 0, heads: 0 };
  const { hot } = checkpointOf(reach, given.value, sorted.value, null);
  const lines = new Map(given.value.map((line) => [line.key, line]));
  return hot.map((at) => ({ ...lines.get(at.key), ...givenBy(at) }));
}

function atStart(part, machines) {
  given.value = part;
  return {
    held_at_start: machines.map(isHeld),
    setups_at_start: machines.map(
      (machine) => machineById(machine)?.id ?? null,
    ),
  };
}

const found = [];
for (const { lines, machines } of JSON.parse(readFileSync(0, "utf8"))) {
  const stored = lines.map((text, key) => ({
    text,
    mine: true,
    whole: true,
    own: true,
    key,
  }));
  given.value = await Promise.all(stored.map(lineOf));
  const { placed, listed, behind, strands, apart, unreadable } = sorted.value;
  const order = machines.map((machine) =>
    placed
      .map(({ entry }) => entry)
      .filter((entry) => entry.machine === machine),
  );
  const hashes = machines.map((machine) =>
    placed
      .filter(({ entry }) => entry.machine === machine)
      .map(({ line }) => line.hash),
  );
  const due = machines.map(dueOf);
  const disputed = disputedNow();
  const held = machines.map(isHeld);
  const first = firstPart();
  const now = {
    setups: machines.map((machine) => machineById(machine)?.id ?? null),
    stated: machines.map((machine) => statedOf(machine)?.id ?? null),
    who: whoToAsk.value,
  };
  const early = placed
    .map(({ entry }) => entry)
    .filter(({ body }) => "reading" in body)
    .filter(
      (entry) =>
        unmixedAt(entry.machine, readAtOf(entry), entry.place) !== null,
    );
  const parts = new Set(
    duePartsOf(listed.map(({ entry }) => entry)).map(({ id }) => id),
  );
  const needed = new Set(behind.map(({ hash }) => hash));
  const kept = listed.filter(
    ({ entry, line }) => parts.has(entry.id) || needed.has(line.hash),
  );
  const inKept = new Set(kept.map(({ line }) => line.hash));
  const strandOf = ({ hash }) =>
    strands.has(hash) ? { strand: strands.get(hash) } : {};
  given.value = [
    ...kept.map(({ line, reached }) => ({
      ...line,
      ...strandOf(line),
      reached,
    })),
    ...behind
      .filter(({ hash }) => !inKept.has(hash))
      .map((line) => ({
        ...line,
        ...strandOf(line),
        reached: { used: 0, told: 0 },
      })),
  ];
  const used = new Set(hashes.flat());
  found.push({
    // Lines that the part of the log takes for certain, and the whole log does not.
    odd: sorted.value.placed.filter(({ line }) => !used.has(line.hash)).length,
    order: order.map((entries) => entries.map(({ id }) => id)),
    hashes,
    due,
    disputed,
    disputed_again: disputedNow(),
    held,
    now,
    aside: apart + unreadable,
    early: early.map(({ id }) => id),
    again: machines.map(dueOf),
    parts: parts.size,
    // The last, since it gives the page other lines.
    ...atStart(first, machines),
  });
}
process.stdout.write(JSON.stringify(found));
