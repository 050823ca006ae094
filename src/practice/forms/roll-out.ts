/** The turn onto the line begins now: the panel as it ends says whether the lead was right. */

import {
  direct,
  STANDARD_RATE_DEG_PER_S,
  threeDigits,
  turned,
  turnRadiusAtRateNm,
} from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { Chance } from "../chance.ts";
import type { Case } from "../form.ts";
import { courseMagnetic, courseTrue, type Functions, handOf, panelShown, TRUTH } from "../functions.ts";
import { drawSpot, isReceived, type Stand, sceneAt, stand, TAS_KT } from "../stand.ts";
import type { World } from "../world.ts";
import { ghostPanel } from "./ghosts.ts";
import { otherPanels, type PanelAnswer, panelAnswer, panelRead, standsPlainly } from "./panel-answer.ts";
import { dotsPhrase } from "./phrases.ts";

const RAD = Math.PI / 180;
const RADIUS_NM = turnRadiusAtRateNm({ tasKt: TAS_KT, rateDegPerS: STANDARD_RATE_DEG_PER_S });
/** The one-in-sixty rule is a twentieth short; the needle stays clear of where its name changes by more, degrees. */
const PLAINLY_DEG = 0.4;

/** Cuts, needles and distances at which the turn begun now ends on the line. */
const RIGHT_LEADS = [
  { cutDeg: 90, needle: 2, distanceNm: 16 },
  { cutDeg: 90, needle: 3, distanceNm: 11 },
  { cutDeg: 90, needle: 4, distanceNm: 8 },
  { cutDeg: 60, needle: 2, distanceNm: 8 },
] as const;

/** And those at which it ends beyond the line, too little to be met among free ones. */
const LATE_TURNS = [
  { cutDeg: 90, needle: 2, distanceNm: 6 },
  { cutDeg: 90, needle: 2, distanceNm: 7 },
  { cutDeg: 90, needle: 2, distanceNm: 8 },
  { cutDeg: 90, needle: 3, distanceNm: 6 },
] as const;

/** A turn begun with the right lead in four of ten, too late in three, most often too early in the rest. */
export function drawRollOut(chance: Chance, world: World): Case | null {
  const place = drawSpot(chance, world.beacons, { distanceNm: [6, 25], heightFt: [1_500, 4_500] });
  if (place === null) return null;
  const which = chance.integer(1, 10);
  const set = which <= 4 ? chance.pick(RIGHT_LEADS) : which <= 7 ? chance.pick(LATE_TURNS) : null;
  const spot = { ...place, distanceNm: set?.distanceNm ?? place.distanceNm };
  const cutDeg = set?.cutDeg ?? chance.pick([45, 60, 90]);
  const needleDeg = (set?.needle ?? chance.integer(2, 8)) * chance.pick([-1, 1]);
  const to = chance.odds(0.6);
  const courseDeg = to ? spot.radialDeg + 180 - needleDeg : spot.radialDeg + needleDeg;
  const level = stand(world, { ...spot, courseDeg, headingDeg: 0 });
  const way = Math.sign(needleDeg);
  // The heading is flown in whole degrees, the cut within half a degree of the one named.
  const headingDeg = Math.round(courseMagnetic(level.facts) + way * cutDeg);
  const at = stand(world, { ...spot, courseDeg, headingDeg });
  const { facts, station } = at;
  const { flag } = panelShown(facts);
  const acrossNm = RADIUS_NM * (1 - Math.cos(cutDeg * RAD));
  const alongNm = RADIUS_NM * Math.sin(cutDeg * RAD) * (to ? -1 : 1);
  const endNeedleDeg = (functions: Functions): number => {
    const leftNm = functions.offNm(facts.distanceNm, needleDeg) - acrossNm;
    return (way * leftNm * 60) / (facts.distanceNm + alongNm);
  };
  const truthDeg = endNeedleDeg(TRUTH);
  const plain = [-PLAINLY_DEG, PLAINLY_DEG].every((by) => standsPlainly(truthDeg + by));
  if (!plain && !(Math.abs(truthDeg) < 0.15)) return null;
  const truth = panelAnswer(flag, truthDeg);
  return {
    scene: sceneAt(world, at, {
      title: "The panel later on",
      ask: `You cut the line of course ${threeDigits(facts.course)} at ${cutDeg} degrees, in calm air, and begin a standard-rate turn onto the course now. What does NAV1 show as you roll out on it?`,
      covers: ["reasons", "signal"],
    }),
    views: ["chart", "panel"],
    given: [
      { label: `Distance from ${station.ident}`, value: `${spot.distanceNm} NM` },
      { label: "Cut", value: `${cutDeg} degrees` },
      { label: "Radius of turn", value: `${RADIUS_NM.toFixed(2)} NM at ${TAS_KT} kt` },
    ],
    tolerance: {},
    also: [
      panelAnswer(flag, -needleDeg),
      panelAnswer(flag, 0),
      panelAnswer(flag, needleDeg),
      ...otherPanels(truth),
    ],
    answer: (functions) => panelAnswer(functions.flag(facts), endNeedleDeg(functions)),
    check: (situation) => panelRolledOut(world, situation, at, way),
    steps: () => [
      `The needle stands ${dotsPhrase(needleDeg)}: at ${spot.distanceNm} NM that is ${TRUTH.offNm(facts.distanceNm, needleDeg).toFixed(2)} NM to the line.`,
      `Turning through ${cutDeg} degrees with a radius of ${RADIUS_NM.toFixed(2)} NM carries you ${acrossNm.toFixed(2)} NM toward it.`,
      outcome(truth, truthDeg, handOf(needleDeg)),
    ],
    ghost: (answer) => (answer.kind === "panel" ? ghostPanel(world, at, answer) : null),
  };
}

function outcome({ needle }: PanelAnswer, truthDeg: number, hand: string): string {
  if (needle === "centred") return "You roll out on the line: the needle is centred, and the lead was right.";
  const dots = dotsPhrase(Math.round(truthDeg));
  return handOf(truthDeg) === hand
    ? `You roll out short of it, the needle ${dots}: the turn began too early.`
    : `You roll out beyond it, the needle ${dots}: the turn began too late.`;
}

/** The turn as an arc on the earth: to its centre, and from there to its end; and the receiver there. */
function panelRolledOut(
  world: World,
  { scene, headingTrue }: Situation,
  at: Stand,
  way: number,
): PanelAnswer | null {
  const centre = direct(scene.aircraft.position, turned(headingTrue, -way * 90), RADIUS_NM);
  const end = direct(centre, turned(courseTrue(at.facts), way * 90), RADIUS_NM);
  const [reading] = world.resolve({ ...scene, aircraft: { ...scene.aircraft, position: end } }).receivers;
  return isReceived(reading, at.station) ? panelRead(reading) : null;
}
