import type { Core } from "../core/client";
import type { Versions } from "../store/log/entry";

/** Which build and which pycore answered: every entry says so, or it could not be worked out again. */
export async function readVersions(core: Core): Promise<Versions> {
  const answer = await core.ask("describe", {});
  return { build: __BUILD_ID__, pycore: answer.kind === "ok" ? answer.result.pycore : "" };
}
