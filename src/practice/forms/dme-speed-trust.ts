/** Is the speed that the DME shows the groundspeed? Track, place and height are shown, the DME is covered. */

import { magneticFromTrue, threeDigits, trueDeg, wrap180 } from "../../earth/index.ts";
import { miles } from "../../reason/index.ts";
import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { drawSpot, sceneAt, stand } from "../stand.ts";
import { heightsGiven } from "./slant-spot.ts";
import { truePhrase } from "./winds.ts";

/** The rule's 10 degrees and three heights take off 6.5 percent at the most; every other case drawn takes off 16 or more. */
const SAME_SPEED_SHARE = 0.9;

export const dmeSpeedTrust = {
  id: "dme-speed-trust",
  title: "Is DME speed groundspeed?",
  skills: ["slant-to-ground", "read-the-wind"],
  modes: ["choose", "tell"],
  answers: "word",
  leastSlipAnswers: 0,
  minutes: 0.6,
  draw(chance, world) {
    const along = chance.odds(0.5);
    // Along the radial the rest depends on height: some of these are near and high.
    const near = along && chance.odds(0.25);
    const spot = drawSpot(
      chance,
      world.beaconsWithDme,
      near ? { distanceNm: [1, 2], heightFt: [6_000, 8_500] } : { distanceNm: [8, 40] },
    );
    if (spot === null) return null;
    const distanceNm = near ? chance.integer(8, 14) / 10 : spot.distanceNm;
    const drawn = stand(world, { ...spot, distanceNm, courseDeg: spot.radialDeg, headingDeg: 360 });
    const offDeg = along
      ? chance.integer(-5, 5) + chance.pick([0, 180])
      : chance.integer(50, 120) * chance.pick([-1, 1]);
    const track = trueDeg(Math.round(drawn.facts.azimuth + offDeg));
    const facts = { ...drawn.facts, heading: magneticFromTrue(track, drawn.facts.variationDeg) };
    const at = { ...drawn, facts };
    const { station } = at;
    return {
      scene: sceneAt(world, at, {
        title: "Is DME speed groundspeed?",
        ask: `Your DME on ${station.name} shows a speed. Is it your groundspeed?`,
        covers: ["panel", "NAV1.dme", "reasons", "signal"],
      }),
      views: ["chart"],
      given: [
        { label: "Track", value: truePhrase(track) },
        { label: `From ${station.ident}`, value: `${truePhrase(facts.azimuth)}, ${miles(distanceNm)}` },
        ...heightsGiven(at),
      ],
      tolerance: {},
      words: ["yes", "no"],
      answer: (functions) => ({
        kind: "word",
        word: functions.dmeSpeedIsGroundspeed(track, facts) ? "yes" : "no",
      }),
      // The rate of the slant range itself against the speed over the ground.
      check: ({ groundspeedKt, receivers: [reading] }) =>
        reading?.dme && reading.station?.ident === station.ident
          ? {
              kind: "word",
              word: reading.dme.groundspeedKt >= SAME_SPEED_SHARE * groundspeedKt ? "yes" : "no",
            }
          : null,
      steps: () => {
        const off = Math.abs(wrap180(track - facts.azimuth));
        const offRadialDeg = Math.round(Math.min(off, 180 - off));
        const threeHeights = `three times your height above the station, ${miles(3 * facts.heightNm)}`;
        const far = distanceNm > 3 * facts.heightNm;
        return [
          `Your track ${threeDigits(track)} lies ${offRadialDeg} degrees from the line through the station: ${offRadialDeg <= 10 ? "straight toward or from it, as it must be" : "across it, so the slant changes slower than you fly"}.`,
          `${miles(distanceNm)} is ${far ? "more" : "less"} than ${threeHeights}: ${far ? "the slant lies flat enough" : "too near, the slant hardly changes"}.`,
          TRUTH.dmeSpeedIsGroundspeed(track, facts)
            ? "Both hold: the speed is your groundspeed."
            : "The speed shown is less than your groundspeed.",
        ];
      },
      ghost: () => null,
    };
  },
} as const satisfies Form;
