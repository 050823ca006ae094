/** A change of radial in some minutes, the chart covered: how many minutes to the station? */

import { magneticFromTrue, reciprocal, stationDeg, threeDigits, trueDeg } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand, TAS_KT } from "../stand.ts";
import { airspeedGiven } from "./winds.ts";

const RAD = Math.PI / 180;
/** The rule counts sixty where the circle has 57.3: its minutes come out 4.7 percent long, inside the tenth allowed. */
const SIXTY_FOR_THE_RADIAN = 60 * RAD;

export const minutesOut = {
  id: "minutes-out",
  title: "How many minutes to the station?",
  skills: ["clock-to-station"],
  // Off the wingtip no mistaken idea differs, so that there would be nothing to choose from.
  modes: ["tell"],
  answers: "quantity",
  leastSlipAnswers: 0,
  minutes: 1,
  draw(chance, world) {
    const relativeDeg = chance.odds(0.5) ? 90 : chance.integer(30, 50);
    const changeDeg = chance.integer(4, 12);
    const minutes = chance.pick([1, 1.5, 2, 3, 4, 5]);
    // The sides of the triangle flown, by its angles: the relative bearing at the start and the change.
    const flownNm = (TAS_KT * minutes) / 60;
    const distanceNm = (flownNm * Math.sin(relativeDeg * RAD)) / Math.sin(changeDeg * RAD);
    const whole = Math.floor(distanceNm);
    if (whole < 6 || whole > 45) return null;
    const spot = drawSpot(chance, world.beacons, { distanceNm: [whole + 1, whole + 1] });
    if (spot === null) return null;
    const side = chance.pick([-1, 1]);
    const drawn = stand(world, { ...spot, distanceNm, courseDeg: spot.radialDeg, headingDeg: 360 });
    const headingTrue = trueDeg(reciprocal(drawn.facts.azimuth) - side * (relativeDeg + changeDeg));
    const facts = { ...drawn.facts, heading: magneticFromTrue(headingTrue, drawn.facts.variationDeg) };
    const at = { ...drawn, facts };
    const { station } = at;
    const first = stationDeg(spot.radialDeg - side * changeDeg);
    const hand = side > 0 ? "right" : "left";
    const given = { minutes, bearingChangeDeg: changeDeg, relativeBearingDeg: relativeDeg };
    const minutesText = `${minutes} ${minutes === 1 ? "minute" : "minutes"}`;
    return {
      scene: sceneAt(world, at, {
        title: "How many minutes to the station?",
        ask: `In ${minutesText} on one heading you have gone from the ${threeDigits(first)} to the ${threeDigits(spot.radialDeg)} radial of ${station.name}. If you turn straight in now, how many minutes is it to the station?`,
        covers: ["chart", "NAV1.dme", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [
        { label: "Station at the start", value: `${relativeDeg} degrees to the ${hand} of the nose` },
        {
          label: "Radials",
          value: `${threeDigits(first)}, ${minutesText} later ${threeDigits(spot.radialDeg)}`,
        },
        airspeedGiven(facts),
        { label: "Wind", value: "calm" },
      ],
      tolerance: { share: 0.1 },
      answer: (functions) => ({ kind: "quantity", value: functions.minutesOut(given), unit: "min" }),
      check: ({ groundspeedKt, receivers: [reading] }) =>
        isReceived(reading, station) && reading.geometry !== null
          ? {
              kind: "quantity",
              value: ((60 * reading.geometry.distanceNm) / groundspeedKt) * SIXTY_FOR_THE_RADIAN,
              unit: "min",
            }
          : null,
      steps: () => [
        `The bearing changed by ${changeDeg} degrees in ${minutesText}: sixty times ${minutes} by ${changeDeg} is ${((60 * minutes) / changeDeg).toFixed(1)} minutes with the station off the wingtip.`,
        relativeDeg === 90
          ? "It was off the wingtip, so that is it."
          : `It was ${relativeDeg} degrees from the nose: times its sine, ${Math.sin(relativeDeg * RAD).toFixed(2)}, leaves ${TRUTH.minutesOut(given).toFixed(1)} minutes.`,
      ],
      ghost: () => null,
    };
  },
} as const satisfies Form;
