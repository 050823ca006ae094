/** On a test signal the selector is covered: where must the needle centre? */

import { stationDeg, turned } from "../../earth/index.ts";
import { courseForRadial } from "../../panel/index.ts";
import { frequencyText } from "../../radio/index.ts";
import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { isReceived, sceneAt, tunedTo } from "../stand.ts";
import { drawTestSignal } from "./test-signal.ts";

export const votReading = {
  id: "vot-reading",
  title: "Where must the needle centre?",
  skills: ["prove-the-receiver"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 1,
  minutes: 0.4,
  draw(chance, world) {
    const flag = chance.pick(["TO", "FROM"] as const);
    const errorDeg = chance.odds(0.5) ? 0 : chance.integer(1, 6) * chance.pick([-1, 1]);
    const truthDeg = TRUTH.testSignalCourse(flag) + errorDeg;
    const { at, stations } = drawTestSignal(chance, world, truthDeg);
    const { station, facts } = at;
    const size = Math.abs(errorDeg);
    const errorText =
      errorDeg === 0
        ? "reads right"
        : `reads ${size} ${size === 1 ? "degree" : "degrees"} too ${errorDeg > 0 ? "much" : "little"}`;
    return {
      scene: {
        ...sceneAt(world, at, {
          title: "Where must the needle centre?",
          ask: `NAV1 is tuned to the test signal on ${frequencyText(station.frequencyMhz)} and ${errorText}. You turn the selector until the needle centres with ${flag}. Which course stands there?`,
          covers: ["chart", "NAV1.course", "reasons", "signal"],
          receivers: [{ ...tunedTo("NAV1", station, facts.course), bearingErrorDeg: errorDeg }],
        }),
        stations,
      },
      views: ["panel"],
      given: [
        { label: "NAV1", value: errorText },
        { label: "Flag", value: flag },
      ],
      tolerance: { deg: 1 },
      answer: (functions) => ({
        kind: "direction",
        deg: turned(functions.testSignalCourse(flag), errorDeg),
      }),
      // From the bearing that the receiver makes of the test signal.
      check: ({ receivers: [reading] }) =>
        isReceived(reading, station) && reading.radial !== null && reading.flag === flag
          ? {
              kind: "direction",
              deg: courseForRadial(stationDeg(reading.radial), flag === "TO" ? "inbound" : "outbound"),
            }
          : null,
      steps: () => [
        "To a test signal every receiver stands due north of it: radial 360.",
        `With ${flag} that is ${flag === "FROM" ? "360" : "180"} on the selector${errorDeg === 0 ? "." : `; this receiver reads ${size} too ${errorDeg > 0 ? "much, so it centres that much higher" : "little, so it centres that much lower"}.`}`,
      ],
      ghost: () => null,
    };
  },
} as const satisfies Form;
