/** Where an answer leads when it is flown, and where it puts the aircraft. */

import {
  direct,
  type MagneticDeg,
  type TrueDeg,
  threeDigits,
  trackForHeading,
  trueFromMagnetic,
  type Wind,
} from "../../earth/index.ts";
import { miles } from "../../reason/index.ts";
import { windText } from "../../scene/index.ts";
import type { Ghost } from "../form.ts";
import { type Stand, sceneAt } from "../stand.ts";
import type { World } from "../world.ts";

/** Long enough for a drift to be seen on the chart. */
const FLOWN_MINUTES = 6;

/** The aircraft some minutes on, having flown the answered heading in the wind; or its own heading in the answered wind. */
export function ghostFlown(world: World, at: Stand, heading: MagneticDeg, wind: Wind = at.facts.wind): Ghost {
  const { tasKt, variationDeg } = at.facts;
  const made = trackForHeading({ heading: trueFromMagnetic(heading, variationDeg), tasKt, wind });
  const position =
    made.kind === "moving"
      ? direct(at.position, made.track, (made.groundspeedKt * FLOWN_MINUTES) / 60)
      : at.position;
  const scene = sceneAt(world, at, { title: "", ask: "", covers: [] });
  return {
    scene: { ...scene, wind, aircraft: { ...scene.aircraft, position, heading } },
    panel: null,
    says:
      wind === at.facts.wind
        ? `On heading ${threeDigits(heading)} this is where you would be after ${FLOWN_MINUTES} minutes.`
        : `In a wind of ${windText(wind)} heading ${threeDigits(heading)} would take you here in ${FLOWN_MINUTES} minutes.`,
  };
}

/** The aircraft some minutes on along its track, at the answered groundspeed. */
export function ghostAlong(world: World, at: Stand, track: TrueDeg, groundspeedKt: number): Ghost {
  const scene = sceneAt(world, at, { title: "", ask: "", covers: [] });
  const position = direct(at.position, track, (Math.max(0, groundspeedKt) * FLOWN_MINUTES) / 60);
  return {
    scene: { ...scene, aircraft: { ...scene.aircraft, position } },
    panel: null,
    says: `At ${Math.round(groundspeedKt)} kt you would be here after ${FLOWN_MINUTES} minutes.`,
  };
}

/** The aircraft as far from a place as the answer has it, in the direction it is seen from there. */
export function ghostAtDistance(
  world: World,
  at: Stand,
  from: { readonly name: string; readonly azimuth: TrueDeg; readonly distanceNm: number },
): Ghost {
  const scene = sceneAt(world, at, { title: "", ask: "", covers: [] });
  const position = direct(at.station.position, from.azimuth, Math.max(0, from.distanceNm));
  return {
    scene: { ...scene, aircraft: { ...scene.aircraft, position } },
    panel: null,
    says: `By this answer you would be here, ${miles(Math.max(0, from.distanceNm))} from ${from.name}.`,
  };
}
