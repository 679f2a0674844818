// Wiring only: creates core, store and screens, and connects them.
import { render } from "preact";
import { startCore } from "./core/client";
import { exerciseOnce } from "./core/exercise";
import { startOffline } from "./offline";
import { App } from "./screens/app";
import { followMarks } from "./screens/backup/marks";
import { CoreContext } from "./screens/core";
import { followAddress } from "./screens/route";
import { followPrinter } from "./screens/sheets/settings";
import { followCleanings } from "./store/underway/cleaning";
import { followPourings } from "./store/underway/pouring";
import { followPractice } from "./store/underway/practice";
import { followWalks } from "./store/underway/walk";
import { noteBuild } from "./store/phone/build";
import { readKeeping } from "./store/log/keeping";

const root = document.getElementById("app");
if (root === null) throw new Error("the page has no place for the app");

followAddress();
followWalks();
followPourings();
followCleanings();
followPractice();
followPrinter();
void readKeeping();
noteBuild(new Date());
const core = startCore();
followMarks(core);
exerciseOnce(core);
// Drafts are written at every change already, so there is nothing left to store before a reload.
startOffline({ phase: core.phase, storeDrafts: () => Promise.resolve() });
root.replaceChildren();
render(
  <CoreContext.Provider value={core}>
    <App />
  </CoreContext.Provider>,
  root,
);
