/** The signal is covered: place, height, class and ground say whether the station can be counted on. */

import { geodesicDistanceNm, inverse, stationFromTrue } from "../../earth/index.ts";
import {
  coneSurfaceFt,
  lineOfSightByRuleNm,
  type Peak,
  type Station,
  serviceRadiusNm,
  terrainBetween,
} from "../../radio/index.ts";
import { feet, miles } from "../../reason/index.ts";
import type { Chance } from "../chance.ts";
import type { Reach } from "../facts.ts";
import type { Form } from "../form.ts";
import { drawSpot, type Spot, sceneAt, stand } from "../stand.ts";
import type { World } from "../world.ts";
import { heightsGiven } from "./slant-spot.ts";

/** No problem stands on a knife's edge: this far from the class radius, and this far above or below the ray that grazes the ground. */
const CLEAR_OF_RADIUS_NM = 2;
const CLEAR_OF_GROUND_FT = 500;
/** A hill farther than this from the station lies at the edge of its volume. */
const HILL_WITHIN_NM = 30;

export const canHear = {
  id: "can-hear",
  title: "Can you count on the station?",
  skills: ["class-and-reach", "line-of-sight"],
  modes: ["choose", "tell"],
  answers: "word",
  leastSlipAnswers: 0,
  minutes: 0.8,
  draw(chance, world) {
    const behind = chance.odds(0.5);
    const spot = behind ? drawBehindHill(chance, world) : drawAnywhere(chance, world);
    if (spot === null) return null;
    const { station, altitudeFt, distanceNm } = spot;
    const { vorClass } = station;
    if (vorClass === null) return null;
    const classRadiusNm = serviceRadiusNm(vorClass, altitudeFt - station.elevationFt);
    if (Math.abs(distanceNm - classRadiusNm) < CLEAR_OF_RADIUS_NM) return null;
    const at = stand(world, { ...spot, courseDeg: spot.radialDeg, headingDeg: chance.integer(1, 360) });
    const terrain = terrainBetween(
      { position: station.position, altitudeFt: station.elevationFt },
      { position: at.position, altitudeFt },
      world.land?.peaks ?? [],
    );
    const leastFt = terrain.leastAltitudeFt;
    if (leastFt !== null && Math.abs(leastFt - altitudeFt) < CLEAR_OF_GROUND_FT) return null;
    const hill = terrain.blockedBy;
    if (behind && hill === null) return null;
    const lineOfSightNm = lineOfSightByRuleNm(station.elevationFt, altitudeFt);
    if (Math.abs(distanceNm - lineOfSightNm) < CLEAR_OF_RADIUS_NM) return null;
    const reach: Reach = { distanceNm, classRadiusNm, lineOfSightNm, terrainClear: hill === null };
    return {
      scene: sceneAt(world, at, {
        title: "Can you count on the station?",
        ask: `You are ${miles(distanceNm)} from ${station.name} at ${feet(altitudeFt)}. Can you count on its signal here: protected by its class, and in sight?`,
        covers: ["NAV1.course", "panel", "reasons", "signal"],
      }),
      views: ["chart"],
      given: [
        { label: `${station.ident}'s class`, value: vorClass },
        ...heightsGiven(at),
        { label: "Distance", value: miles(distanceNm) },
      ],
      tolerance: {},
      words: ["yes", "no"],
      answer: (functions) => ({ kind: "word", word: functions.hears(reach) ? "yes" : "no" }),
      // What the receiver itself says, and the published volume at the engine's own distance.
      check: ({ receivers: [reading] }) => {
        if (!reading?.geometry || reading.station?.ident !== station.ident) return null;
        const arrives = reading.signal.kind === "good" || reading.signal.kind === "weak";
        return {
          kind: "word",
          word: arrives && reading.geometry.serviceVolume === "inside" ? "yes" : "no",
        };
      },
      steps: () => [
        `${feet(altitudeFt - station.elevationFt)} above a station of class ${vorClass} the signal is protected to ${miles(classRadiusNm)}: ${miles(distanceNm)} is ${distanceNm <= classRadiusNm ? "inside" : "outside"}.`,
        `From ${feet(altitudeFt)} and an antenna at ${feet(station.elevationFt)} the horizon is ${miles(lineOfSightNm)} away: ${distanceNm <= lineOfSightNm ? "in sight over the sea" : "below the horizon"}.`,
        hill === null
          ? "No high ground stands between."
          : `${hill.name}, ${feet(hill.elevationFt)}, stands between: it would take about ${feet(Math.ceil((leastFt ?? 0) / 100) * 100)} to see over it.`,
      ],
      ghost: () => null,
    };
  },
} as const satisfies Form;

/** Inside the volume or beyond it, low or high. */
function drawAnywhere(chance: Chance, world: World): Spot | null {
  const spot = drawSpot(chance, world.beacons, { heightFt: [1_500, 8_500] });
  if (spot === null || chance.odds(0.5)) return spot;
  // Beyond the volume: as far again as a careless pilot would still try.
  return { ...spot, distanceNm: spot.distanceNm + chance.integer(15, 40) };
}

/** In the shadow of a hill that stands between the station and the edge of its volume. */
function drawBehindHill(chance: Chance, world: World): Spot | null {
  const hills = hillsOf(world);
  if (hills.length === 0) return null;
  const { station, peak } = chance.pick(hills);
  const line = inverse(station.position, peak.position);
  if (line.kind !== "line") return null;
  const spot = drawSpot(chance, [station], { distanceNm: [Math.ceil(line.distanceNm + 6), 55] });
  if (spot === null) return null;
  const asideDeg = Math.round((Math.asin(peak.baseRadiusNm / 2 / line.distanceNm) * 180) / Math.PI);
  const radialDeg = Math.round(
    stationFromTrue(line.azimuth, station.declinationDeg) + chance.integer(-asideDeg, asideDeg),
  );
  return { ...spot, radialDeg };
}

const HILLS = new WeakMap<World, readonly { readonly station: Station; readonly peak: Peak }[]>();

/** Stations and hills that may hide them: nearby, higher than the antenna, and not the hill it stands on. */
function hillsOf(world: World) {
  const known = HILLS.get(world);
  if (known !== undefined) return known;
  const found = world.beacons.flatMap((station) =>
    (world.land?.peaks ?? [])
      .filter((peak) => {
        const distanceNm = geodesicDistanceNm(station.position, peak.position);
        return (
          peak.elevationFt > station.elevationFt + 1_000 &&
          distanceNm < HILL_WITHIN_NM &&
          distanceNm > peak.baseRadiusNm / 2 &&
          coneSurfaceFt(peak, distanceNm) <= station.elevationFt
        );
      })
      .map((peak) => ({ station, peak })),
  );
  HILLS.set(world, found);
  return found;
}
