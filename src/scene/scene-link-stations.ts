/**
 * The stations of a link: those of the known world by their ident, others written out. Unlike a file, a link may hold an ident several
 * times, as scenes over the worldwide table do; those beyond the first are read apart.
 */

import type { Station } from "../radio/index.ts";
import { cited } from "./reading.ts";
import { type LinkWorld, packStation, THE_WORLDS } from "./scene-link-pack.ts";
import { declinationOf, type LinkParts, stationFileText, stationRecord } from "./scene-link-unpack.ts";
import { openNothing } from "./sources.ts";
import { readStations } from "./station-file.ts";

/** One station of a link, in its place. */
export interface LinkStation {
  readonly packed: unknown;
  /** The world's own, where the link only names it. */
  readonly known: Station | null;
  /** How many stations of the same ident are read before it. */
  readonly round: number;
}

/** More stations of one ident than can lie around one aircraft. */
const MOST_OF_ONE_IDENT = 20;

/** The link's stations in order, or what is wrong with them. What is no list is given as one station, for the reader to refuse. */
export function linkStations(
  parts: LinkParts,
  world: LinkWorld,
): { readonly stations: readonly LinkStation[]; readonly faults: readonly string[] } {
  const faults: string[] = [];
  const found = withoutRounds(parts, world, faults);
  const tuned = tunedFrequencies(parts);
  const reflected = reflectedIdents(parts);
  const counts = new Map<string, number>();
  const rounds = new Map<Unordered, number>();
  // A receiver may only be tuned to a localizer's channel where a station is heard on it, so the tuned one is read first; and a
  // reflector may only be of an ident that has radials, so before all others the one of them that has some.
  const firstOfAll = (station: Unordered): number => (isReflected(station) ? 2 : isTuned(station) ? 1 : 0);
  for (const station of [...found].sort((one, other) => firstOfAll(other) - firstOfAll(one))) {
    const ident = identOf(station);
    const round = counts.get(ident) ?? 0;
    counts.set(ident, round + 1);
    rounds.set(station, round);
    if (round === MOST_OF_ONE_IDENT)
      faults.push(`the link has more than ${MOST_OF_ONE_IDENT} stations with the ident ${cited(ident)}`);
  }
  return { stations: found.map((station) => ({ ...station, round: rounds.get(station) ?? 0 })), faults };

  function isTuned({ packed }: Unordered): boolean {
    return Array.isArray(packed) && tuned.has(packed[2]);
  }

  function isReflected({ packed }: Unordered): boolean {
    return Array.isArray(packed) && reflected.has(packed[0]) && HAVE_RADIALS.has(packed[1]);
  }
}

type Unordered = Omit<LinkStation, "round">;

function withoutRounds({ stations }: LinkParts, world: LinkWorld, faults: string[]): readonly Unordered[] {
  const known = (station: Station): Unordered => ({ packed: packStation(station), known: station });
  if (stations === THE_WORLDS) return world.stations.map(known);
  if (!Array.isArray(stations)) return [{ packed: stations, known: null }];
  return stations.flatMap((packed: unknown): readonly Unordered[] => {
    if (typeof packed !== "string") return [{ packed, known: null }];
    const named = world.stations.find(({ ident }) => ident === packed);
    if (named !== undefined) return [known(named)];
    faults.push(`the link names the station ${cited(packed)} of ${world.name}, which has none of that ident`);
    return [];
  });
}

function identOf({ packed }: Unordered): string {
  const ident: unknown = Array.isArray(packed) ? packed[0] : undefined;
  return typeof ident === "string" ? ident : "";
}

const tunedFrequencies = ({ receivers }: LinkParts): ReadonlySet<unknown> =>
  new Set(
    Array.isArray(receivers) ? receivers.map((packed) => (Array.isArray(packed) ? packed[1] : null)) : [],
  );

/** Kinds whose radials an echo can bend. */
const HAVE_RADIALS: ReadonlySet<unknown> = new Set<Station["kind"]>(["VOR", "VOR-DME", "VORTAC"]);

/** The idents that the link's reflectors throw back. */
function reflectedIdents({ signal }: LinkParts): ReadonlySet<unknown> {
  const reflectors: unknown = Array.isArray(signal) ? signal[2] : null;
  return new Set(
    Array.isArray(reflectors) ? reflectors.map((packed) => (Array.isArray(packed) ? packed[0] : null)) : [],
  );
}

/** The records of the stations that a scene file can hold: each ident once. */
export const firstRecords = (stations: readonly LinkStation[]): readonly unknown[] =>
  stations.filter(({ round }) => round === 0).map(({ packed }) => stationRecord(packed));

/**
 * All stations in their order, from those of the first round as they were read, and the rest read here. `date` is the scene's.
 */
export function readLinkStations(
  stations: readonly LinkStation[],
  first: readonly Station[],
  date: string,
): { readonly stations: readonly Station[]; readonly faults: readonly string[] } {
  const lastRound = Math.max(0, ...stations.map(({ round }) => round));
  const faults: string[] = [];
  const queues = [[...first]];
  for (let round = 1; round <= lastRound; round++) {
    const records = stations
      .filter((each) => each.round === round)
      .map(({ packed }) => stationRecord(packed));
    const read = readStations(stationFileText(records), { path: "link", open: openNothing, date });
    queues.push(read.ok ? [...read.stations] : []);
    if (!read.ok) faults.push(...read.faults.map(({ message }) => message));
  }
  const inOrder = stations.flatMap(({ packed, known, round }) => {
    const read = queues[round]?.shift();
    if (read === undefined) return [];
    return [known ?? { ...read, ...declinationOf(packed, read) }];
  });
  return { stations: inOrder, faults };
}
