/** Some minutes straight on: the panel at the end of a leg in wind, and of a short straight leg of an arc. */

import {
  direct,
  magneticFromTrue,
  type TrueDeg,
  threeDigits,
  trackForHeading,
  trueDeg,
  trueFromMagnetic,
  turned,
  type Wind,
} from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { Chance } from "../chance.ts";
import type { Facts } from "../facts.ts";
import type { Case } from "../form.ts";
import { type Functions, panelShown, physicalNeedleDeg, physicalRadial, TRUTH } from "../functions.ts";
import { CALM, drawCourse, drawSpot, isClearCut, isReceived, type Stand, sceneAt, stand } from "../stand.ts";
import type { World } from "../world.ts";
import { ghostPanel } from "./ghosts.ts";
import { otherPanels, type PanelAnswer, panelAnswer, panelRead, standsPlainly } from "./panel-answer.ts";
import { dotsPhrase, flagStep } from "./phrases.ts";

const RAD = Math.PI / 180;
const NEAREST_LATER_NM = 5;
/** The later needle stays this far from where its name changes, degrees: the plane and the earth differ by less. */
const PLAINLY_DEG = 0.5;

/** A leg in wind, three to twelve minutes long. */
export function drawStraightOn(chance: Chance, world: World): Case | null {
  const spot = drawSpot(chance, world.beacons, { distanceNm: [8, 40] });
  if (spot === null) return null;
  const at = stand(world, {
    ...spot,
    courseDeg: drawCourse(chance, spot.radialDeg),
    headingDeg: chance.integer(1, 360),
    wind: { from: trueDeg(chance.integer(1, 36) * 10), speedKt: chance.integer(2, 6) * 5 },
  });
  return legCase(world, at, {
    minutes: chance.integer(3, 12),
    task: "You hold heading and speed.",
    // A panel that stays as it is may be asked for too, but seldom.
    mustChange: chance.odds(0.8),
  });
}

/** One straight leg of a DME arc, square to the radial where it begins, the next radial already selected. */
export function drawArcLeg(chance: Chance, world: World): Case | null {
  const spot = drawSpot(chance, world.beaconsWithDme, { distanceNm: [10, 20], heightFt: [1_500, 4_000] });
  if (spot === null) return null;
  const way = chance.pick([-1, 1]);
  const rough = { ...spot, courseDeg: spot.radialDeg + way * chance.pick([10, 15, 20]), headingDeg: 0 };
  const { facts } = stand(world, rough);
  const square = magneticFromTrue(turned(facts.azimuth, way * 90), facts.variationDeg);
  const at = stand(world, { ...rough, headingDeg: Math.round(square), wind: CALM });
  return legCase(world, at, {
    minutes: chance.integer(1, 4),
    task: `You fly the ${spot.distanceNm} NM arc round ${spot.station.name} in short straight legs, in calm air, with a radial further along it selected; this leg begins square to your radial.`,
    mustChange: false,
  });
}

function legCase(
  world: World,
  at: Stand,
  leg: { readonly minutes: number; readonly task: string; readonly mustChange: boolean },
): Case | null {
  const { facts, station } = at;
  if (!isClearCut(facts)) return null;
  const { minutes } = leg;
  const later = flownOn(facts, minutes, TRUTH);
  const needleDeg = physicalNeedleDeg(later);
  if (later.distanceNm < NEAREST_LATER_NM || !isPlain(later)) return null;
  const now = panelAnswer(panelShown(facts).flag, physicalNeedleDeg(facts));
  const truth = panelAnswer(panelShown(later).flag, needleDeg);
  if (leg.mustChange && now.flag === truth.flag && now.needle === truth.needle) return null;
  return {
    scene: sceneAt(world, at, {
      title: "The panel later on",
      ask: `${leg.task} What does NAV1 show ${minutes === 1 ? "one minute" : `${minutes} minutes`} from now?`,
      covers: ["reasons", "signal"],
    }),
    views: ["chart", "panel"],
    given: [
      { label: "True airspeed", value: `${facts.tasKt} kt` },
      { label: "Wind", value: windText(facts.wind) },
      {
        label: "Variation",
        value: `${Math.abs(facts.variationDeg).toFixed(0)}°${facts.variationDeg < 0 ? "W" : "E"}`,
      },
      { label: "Minutes from now", value: `${minutes}` },
    ],
    tolerance: {},
    also: [now, ...otherPanels(truth)],
    answer: (functions) => {
      const there = flownOn(facts, minutes, functions);
      return panelAnswer(functions.flag(there), functions.needleDeg(there));
    },
    check: (situation) => panelFlownTo(world, situation, { minutes, station }),
    steps: () => [
      `In ${minutes} min you cover ${flownNm(facts, minutes).toFixed(1)} NM over the ground, which takes you from the ${threeDigits(physicalRadial(facts))} radial, ${facts.distanceNm.toFixed(0)} NM, to the ${threeDigits(physicalRadial(later))} radial, ${later.distanceNm.toFixed(0)} NM.`,
      flagStep(later),
      `The needle then stands ${dotsPhrase(Math.round(needleDeg))}.`,
    ],
    ghost: (answer) => (answer.kind === "panel" ? ghostPanel(world, at, answer) : null),
  };
}

/** The facts some minutes on, in the plane round the station, with the wind as it is understood. */
function flownOn(facts: Facts, minutes: number, functions: Functions): Facts {
  const from = functions.windFrom(facts);
  const heading = trueFromMagnetic(facts.heading, facts.variationDeg);
  const hours = minutes / 60;
  const { tasKt, distanceNm, azimuth, wind } = facts;
  const along = (part: (deg: TrueDeg) => number): number =>
    distanceNm * part(azimuth) + hours * (tasKt * part(heading) - wind.speedKt * part(from));
  const east = along((deg) => Math.sin(deg * RAD));
  const north = along((deg) => Math.cos(deg * RAD));
  return { ...facts, azimuth: trueDeg(Math.atan2(east, north) / RAD), distanceNm: Math.hypot(east, north) };
}

const isPlain = (facts: Facts): boolean => {
  const needleDeg = physicalNeedleDeg(facts);
  return (
    isClearCut({ ...facts, azimuth: facts.azimuth }) &&
    standsPlainly(needleDeg - PLAINLY_DEG) &&
    standsPlainly(needleDeg + PLAINLY_DEG)
  );
};

function flownNm(facts: Facts, minutes: number): number {
  const heading = trueFromMagnetic(facts.heading, facts.variationDeg);
  const made = trackForHeading({ heading, tasKt: facts.tasKt, wind: facts.wind });
  return (made.groundspeedKt * minutes) / 60;
}

/** The panel at the end of the leg: along the resolved track on the ellipsoid, and received there. */
function panelFlownTo(
  world: World,
  { scene, trackTrue, groundspeedKt }: Situation,
  { minutes, station }: { readonly minutes: number; readonly station: Stand["station"] },
): PanelAnswer | null {
  const position = direct(scene.aircraft.position, trackTrue, (groundspeedKt * minutes) / 60);
  const [reading] = world.resolve({ ...scene, aircraft: { ...scene.aircraft, position } }).receivers;
  return isReceived(reading, station) ? panelRead(reading) : null;
}

const windText = ({ from, speedKt }: Wind): string =>
  speedKt === 0 ? "calm" : `from ${threeDigits(from)} true, ${speedKt} kt`;
