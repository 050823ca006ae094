/** Lists of stations put together: those of the scene, of the demo's isles, of a catalogue. */

import type { Station } from "../../radio/index.ts";

/** What makes two entries the same station, whichever list they are from: a metre apart is the same place. */
export const stationKey = ({ ident, kind, frequencyMhz, position }: Station): string =>
  [ident, kind, frequencyMhz.toFixed(2), position.latDeg.toFixed(4), position.lonDeg.toFixed(4)].join(" ");

/** The lists one after another, each station once: as the first list has it. */
export function joinedLists(...lists: readonly (readonly Station[])[]): readonly Station[] {
  const byKey = new Map<string, Station>();
  for (const station of lists.flat()) {
    const key = stationKey(station);
    if (!byKey.has(key)) byKey.set(key, station);
  }
  return [...byKey.values()];
}

/** More unknown stations than this nobody has drawn by hand: they are from a table that this browser does not have. */
const DRAWN_BY_HAND_AT_MOST = 24;

/**
 * The stations of a scene that are its author's own: in no published list. They may be dragged and changed. None where an ident stands
 * twice, for then nobody could say which one is meant.
 */
export function ownStations(
  stations: readonly Station[],
  published: ReadonlySet<string>,
): readonly Station[] {
  const idents = new Map<string, number>();
  for (const { ident } of stations) idents.set(ident, (idents.get(ident) ?? 0) + 1);
  const own = stations.filter(
    (station) => !published.has(stationKey(station)) && idents.get(station.ident) === 1,
  );
  return own.length > DRAWN_BY_HAND_AT_MOST ? [] : own;
}
