import workerUrl from "./core/worker.ts?worker&url";

/** The only two scripts that this page may start, as full addresses. */
const SERVICE_WORKER = new URL("sw.js", document.baseURI).href;
const CORE_WORKER = new URL(workerUrl, document.baseURI).href;

interface Rules {
  createScriptURL(address: string): string;
}
interface TrustedTypes {
  createPolicy(name: string, rules: Rules): Rules;
}

const rules: Rules = {
  createScriptURL(address) {
    if (address === SERVICE_WORKER || address === CORE_WORKER) return address;
    throw new TypeError(`${address} is not a script of this app`);
  },
};

// A browser without Trusted Types goes through the same two addresses.
const known = (globalThis as { trustedTypes?: TrustedTypes }).trustedTypes;
const policy = known ? known.createPolicy("app", rules) : rules;

/** Address of the service worker, in the form that the page's policy asks for. */
export const serviceWorkerAddress = (): string => policy.createScriptURL(SERVICE_WORKER);

/** Address of the worker that runs Python, in the form that the page's policy asks for. */
export const coreWorkerAddress = (): string => policy.createScriptURL(CORE_WORKER);
