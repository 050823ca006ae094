/**
 * The JSON of a link as the text of a scene file, so that everything a link can hold is checked by the very rules of scene files and
 * explained in their sentences. Nothing here trusts the link: any JSON gives some text, which the reader then takes or refuses.
 */

import type { Station } from "../radio/index.ts";
import { LAND_VERSION } from "./land-shape.ts";
import { NOTHING, PLACES } from "./scene-link-pack.ts";
import { SCENE_VERSION } from "./scene-shape.ts";
import { STATIONS_VERSION } from "./station-shape.ts";
import { flowText, plainNumber } from "./yaml-flow.ts";

/** The link's list by names; what is missing is undefined. */
export type LinkParts = Readonly<Partial<Record<(typeof PLACES)[number], unknown>>>;

/** Null when the JSON is no list. */
export function partsOf(json: string): LinkParts | null {
  try {
    const values: unknown = JSON.parse(json);
    if (!Array.isArray(values)) return null;
    return Object.fromEntries(PLACES.map((place, index) => [place, values[index]]));
  } catch {
    // No JSON at all, or nested deeper than the engine follows.
    return null;
  }
}

/** The scene file that a link stands for, with these stations (records as `stationRecord` gives them) and this land or none. */
export function sceneFileText(parts: LinkParts, stations: readonly unknown[]): string {
  const { title, about, date, land, aircraft, wind, receivers, covers, ask, signal } = parts;
  return flowText({
    scene: SCENE_VERSION,
    title,
    about,
    date,
    stations,
    land: Array.isArray(land) ? landRecord(land) : undefined,
    aircraft: Array.isArray(aircraft) ? aircraftRecord(aircraft) : aircraft,
    wind: Array.isArray(wind) ? windWritten(wind) : wind,
    receivers: Array.isArray(receivers) ? receivers.map(receiverRecord) : receivers,
    signal: Array.isArray(signal) ? signalRecord(signal) : unlessNothing(signal),
    cover: covers,
    ask,
  });
}

/** A station file of some of a link's stations. */
export const stationFileText = (stations: readonly unknown[]): string =>
  flowText({ stations: STATIONS_VERSION, list: stations });

/** A land file of a link's land. */
export const landFileText = (packed: unknown): string =>
  flowText({ land: LAND_VERSION, ...(Array.isArray(packed) ? landRecord(packed) : {}) });

/** One station as a scene file has it; what is no list stays what it is, for the reader to refuse. */
export function stationRecord(packed: unknown): unknown {
  if (!Array.isArray(packed)) return packed;
  const [ident, kind, frequency, lat = 0, lon = 0, elevation = 0, declination = 0] = packed;
  const [name, serviceClass, status, power, dme] = packed.slice(7).map(unlessNothing);
  const [dmeLat, dmeLon, dmeElevation] = Array.isArray(dme) ? dme : [];
  return {
    ident,
    name,
    kind,
    frequency,
    at: [lat, lon],
    elevation,
    declination:
      typeof declination === "number" ? plainNumber(declination, LONGEST_DECLINATION) : declination,
    class: serviceClass,
    status,
    power,
    dmeAt: dme === undefined ? undefined : [dmeLat, dmeLon],
    dmeElevation,
  };
}

/**
 * What a file cannot say of the declination of a station that was read: all figures of it, and that it is the model's variation for want of
 * its own.
 */
export function declinationOf(
  packed: unknown,
  { declinationDeg }: Station,
): Pick<Station, "declinationDeg" | "declinationEstimated"> {
  const whole: unknown = Array.isArray(packed) ? packed[6] : undefined;
  return {
    declinationDeg: typeof whole === "number" ? whole : declinationDeg,
    declinationEstimated: Array.isArray(packed) && packed[12] === 1,
  };
}

/** Characters that a scene file takes. */
const LONGEST_DECLINATION = 20;
const LONGEST_WIND = 20;
/** Then at most nine characters for the direction and nine for the speed. */
const WIND_DECIMALS = 4;

const unlessNothing = (value: unknown): unknown => (value === NOTHING ? undefined : value);

const aircraftRecord = ([lat, lon, heading, altitude, tas]: readonly unknown[]) => ({
  at: [lat, lon],
  heading,
  altitude,
  tas,
});

function windWritten(wind: readonly unknown[]): unknown {
  const [from, speed] = wind;
  if (typeof from !== "number" || typeof speed !== "number") return wind;
  const exact = `${plainNumber(from)}/${plainNumber(speed)}`;
  if (exact.length <= LONGEST_WIND) return exact;
  return [from, speed].map((value) => plainNumber(Number(value.toFixed(WIND_DECIMALS)))).join("/");
}

function receiverRecord(packed: unknown): unknown {
  if (!Array.isArray(packed)) return packed;
  const [name, tune, course, face, error] = packed;
  return { name, tune, course, face: unlessNothing(face), error };
}

const signalRecord = ([kind, noise, reflectors, propeller]: readonly unknown[]) => ({
  kind,
  noise,
  reflectors: eachOf(reflectors, ([station, lat, lon, amplitude]) => ({
    station,
    at: [lat, lon],
    amplitude,
  })),
  propeller: Array.isArray(propeller)
    ? { speed: propeller[0], blades: propeller[1] }
    : unlessNothing(propeller),
});

const landRecord = ([name, islands, relief, peaks, airfields]: readonly unknown[]) => ({
  name,
  islands: eachOf(islands, ([island, coast]) => ({ name: island, coast: pairsOf(coast) })),
  relief: eachOf(relief, ([above, ring]) => ({ above, ring: pairsOf(ring) })),
  peaks: eachOf(peaks, ([peak, lat, lon, elevation, radius]) => ({
    name: peak,
    at: [lat, lon],
    elevation,
    radius,
  })),
  airfields: eachOf(airfields, ([field, lat, lon, elevation, runway]) => ({
    name: field,
    at: [lat, lon],
    elevation,
    runway: unlessNothing(runway),
  })),
});

const eachOf = (items: unknown, record: (packed: readonly unknown[]) => object): unknown =>
  Array.isArray(items) ? items.map((item) => (Array.isArray(item) ? record(item) : item)) : items;

/** `[1, 2, 3, 4]` as `[[1, 2], [3, 4]]`. */
const pairsOf = (flat: unknown): unknown =>
  Array.isArray(flat)
    ? Array.from({ length: Math.ceil(flat.length / 2) }, (_, index) => flat.slice(2 * index, 2 * index + 2))
    : flat;
