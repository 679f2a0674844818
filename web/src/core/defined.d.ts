// Put into the text by the build.

/** One name for everything that this site was made from; page and workers must have the same. */
declare const __BUILD_ID__: string;

/** Where the Python files are and what they must contain. */
declare const __PYTHON__: {
  readonly folder: string;
  /** Version of Pyodide. */
  readonly pyodide: string;
  readonly hashes: Readonly<Record<string, string>>;
  readonly lockInfo: Readonly<Record<string, string>>;
};

/** The policy that the server sends, for hosts that send none. */
declare const __POLICY__: string;
