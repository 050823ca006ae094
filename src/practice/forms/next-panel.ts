/** Chart, panel and wind are shown: what will the panel show some minutes later, or as the turn onto the line ends? */

import type { Form } from "../form.ts";
import { drawArcLeg, drawStraightOn } from "./fly-straight.ts";
import { drawRollOut } from "./roll-out.ts";

export const nextPanel = {
  id: "next-panel",
  title: "The panel later on",
  skills: ["whole-panel-forecast", "lead-the-roll-out", "hold-the-arc"],
  modes: ["choose", "tell"],
  answers: "panel",
  leastSlipAnswers: 1,
  minutes: 1.3,
  draw(chance, world) {
    const which = chance.integer(1, 20);
    if (which <= 10) return drawStraightOn(chance, world);
    return which <= 16 ? drawRollOut(chance, world) : drawArcLeg(chance, world);
  },
} as const satisfies Form;
