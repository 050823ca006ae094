/**
 * A link back to its scene. What comes back is checked as a scene file is, so a broken or hostile link ends in sentences and never in half
 * a scene.
 */

import type { Fault } from "./fault.ts";
import type { Scene } from "./scene.ts";
import { readScene } from "./scene-file.ts";
import type { SceneLinkOptions } from "./scene-link.ts";
import { openLink } from "./scene-link-envelope.ts";
import { drawnOn, worldFaults, worldNotes } from "./scene-link-ground.ts";
import { type LinkView, NOTHING, THE_WORLDS } from "./scene-link-pack.ts";
import { firstRecords, linkStations, readLinkStations } from "./scene-link-stations.ts";
import { type LinkParts, partsOf, sceneFileText } from "./scene-link-unpack.ts";
import { openNothing } from "./sources.ts";

export type SceneLinkRead =
  | {
      readonly ok: true;
      readonly scene: Scene;
      readonly view: LinkView | null;
      /** What a person should know though the link is sound: that the world it draws on has changed. One sentence each. */
      readonly notes: readonly string[];
    }
  /** One sentence each: lower-case start, no full stop. */
  | { readonly ok: false; readonly faults: readonly string[] };

/** The scene of a link, given alone, as `#s1.…` or as a whole address. Never throws. */
export function sceneFromLink(text: string, { world }: Pick<SceneLinkOptions, "world">): SceneLinkRead {
  const opened = openLink(text);
  if (!opened.ok) return { ok: false, faults: [opened.fault] };
  const parts = partsOf(opened.json);
  if (parts === null) return { ok: false, faults: ["the link holds no scene; make it again"] };
  const named = linkStations(parts, world);
  const drawn = drawnOn(parts, named.stations);
  const before = [...worldFaults(drawn, world, "scene"), ...named.faults, ...viewFaults(parts)];
  if (before.length > 0) return { ok: false, faults: before };
  const read = readScene(sceneFileText(parts, firstRecords(named.stations)), {
    path: "link",
    open: openNothing,
  });
  if (!read.ok) return { ok: false, faults: sentencesOf(read.faults) };
  const { stations, faults } = readLinkStations(named.stations, read.scene.stations, read.scene.date);
  if (faults.length > 0) return { ok: false, faults };
  const scene = {
    ...read.scene,
    stations: parts.stations === THE_WORLDS ? world.stations : stations,
    land: parts.land === THE_WORLDS ? world.land : read.scene.land,
  };
  return { ok: true, scene, view: viewOf(parts), notes: worldNotes(drawn, world) };
}

/** The reader speaks of a file where it means the whole. */
const sentencesOf = (faults: readonly Fault[]): readonly string[] => [
  ...new Set(faults.map(({ message }) => message.replace(/^the file\b/, "the link"))),
];

const WIDEST_VIEW_NM = 10_000;

function viewOf({ view }: LinkParts): LinkView | null {
  if (!Array.isArray(view)) return null;
  const [latDeg, lonDeg, widthNm] = view;
  const within = (value: unknown, least: number, most: number): value is number =>
    typeof value === "number" && value >= least && value <= most;
  return within(latDeg, -90, 90) && within(lonDeg, -180, 180) && within(widthNm, 0.01, WIDEST_VIEW_NM)
    ? { centre: { latDeg, lonDeg }, widthNm }
    : null;
}

function viewFaults(parts: LinkParts): readonly string[] {
  if (parts.view === undefined || parts.view === NOTHING || viewOf(parts) !== null) return [];
  return ["the link's piece of the chart is not a latitude, a longitude and a width in miles; make it again"];
}
