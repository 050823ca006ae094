/**
 * Finding stations by what a person remembers of them: ident, name, frequency, DME channel, kind, or several of these. Each word must
 * fit; the better it fits the earlier the station stands, and of equals the nearest.
 */

import type { LatLon } from "../../earth/index.ts";
import { frequencyText, type Station } from "../../radio/index.ts";
import { nearMatch } from "../../scene/index.ts";

export interface StationIndex {
  readonly entries: readonly Entry[];
}

interface Entry {
  readonly station: Station;
  readonly ident: string;
  readonly name: string;
  /** The words of the name after the first. */
  readonly laterWords: readonly string[];
  readonly frequency: string;
  readonly channel: string;
  readonly kind: string;
}

export interface SearchResult {
  /** The best first, at most as many as asked for. */
  readonly stations: readonly Station[];
  /** How many fit altogether. */
  readonly total: number;
  /** Where nothing fits: the ident or name that was likely meant. */
  readonly meant: string | null;
}

/** Small letters without accents, so that Malmo finds Malmö. */
const folded = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

/** Made once for a list, so that a key press asks and does not prepare. */
export function indexStations(stations: readonly Station[]): StationIndex {
  return {
    entries: stations.map((station) => {
      const name = folded(station.name);
      return {
        station,
        ident: folded(station.ident),
        name,
        laterWords: name.split(/[^\p{L}\p{N}]+/u).slice(1),
        frequency: frequencyText(station.frequencyMhz),
        channel: folded(station.dmeChannel ?? ""),
        kind: folded(station.kind),
      };
    }),
  };
}

/** The stations that fit; for an empty query all of them. `from` orders equals by distance; null: by ident. */
export function searchStations(
  index: StationIndex,
  query: string,
  from: LatLon | null,
  limit: number,
): SearchResult {
  const words = folded(query)
    .replace(/,(?=\d)/g, ".")
    .split(/[\s,;/]+/)
    .filter((word) => word !== "" && word !== "mhz");
  const fitting: { entry: Entry; rank: number; far: number }[] = [];
  for (const entry of index.entries) {
    const rank = rankOf(entry, words);
    if (rank !== null) fitting.push({ entry, rank, far: from === null ? 0 : apart(from, entry.station) });
  }
  fitting.sort((a, b) => a.rank - b.rank || a.far - b.far || (a.entry.ident < b.entry.ident ? -1 : 1));
  return {
    stations: fitting.slice(0, limit).map(({ entry }) => entry.station),
    total: fitting.length,
    meant: fitting.length === 0 ? likelyMeant(index, words) : null,
  };
}

/** The sum of how well each word fits, 0 the best; null when one does not fit at all. */
function rankOf(entry: Entry, words: readonly string[]): number | null {
  let sum = 0;
  for (const word of words) {
    const rank = rankOfWord(entry, word);
    if (rank === null) return null;
    sum += rank;
  }
  return sum;
}

/** A part from the middle of a name counts only when it is long enough to mean something. */
const SHORTEST_PART = 3;

function rankOfWord(
  { ident, name, laterWords, frequency, channel, kind }: Entry,
  word: string,
): number | null {
  if (ident === word) return 0;
  if (name === word || channel === word) return 1;
  if (/^\d{2,3}(\.\d*)?$/.test(word)) {
    if (Number(word) === Number(frequency)) return 1;
    if (frequency.startsWith(word)) return 3;
  }
  if (ident.startsWith(word)) return 2;
  if (name.startsWith(word)) return 3;
  if (laterWords.some((later) => later.startsWith(word))) return 4;
  if (kind === word) return 5;
  return word.length >= SHORTEST_PART && name.includes(word) ? 6 : null;
}

/** Half the chord between two places on a sphere, squared: grows with the distance, which is all that ordering needs. */
function apart(from: LatLon, { position }: Station): number {
  const rad = Math.PI / 180;
  const sinLat = Math.sin(((position.latDeg - from.latDeg) * rad) / 2);
  const sinLon = Math.sin(((position.lonDeg - from.lonDeg) * rad) / 2);
  return sinLat ** 2 + Math.cos(from.latDeg * rad) * Math.cos(position.latDeg * rad) * sinLon ** 2;
}

function likelyMeant({ entries }: StationIndex, words: readonly string[]): string | null {
  const query = words.join(" ");
  if (query.length < SHORTEST_PART || /\d/.test(query)) return null;
  const name = nearMatch(
    query,
    entries.map((entry) => entry.name),
  );
  const meant = name ?? nearMatch(query, query.length <= 4 ? entries.map(({ ident }) => ident) : []);
  const entry = entries.find((each) => each.name === meant || each.ident === meant);
  if (entry === undefined) return null;
  return entry.name === meant ? entry.station.name : entry.station.ident;
}
