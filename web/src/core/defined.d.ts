// Put into the text by the build.

/** One name for everything that this site was made from; page and workers must have the same. */
declare const __BUILD_ID__: string;

/** Where the Python files are and what they must contain. */
declare const __PYTHON__: {
  readonly folder: string;
  /** Version of Pyodide. */
  readonly pyodide: string;
  /** Of each file by its name: the digest of the digests of its parts. */
  readonly digests: Readonly<Record<string, string>>;
  readonly part_bytes: number;
  /** In base64: what Pyodide wants of an image besides its pages. */
  readonly imageHead: string;
  /** In base64: a zip with nothing in it. */
  readonly emptyZip: string;
  readonly lockInfo: Readonly<Record<string, string>>;
};

/** The policy that the server sends, for hosts that send none. */
declare const __POLICY__: string;
