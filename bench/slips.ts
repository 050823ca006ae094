/** Prints how often each mistaken idea shows, and the pairs that are hardest to tell apart. `npm run slips` runs it. */

import { islesWorld } from "./isles-world.ts";
import { slipTables } from "./slip-tables.ts";

const SCENES = 300;
const HARDEST = 25;

const percent = (share: number): string => `${Math.round(100 * share)} %`.padStart(6);

const { fires, parts } = slipTables(islesWorld(), SCENES);
console.log(`Over ${SCENES} problems of every form\n\nThe form in which each idea shows most often`);
for (const { slip, form, share } of [...fires].sort((one, other) => one.share - other.share))
  console.log(`${percent(share)}  ${slip.padEnd(28)} ${form}`);
console.log(
  `\nThe ${HARDEST} pairs of ${parts.length} that are hardest to tell apart, each in the form that does it best`,
);
for (const { slips, form, share } of [...parts]
  .sort((one, other) => one.share - other.share)
  .slice(0, HARDEST))
  console.log(`${percent(share)}  ${slips.join(" / ").padEnd(58)} ${form}`);
