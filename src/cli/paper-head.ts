/** The head of what a problem set puts on paper. */

import type { Paper, PaperHead } from "../draw/index.ts";
import type { ProblemSet } from "../practice/index.ts";

export function paperHead({ title, note, world }: ProblemSet, paper: Paper): PaperHead {
  return {
    title: title === "" ? "Problems" : title,
    note,
    place: world.land?.name ?? world.name,
    date: dayText(world.date),
    paper,
  };
}

const MONTHS = "January February March April May June July August September October November December".split(
  " ",
);

/** "1 July 2026" of an ISO date. */
function dayText(date: string): string {
  const [year, month, day] = date.split("-").map(Number);
  return `${day} ${MONTHS[(month ?? 1) - 1]} ${year}`;
}
