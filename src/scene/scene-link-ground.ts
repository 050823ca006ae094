/** The stations and the land of a link, those of the known world by reference, and what to say where that world is another or was redrawn. */

import type { Land, Station } from "../radio/index.ts";
import { type LandRead, readLand } from "./land-file.ts";
import { cited } from "./reading.ts";
import { type LinkWorld, NOTHING, packWorld, THE_WORLDS } from "./scene-link-pack.ts";
import { firstRecords, type LinkStation, linkStations, readLinkStations } from "./scene-link-stations.ts";
import { type LinkParts, landFileText, stationFileText } from "./scene-link-unpack.ts";
import { openNothing } from "./sources.ts";
import { readStations } from "./station-file.ts";

export type LinkDrawn = LinkParts & { readonly drawsOnWorld: boolean };

export const drawnOn = (parts: LinkParts, stations: readonly LinkStation[]): LinkDrawn => ({
  ...parts,
  drawsOnWorld: stations.some(({ known }) => known !== null),
});

const usesWorld = ({ drawsOnWorld, land }: LinkDrawn): boolean => drawsOnWorld || land === THE_WORLDS;

/** `what` the link is of: "scene". */
export function worldFaults(drawn: LinkDrawn, world: LinkWorld, what: string): readonly string[] {
  const name: unknown = Array.isArray(drawn.world) ? drawn.world[0] : undefined;
  if (!usesWorld(drawn) || name === world.name) return [];
  if (typeof name !== "string")
    return ["the link does not say whose stations and land it draws on; make it again"];
  return [`the link draws on ${cited(name)}, which this bench does not have; ask for the ${what}'s file`];
}

/** The world may have been drawn anew since the link was made. The link still opens, and says so. */
export function worldNotes(drawn: LinkDrawn, world: LinkWorld): readonly string[] {
  if (!usesWorld(drawn) || !Array.isArray(drawn.world)) return [];
  const [, stations, land] = drawn.world;
  const [, presentStations, presentLand] = packWorld(world);
  const since = (what: string) =>
    `${what} of ${world.name} changed since this link was made, so it may not show what its author saw`;
  return [
    ...(drawn.drawsOnWorld && stations !== presentStations ? [since("stations")] : []),
    ...(drawn.land === THE_WORLDS && land !== presentLand ? [since("the land")] : []),
  ];
}

export type LinkGroundRead =
  | {
      readonly ok: true;
      readonly stations: readonly Station[];
      readonly land: Land | null;
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Stations and land of a link that is no scene's. `date` (ISO) is for declinations that are estimated. Never throws. */
export function readLinkGround(
  parts: LinkParts,
  { world, date, what }: { readonly world: LinkWorld; readonly date: string; readonly what: string },
): LinkGroundRead {
  const named = linkStations(parts, world);
  const drawn = drawnOn(parts, named.stations);
  const before = [...worldFaults(drawn, world, what), ...named.faults];
  if (before.length > 0) return { ok: false, faults: before };
  const read = readStations(stationFileText(firstRecords(named.stations)), {
    path: "link",
    open: openNothing,
    date,
  });
  const landRead = readLinkLand(parts.land, world);
  const faults = [...(read.ok ? [] : read.faults), ...(landRead.ok ? [] : landRead.faults)];
  if (!read.ok || !landRead.ok) return { ok: false, faults: faults.map(({ message }) => message) };
  const all = readLinkStations(named.stations, read.stations, date);
  if (all.faults.length > 0) return { ok: false, faults: all.faults };
  return {
    ok: true,
    stations: parts.stations === THE_WORLDS ? world.stations : all.stations,
    land: landRead.land,
    notes: worldNotes(drawn, world),
  };
}

function readLinkLand(
  packed: unknown,
  world: LinkWorld,
): LandRead | { readonly ok: true; readonly land: Land | null } {
  if (packed === THE_WORLDS) return { ok: true, land: world.land };
  if (packed === NOTHING || packed === undefined) return { ok: true, land: null };
  return readLand(landFileText(packed), { path: "link" });
}
