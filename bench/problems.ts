/** A thousand problems over every form, each drawn, resolved and worked out by both routes, with the answers of every slip. */

import { FORMS, makeProblem } from "../src/practice/index.ts";
import { islesWorld } from "./isles-world.ts";
import { figure, quickestMs } from "./rate.ts";

const COUNT = 1000;

/** Lines of the report. */
export function problems(): string[] {
  const world = islesWorld();
  let seed = 0;
  const makeOne = (form: (typeof FORMS)[number], at: number): void => {
    const mode = form.modes[at % form.modes.length] ?? "tell";
    const made = makeProblem(world, form.id, mode, seed++);
    if (made.kind === "none") throw new Error(made.says);
  };
  const all = quickestMs(3, () => {
    for (let at = 0; at < COUNT; at += 1) {
      const form = FORMS[at % FORMS.length];
      if (form !== undefined) makeOne(form, at);
    }
  });
  const each = FORMS.map((form) => ({
    id: form.id,
    ms:
      quickestMs(2, () => {
        for (let at = 0; at < 100; at += 1) makeOne(form, at);
      }) / 100,
  })).sort((one, other) => other.ms - one.ms);
  const slowest = each.slice(0, 3).map(({ id, ms }) => `${id} ${ms.toFixed(2)} ms`);
  return [
    `a thousand problems over ${FORMS.length} forms             ${figure(all)} ms   slowest each: ${slowest.join(", ")}`,
  ];
}
