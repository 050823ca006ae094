/** The aircraft is covered; two receivers are centred on two stations: where do their lines cross? */

import {
  twoLineFix as crossing,
  direct,
  geodesicDistanceNm,
  inverse,
  type LineFromStation,
  reciprocal,
  stationDeg,
  stationFromTrue,
  type TrueDeg,
  type TwoLineFix,
  threeDigits,
  trueFromStation,
} from "../../earth/index.ts";
import type { Answer } from "../answer.ts";
import type { Chance } from "../chance.ts";
import type { Panel } from "../facts.ts";
import type { Case, Form } from "../form.ts";
import { panelShown, TRUTH } from "../functions.ts";
import { drawSpot, isReceived, protectedNm, type Stand, sceneAt, stand, tunedTo } from "../stand.ts";
import type { World } from "../world.ts";
import { degreesEastWest } from "./norths.ts";

const NEAREST_NM = 12;
const LEAST_CUT_DEG = 30;
/** A crossing farther off than this from the truth is off the chart, and nobody marks it. */
const OFF_CHART_NM = 90;
const ON_THE_LINE_DEG = 0.05;

export const twoLineFix = {
  id: "two-line-fix",
  title: "Two lines, one place",
  skills: ["two-line-fix", "dark-sky-fix"],
  modes: ["choose", "tell"],
  answers: "place",
  leastSlipAnswers: 2,
  minutes: 1.5,
  draw(chance, world) {
    const pair = drawPair(chance, world);
    if (pair === null) return null;
    const [one, two] = pair;
    const panels: readonly [Panel, Panel] = [panelShown(one.facts), panelShown(two.facts)];
    // Most ideas leave both lines alone: each crossing is worked out once.
    const crossings = new Map<string, Answer | null>();
    const placeOf = (first: TrueDeg, second: TrueDeg): Answer | null => {
      const key = `${first} ${second}`;
      const known = crossings.get(key);
      if (known !== undefined) return known;
      const fix = crossingOf(
        { station: one.station.position, azimuth: first },
        { station: two.station.position, azimuth: second },
      );
      const onChart = fix.kind === "fix" && geodesicDistanceNm(fix.position, one.position) < OFF_CHART_NM;
      const answer: Answer | null = onChart ? { kind: "place", position: fix.position, station: null } : null;
      crossings.set(key, answer);
      return answer;
    };
    const answer: Case["answer"] = (functions) => {
      const [first, second] = functions.boxes(
        functions.lineOfPosition(panels[0], one.facts),
        functions.lineOfPosition(panels[1], two.facts),
      );
      return placeOf(functions.plotTrue(first, one.facts), functions.plotTrue(second, two.facts));
    };
    const scene = sceneAt(world, one, {
      title: "Two lines, one place",
      ask: `NAV1 receives ${one.station.name} and NAV2 ${two.station.name}, both needles centred. Where are you?`,
      covers: ["aircraft", "NAV1.dme", "NAV2.dme", "reasons", "signal"],
      receivers: [
        tunedTo("NAV1", one.station, one.facts.course),
        tunedTo("NAV2", two.station, two.facts.course),
      ],
    });
    return {
      scene,
      views: ["chart", "panel"],
      given: pair.map(({ station }) => ({
        label: `${station.ident} aligned with declination`,
        value: degreesEastWest(station.declinationDeg),
      })),
      tolerance: { nm: 3 },
      answer,
      check: ({ receivers: [first, second], scene: { aircraft } }) => {
        if (!isReceived(first, one.station) || !isReceived(second, two.station)) return null;
        // The place was found from the lines; here the receivers, at that place, must bear both lines out.
        const bornOut = [first, second].every(
          ({ deviationDeg, flag }, at) =>
            deviationDeg !== null && Math.abs(deviationDeg) < ON_THE_LINE_DEG && flag === panels[at]?.flag,
        );
        return bornOut ? { kind: "place", position: aircraft.position, station: null } : null;
      },
      steps: () => [
        ...pair.map(({ station, facts }, at) => {
          const line = TRUTH.lineOfPosition(panels[at] ?? panels[0], facts);
          return `NAV${at + 1}: ${threeDigits(facts.course)} ${panels[at]?.flag}, centred: radial ${threeDigits(line)} of ${station.name}, ${threeDigits(line + station.declinationDeg)} true.`;
        }),
        `The two lines cross ${one.facts.distanceNm.toFixed(0)} NM from ${one.station.name} and ${two.facts.distanceNm.toFixed(0)} NM from ${two.station.name}.`,
      ],
      ghost: (told) =>
        told.kind === "place"
          ? {
              scene: { ...scene, covers: [], aircraft: { ...scene.aircraft, position: told.position } },
              panel: null,
              says: "By this answer you would be here.",
            }
          : null,
    };
  },
} as const satisfies Form;

/** Where two lines cross; drawn on through their stations, if they do not meet ahead of them. */
function crossingOf(first: LineFromStation, second: LineFromStation): TwoLineFix {
  const ahead = crossing(first, second);
  if (ahead.kind !== "no-crossing-ahead") return ahead;
  const back = (line: LineFromStation) => ({ ...line, azimuth: reciprocal(line.azimuth) });
  return crossing(back(first), back(second));
}

/** One aircraft seen from two stations: on whole radials of both, at least 12 NM from each, its lines cutting at 30 to 150 degrees. */
function drawPair(chance: Chance, world: World): readonly [Stand, Stand] | null {
  const spot = drawSpot(chance, world.beacons, { distanceNm: [NEAREST_NM, 50] });
  const other = chance.pick(world.beacons);
  if (spot === null || other === spot.station || other.frequencyMhz === spot.station.frequencyMhz)
    return null;
  const azimuth = trueFromStation(stationDeg(spot.radialDeg), spot.station.declinationDeg);
  const rough = direct(spot.station.position, azimuth, spot.distanceNm);
  const fromOther = inverse(other.position, rough);
  if (fromOther.kind !== "line" || !isWithin(fromOther.distanceNm, protectedNm(other, spot.altitudeFt)))
    return null;
  const otherRadial = Math.round(stationFromTrue(fromOther.azimuth, other.declinationDeg));
  const fix = crossing(
    { station: spot.station.position, azimuth },
    { station: other.position, azimuth: trueFromStation(stationDeg(otherRadial), other.declinationDeg) },
  );
  if (fix.kind !== "fix") return null;
  const { cutDeg, distance1Nm, distance2Nm } = fix;
  if (cutDeg < LEAST_CUT_DEG || cutDeg > 180 - LEAST_CUT_DEG) return null;
  if (!isWithin(distance1Nm, protectedNm(spot.station, spot.altitudeFt))) return null;
  if (!isWithin(distance2Nm, protectedNm(other, spot.altitudeFt))) return null;
  const headingDeg = chance.integer(1, 360);
  const on = (station: Stand["station"], radialDeg: number, distanceNm: number): Stand =>
    stand(world, {
      station,
      radialDeg,
      distanceNm,
      altitudeFt: spot.altitudeFt,
      courseDeg: chance.odds(0.5) ? radialDeg : radialDeg + 180,
      headingDeg,
    });
  return [on(spot.station, spot.radialDeg, distance1Nm), on(other, otherRadial, distance2Nm)];
}

const isWithin = (distanceNm: number, reachNm: number): boolean =>
  distanceNm >= NEAREST_NM && distanceNm <= reachNm;
