// Pyodide asks by a call whether its worker is a classic one. A module worker refuses as this does, but here
// the page's policy would refuse first and write an error into the console at every start.
self.importScripts = () => {
  throw new TypeError("a module worker has no classic scripts");
};
