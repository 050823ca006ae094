/** Needle and flag are covered; the chart and the course are shown: what does the panel show? */

import { threeDigits, wrap180 } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { panelShown, physicalNeedleDeg, physicalRadial } from "../functions.ts";
import { drawCourse, drawSpot, isClearCut, isReceived, sceneAt, stand } from "../stand.ts";
import { drawHeading } from "./draw-heading.ts";
import { ghostPanel } from "./ghosts.ts";
import { otherPanels, panelAnswer, panelRead, standsPlainly } from "./panel-answer.ts";
import { dotsPhrase, flagStep } from "./phrases.ts";

export const needleForecast = {
  id: "needle-forecast",
  title: "What does the panel show?",
  skills: ["station-sends-bearing", "heading-does-not-matter", "whole-panel-forecast"],
  modes: ["choose", "tell"],
  answers: "panel",
  leastSlipAnswers: 1,
  minutes: 0.8,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    const courseDeg = drawCourse(chance, spot.radialDeg);
    const headingDeg = drawHeading(chance, { radialDeg: spot.radialDeg, courseDeg });
    const at = stand(world, { ...spot, courseDeg, headingDeg });
    const { facts, station } = at;
    const needleDeg = physicalNeedleDeg(facts);
    if (!isClearCut(facts) || !standsPlainly(needleDeg)) return null;
    const { flag } = panelShown(facts);
    return {
      scene: sceneAt(world, at, {
        title: "What does the panel show?",
        ask: `NAV1 receives ${station.name}. What do its flag and its needle show?`,
        covers: ["NAV1.needle", "NAV1.flag", "reasons", "signal"],
      }),
      views: ["chart", "panel"],
      given: [],
      tolerance: {},
      also: otherPanels(panelAnswer(flag, needleDeg)),
      answer: (functions) => panelAnswer(functions.flag(facts), functions.needleDeg(facts)),
      check: ({ receivers: [reading] }) => (isReceived(reading, station) ? panelRead(reading) : null),
      steps: () => {
        const radial = physicalRadial(facts);
        const alongDeg =
          flag === "TO" ? wrap180(radial + 180 - facts.course) : wrap180(radial - facts.course);
        return [
          flagStep(facts),
          alongDeg === 0
            ? "You are on the course line: the needle is centred."
            : `Facing along ${threeDigits(facts.course)}, the line is to your ${needleDeg > 0 ? "right" : "left"}, ${Math.abs(Math.round(needleDeg))} degrees: the needle stands ${dotsPhrase(Math.round(needleDeg))}.`,
          "The heading has no part in it.",
        ];
      },
      ghost: (answer) => (answer.kind === "panel" ? ghostPanel(world, at, answer) : null),
    };
  },
} as const satisfies Form;
