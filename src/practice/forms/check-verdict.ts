/** A receiver is five degrees out: within limits or not? It depends on where it was checked. */

import { reciprocal, stationDeg, threeDigits, wrap180 } from "../../earth/index.ts";
import { AIRBORNE_CHECK_ERROR_DEG, GROUND_CHECK_ERROR_DEG } from "../../panel/index.ts";
import { frequencyText, type Station } from "../../radio/index.ts";
import { miles } from "../../reason/index.ts";
import type { Chance } from "../chance.ts";
import type { CheckPlace } from "../facts.ts";
import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { drawSpot, type Stand, sceneAt, stand, tunedTo } from "../stand.ts";
import type { World } from "../world.ts";
import { drawTestSignal } from "./test-signal.ts";

const ERROR_DEG = 5;
const PLACES = ["ground", "ground", "airborne", "airborne", "test signal", "two receivers"] as const;
const WORDS = { pass: "within limits", fail: "out of limits" } as const;

export const checkVerdict = {
  id: "check-verdict",
  title: "Does the receiver pass?",
  skills: ["prove-the-receiver"],
  modes: ["choose", "tell"],
  answers: "word",
  leastSlipAnswers: 0,
  minutes: 0.6,
  draw(chance, world) {
    const where = chance.pick(PLACES);
    const flag = chance.pick(["TO", "FROM"] as const);
    const errorDeg = ERROR_DEG * chance.pick([-1, 1]);
    const set = drawPlace(chance, world, where);
    if (set === null) return null;
    const { at, stations, radialDeg } = set;
    const { station } = at;
    const receiver = (name: string, outDeg: number) => {
      const reads = stationDeg(radialDeg + outDeg);
      return {
        ...tunedTo(name, station, flag === "FROM" ? reads : reciprocal(reads)),
        bearingErrorDeg: outDeg,
      };
    };
    // Against each other both may be out, and five degrees are left between them.
    const firstDeg = where === "two receivers" ? chance.pick([-3, -2, 2, 3]) : errorDeg;
    const receivers =
      where === "two receivers"
        ? [receiver("NAV1", firstDeg), receiver("NAV2", firstDeg - Math.sign(firstDeg) * ERROR_DEG)]
        : [receiver("NAV1", errorDeg)];
    return {
      scene: {
        ...sceneAt(world, at, {
          title: "Does the receiver pass?",
          ask: `${asked(where, station, radialDeg)} ${where === "two receivers" ? "Both needles centre" : "The needle centres"} as shown. Is that within the limits of the check?`,
          covers: ["chart", "reasons", "signal"],
          receivers,
        }),
        stations,
      },
      views: ["panel"],
      given: [{ label: "Check", value: said(where, at, radialDeg) }],
      tolerance: {},
      words: Object.values(WORDS),
      answer: (functions) => ({
        kind: "word",
        word: ERROR_DEG <= functions.checkLimitDeg(where) ? WORDS.pass : WORDS.fail,
      }),
      // The bearings themselves, against the regulation's figures as cross fixes use them.
      check: ({ receivers: [first, second] }) => {
        if (first?.radial == null || first.geometry === null || first.station?.ident !== station.ident)
          return null;
        const other = second === undefined ? first.geometry.trueRadial : second.radial;
        if (other === null) return null;
        const limitDeg = where === "airborne" ? AIRBORNE_CHECK_ERROR_DEG : GROUND_CHECK_ERROR_DEG;
        const passes = Math.abs(wrap180(first.radial - other)) <= limitDeg + 1e-6;
        return { kind: "word", word: passes ? WORDS.pass : WORDS.fail };
      },
      steps: () => {
        const limitDeg = TRUTH.checkLimitDeg(where);
        return [
          where === "two receivers"
            ? `NAV1 and NAV2 centre ${ERROR_DEG} degrees apart.`
            : `The needle should centre at ${threeDigits(flag === "FROM" ? radialDeg : radialDeg + 180)} with ${flag} and does at ${threeDigits(receivers[0]?.course ?? 0)}: ${ERROR_DEG} degrees out.`,
          `${LIMIT_OF[where]} the limit is ${limitDeg} degrees: ${ERROR_DEG <= limitDeg ? "within" : "out of"} limits.`,
        ];
      },
      ghost: () => null,
    };
  },
} as const satisfies Form;

const LIMIT_OF: Readonly<Record<CheckPlace, string>> = {
  ground: "On the ground",
  airborne: "In the air",
  "test signal": "Against a test signal",
  "two receivers": "Between two receivers",
};

function drawPlace(
  chance: Chance,
  world: World,
  where: CheckPlace,
): { readonly at: Stand; readonly stations: readonly Station[]; readonly radialDeg: number } | null {
  if (where === "test signal") return { ...drawTestSignal(chance, world, 360), radialDeg: 360 };
  const onGround = where === "ground";
  const spot = drawSpot(chance, world.beacons, { distanceNm: onGround ? [2, 8] : [8, 30] });
  if (spot === null) return null;
  const at = stand(world, {
    ...spot,
    // A checkpoint on an airfield near the station, about as high as the station itself.
    ...(onGround ? { altitudeFt: spot.station.elevationFt, tasKt: 0 } : {}),
    courseDeg: spot.radialDeg,
    headingDeg: chance.integer(1, 360),
  });
  return { at, stations: world.stations, radialDeg: spot.radialDeg };
}

function asked(where: CheckPlace, station: Station, radialDeg: number): string {
  const radial = `the ${threeDigits(radialDeg)} radial of ${station.name}`;
  switch (where) {
    case "test signal":
      return `You check NAV1 on the apron against the test signal on ${frequencyText(station.frequencyMhz)}.`;
    case "ground":
      return `You check NAV1 on a ground checkpoint on ${radial}.`;
    case "airborne":
      return `You check NAV1 in the air over a checkpoint on ${radial}.`;
    case "two receivers":
      return `You check NAV1 and NAV2 against each other on ${station.name}.`;
  }
}

function said(where: CheckPlace, { station, facts }: Stand, radialDeg: number): string {
  if (where === "test signal") return `test signal ${station.ident}`;
  if (where === "two receivers") return `two receivers on ${station.ident}`;
  return `${where === "ground" ? "on the ground" : "in the air"}, ${station.ident} ${threeDigits(radialDeg)}, ${miles(facts.distanceNm)}`;
}
