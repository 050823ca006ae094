// Why: `npm run build` builds at once, stale or not; the other commands build by themselves when they must.

import { prepare, runScript } from "./prepare.mjs";

await runScript(async () => {
  await prepare({ force: true });
  return 0;
});
