/** How well the forms tell mistaken ideas: how often each idea shows at all, and how often any two lead to different answers. */

import {
  type Answer,
  apart,
  FORMS,
  type FormId,
  makeProblem,
  type Problem,
  SLIPS,
  type SlipId,
  type World,
} from "../src/practice/index.ts";

export interface BestForm {
  readonly form: FormId;
  /** Of the form's scenes, 0 to 1. */
  readonly share: number;
}

export interface SlipTables {
  /** The form in which each idea shows most often. */
  readonly fires: readonly (BestForm & { readonly slip: SlipId })[];
  /** The form that tells each two ideas apart most often. */
  readonly parts: readonly (BestForm & { readonly slips: readonly [SlipId, SlipId] })[];
}

const IDS = SLIPS.map(({ id }) => id);

/** Counts over so many problems of every form. */
export function slipTables(world: World, scenes: number): SlipTables {
  const fires = IDS.map((slip) => ({ slip, form: firstForm(), share: 0 }));
  const parts = IDS.flatMap((one, at) =>
    IDS.slice(0, at).map((other) => ({ slips: [other, one] as const, form: firstForm(), share: 0 })),
  );
  for (const { id, modes } of FORMS) {
    const fired = new Array<number>(fires.length).fill(0);
    const parted = new Array<number>(parts.length).fill(0);
    for (let seed = 0; seed < scenes; seed += 1) {
      const made = makeProblem(world, id, modes[seed % modes.length] ?? "choose", seed);
      if (made.kind === "none") throw new Error(made.says);
      const groups = groupsOf(made.problem);
      fires.forEach(({ slip }, at) => {
        if (groups.get(slip) !== TRUTH_GROUP) fired[at] = (fired[at] ?? 0) + 1;
      });
      parts.forEach(({ slips: [one, other] }, at) => {
        if (groups.get(one) !== groups.get(other)) parted[at] = (parted[at] ?? 0) + 1;
      });
    }
    const keepBest = (best: { form: FormId; share: number }[], counts: readonly number[]): void =>
      best.forEach((entry, at) => {
        const share = (counts[at] ?? 0) / scenes;
        if (share > entry.share) Object.assign(entry, { form: id, share });
      });
    keepBest(fires, fired);
    keepBest(parts, parted);
  }
  return { fires, parts };
}

const TRUTH_GROUP = 0;

/** Each idea with the number of its answer: ideas with one number answer alike, and 0 is right. */
function groupsOf({ truth, slipAnswers, case: { tolerance } }: Problem): ReadonlyMap<SlipId, number> {
  const answers: Answer[] = [truth];
  const groups = new Map<SlipId, number>(IDS.map((id) => [id, TRUTH_GROUP]));
  for (const { slip, answer } of slipAnswers) {
    const known = answers.findIndex((other, at) => at > 0 && apart(answer, other, tolerance) <= 1);
    groups.set(slip, known < 0 ? answers.push(answer) - 1 : known);
  }
  return groups;
}

function firstForm(): FormId {
  const [form] = FORMS;
  if (form === undefined) throw new Error("there are no forms");
  return form.id;
}
