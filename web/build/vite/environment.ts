/** What the Python side of the build hands over. */
export interface BuildEnvironment {
  buildId: string;
  phoneFolder: string;
  licencesFile: string;
  siteFolder: string;
}

/** Reads it, or says which command to use: Vite alone does not know the Python files. */
export function fromEnvironment(): BuildEnvironment {
  const read = (name: string): string => {
    const value = process.env[name];
    if (!value) throw new Error(`${name} is not set: build with "python3 -m web build"`);
    return value;
  };
  return {
    buildId: read("PAILWRIGHT_BUILD_ID"),
    phoneFolder: read("PAILWRIGHT_PYTHON"),
    licencesFile: read("PAILWRIGHT_LICENCES"),
    siteFolder: read("PAILWRIGHT_SITE"),
  };
}
