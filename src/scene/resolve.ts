/**
 * From a scene to its situation: every computed quantity. Build a `resolver` once for stations and land that stay while the
 * aircraft is dragged and courses are turned; `resolveScene` is for a single scene.
 */

import { magneticFromTrue, trackForHeading, trueFromMagnetic, variation } from "../earth/index.ts";
import { type Airwaves, airwaves, type Flight, readReceiver } from "../panel/index.ts";
import type { Land, Station } from "../radio/index.ts";
import { cautionsFor } from "./cautions.ts";
import type { Scene } from "./scene.ts";
import type { Situation } from "./situation.ts";

/** The situation of a scene, so many seconds on the stations' clock. Throws RangeError on a station poleward of 80 degrees; the readers refuse it first. */
export const resolveScene = (scene: Scene, atS = 0): Situation =>
  resolver(scene.stations, scene.land)(scene, atS);

/**
 * Resolves scenes over the same stations and land. A scene with others is still resolved right: its own are then worked out
 * anew.
 */
export function resolver(
  stations: readonly Station[],
  land: Land | null,
): (scene: Scene, atS?: number) => Situation {
  const air = airwaves(stations, land?.peaks);
  let before: Situation | null = null;
  return (scene, atS = 0) => {
    const same = scene.stations === stations && scene.land === land;
    if (!same) return resolveOver(airwaves(scene.stations, scene.land?.peaks), scene, atS, null);
    before = resolveOver(air, scene, atS, before);
    return before;
  };
}

/**
 * `before` is the situation just before over the same airwaves: receivers that nothing has been done to keep their very readings, so
 * that whoever shows them need not show them anew.
 */
function resolveOver(air: Airwaves, scene: Scene, atS: number, before: Situation | null): Situation {
  const { aircraft, wind } = scene;
  const { variationDeg, model } = variation({
    position: aircraft.position,
    altitudeFt: aircraft.altitudeFt,
    date: scene.date,
  });
  const headingTrue = trueFromMagnetic(aircraft.heading, variationDeg);
  const madeGood = trackForHeading({ heading: headingTrue, tasKt: aircraft.tasKt, wind });
  const { track, driftDeg, groundspeedKt } =
    madeGood.kind === "moving" ? madeGood : { track: headingTrue, driftDeg: 0, groundspeedKt: 0 };
  const flight: Flight = {
    position: aircraft.position,
    altitudeFt: aircraft.altitudeFt,
    heading: aircraft.heading,
    track,
    groundspeedKt,
  };
  const overTheAir = scene.signal === null ? null : { conditions: scene.signal, atS };
  const kept = before !== null && fliesAlike(before.scene, scene) ? before.receivers : [];
  const receivers = scene.receivers.map(
    (settings) =>
      kept.find((reading) => reading.settings === settings) ??
      readReceiver(air, flight, settings, overTheAir),
  );
  return {
    scene,
    variationDeg,
    magneticModel: model,
    headingTrue,
    track: magneticFromTrue(track, variationDeg),
    trackTrue: track,
    driftDeg,
    groundspeedKt,
    receivers,
    cautions: cautionsFor(scene, model, receivers),
  };
}

/**
 * Whether the same aircraft is in the same wind on the same day: then its flight is the same, and so is what its receivers read. A
 * signal of the scene's own is another at every moment.
 */
const fliesAlike = (one: Scene, other: Scene): boolean =>
  one.aircraft === other.aircraft &&
  one.wind === other.wind &&
  one.date === other.date &&
  one.signal === null &&
  other.signal === null;
