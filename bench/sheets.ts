/** Twenty problems on paper and their key, from wishes to the bytes of two PDFs. */

import { keyPdf, sheetPdf } from "../src/cli/sheet-pdf.ts";
import { buildSet } from "../src/practice/index.ts";
import { islesWorld } from "./isles-world.ts";
import { quickestMs } from "./rate.ts";

const COUNT = 20;
const RUNS = 3;

/** Lines of the report. */
export function sheets(): string[] {
  const world = islesWorld();
  // Another seed each time: the typesetter remembers what it has set.
  let seed = 0;
  const set = () => {
    seed += 1;
    const built = buildSet(world, { skills: [], slips: [], count: COUNT, seed, mode: "choose" });
    if (built.kind === "none") throw new Error(built.says);
    return built.set;
  };
  const sheetMs = quickestMs(RUNS, () => sheetPdf(set(), "a4"));
  const keyMs = quickestMs(RUNS, () => keyPdf(set(), "a4"));
  return [
    `a sheet of ${COUNT} problems, made, drawn and typeset   ${sheetMs.toFixed(0)} ms`,
    `the key of ${COUNT} problems                            ${keyMs.toFixed(0)} ms`,
  ];
}
