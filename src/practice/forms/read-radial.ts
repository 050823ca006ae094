/** The chart is covered; needle, flag and course are shown: on which radial are you? */

import { stationDeg, threeDigits } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { panelShown } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { ghostOnRadial } from "./ghosts.ts";
import { dotsPhrase } from "./phrases.ts";

export const readRadial = {
  id: "read-radial",
  title: "Which radial?",
  skills: ["centre-and-read", "dots-to-degrees"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 2,
  minutes: 0.7,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    // Six in ten off-centre by two to four dots; FROM and TO alike.
    const needleDeg = chance.odds(0.6) ? chance.pick([4, 6, 8]) * chance.pick([-1, 1]) : 0;
    const from = chance.odds(0.5);
    const courseDeg = from ? spot.radialDeg + needleDeg : spot.radialDeg + 180 - needleDeg;
    const at = stand(world, { ...spot, courseDeg, headingDeg: chance.integer(1, 360) });
    const { facts, station } = at;
    const panel = panelShown(facts);
    return {
      scene: sceneAt(world, at, {
        title: "Which radial?",
        ask: `On which radial of ${station.name} are you?`,
        covers: ["chart", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [],
      tolerance: { deg: panel.needleDeg === 0 ? 2 : 1 },
      answer: (functions) => ({ kind: "direction", deg: functions.readRadial(panel, facts) }),
      check: ({ receivers: [reading] }) =>
        isReceived(reading, station) && reading.radial !== null
          ? { kind: "direction", deg: reading.radial }
          : null,
      steps: () => {
        const course = threeDigits(facts.course);
        const centred =
          panel.flag === "TO" ? `${course} reversed, ${threeDigits(facts.course + 180)}` : course;
        return [
          `${panel.flag} with course ${course}: a centred needle would mean radial ${centred}.`,
          ...(panel.needleDeg === 0
            ? ["The needle is centred, so that is the radial."]
            : [
                `The needle stands ${dotsPhrase(panel.needleDeg)}, so the line lies that way, facing along ${course}: the radial is ${threeDigits(
                  panel.flag === "TO" ? facts.course + 180 + panel.needleDeg : facts.course - panel.needleDeg,
                )}.`,
              ]),
        ];
      },
      ghost: (answer) =>
        answer.kind === "direction" ? ghostOnRadial(world, at, stationDeg(answer.deg)) : null,
    };
  },
} as const satisfies Form;
