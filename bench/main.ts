/** Prints how fast the parts are that the bench redraws and the classroom waits for. `npm run bench [-- navaids.csv]`. */

import { bearings } from "./bearings.ts";
import { diagnosis } from "./diagnosis.ts";
import { marking } from "./marking.ts";
import { needleFields } from "./needle-field.ts";
import { panelStates } from "./panel-states.ts";
import { pictures } from "./pictures.ts";
import { problems } from "./problems.ts";
import { sheets } from "./sheets.ts";
import { signals } from "./signal.ts";
import { worldwide } from "./worldwide.ts";

for (const section of [
  bearings,
  panelStates,
  problems,
  diagnosis,
  needleFields,
  () => worldwide(process.argv[2] ?? null),
  signals,
  pictures,
  sheets,
  marking,
])
  console.log(section().join("\n"));
