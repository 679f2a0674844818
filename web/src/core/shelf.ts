/** What the page and the service worker say to each other. */
export type ShelfQuestion =
  /** Reads back and hashes every file of this build. */
  | { kind: "check" }
  /** Fetches the files that are missing or damaged, each only with its right hash. */
  | { kind: "repair" }
  /** The person agreed to the update that waits. */
  | { kind: "use" };

/** What the service worker says unasked: a file of its install could not be had. */
export interface ShelfNews {
  kind: "lost";
  file: string;
}

export interface ShelfReport {
  build: string;
  files: number;
  bytes: number;
  /** Names of files that are missing or whose content is not what the build made. */
  bad: string[];
  milliseconds: number;
}
