/** The scene as an answer has it. */

import {
  direct,
  type LatLon,
  type MagneticDeg,
  type StationDeg,
  stationDeg,
  threeDigits,
  trueFromStation,
  wrap180,
} from "../../earth/index.ts";
import type { Scene } from "../../scene/index.ts";
import { answerText } from "../answer.ts";
import type { Ghost } from "../form.ts";
import { physicalRadial } from "../functions.ts";
import { type Stand, sceneAt, tunedTo } from "../stand.ts";
import type { World } from "../world.ts";
import { drawnNeedleDeg, type PanelAnswer } from "./panel-answer.ts";

const uncovered = (world: World, at: Stand): Scene => sceneAt(world, at, { title: "", ask: "", covers: [] });

/** The aircraft where it would be if it were on another radial, as far out. */
export function ghostOnRadial(world: World, at: Stand, radial: StationDeg): Ghost {
  const scene = uncovered(world, at);
  const position = direct(
    at.station.position,
    trueFromStation(radial, at.station.declinationDeg),
    at.facts.distanceNm,
  );
  return {
    scene: { ...scene, aircraft: { ...scene.aircraft, position } },
    panel: null,
    says: `By this answer you would be here, on the ${threeDigits(radial)} radial of ${at.station.name}.`,
  };
}

/** The aircraft pointed as the answer has it. */
export function ghostOnHeading(world: World, at: Stand, heading: MagneticDeg): Ghost {
  const scene = uncovered(world, at);
  return {
    scene: { ...scene, aircraft: { ...scene.aircraft, heading } },
    panel: null,
    says: `By this answer you would fly ${threeDigits(heading)}.`,
  };
}

/** The selector set as the answer has it. */
export function ghostOnCourse(world: World, at: Stand, course: StationDeg): Ghost {
  const scene = uncovered(world, at);
  return {
    scene: { ...scene, receivers: [tunedTo("NAV1", at.station, course)] },
    panel: null,
    says: `By this answer the selector would stand at ${threeDigits(course)}: this is what the needle would show.`,
  };
}

/** The panel as the answer has it, the aircraft where it is. */
export function ghostPanel(world: World, at: Stand, answer: PanelAnswer): Ghost {
  const { scene } = ghostOnCourse(world, at, at.facts.course);
  return {
    scene,
    panel: { flag: answer.flag, needleDeg: drawnNeedleDeg(answer.needle) },
    says: `By this answer the panel would show ${answerText(answer)}.`,
  };
}

/** The aircraft on the other side of the course line, as far out along it. */
export function ghostAcrossLine(world: World, at: Stand, says: string): Ghost {
  const radial = physicalRadial(at.facts);
  const alongFrom = wrap180(radial - at.facts.course);
  return { ...ghostOnRadial(world, at, stationDeg(at.facts.course - alongFrom)), says };
}

/** The aircraft at a place. */
export function ghostAt(world: World, at: Stand, position: LatLon, says: string): Ghost {
  const scene = uncovered(world, at);
  return { scene: { ...scene, aircraft: { ...scene.aircraft, position } }, panel: null, says };
}
