/**
 * A scene as short JSON for a link: lists in a fixed order instead of names, with what follows by itself left out, and the stations and
 * the land of a known world by reference. Numbers are written whole, so that the link gives back the very same scene.
 */

import type { LatLon } from "../earth/index.ts";
import type { ReceiverSettings, SignalConditions } from "../panel/index.ts";
import { defaultEirpW, type Land, type Station } from "../radio/index.ts";
import { NO_NOISE } from "./same-signal.ts";
import type { Scene } from "./scene.ts";
import { checkLetters } from "./scene-link-envelope.ts";

/** Stations and land that both ends of a link have, so that it need not carry them: those of the demo. */
export interface LinkWorld {
  /** What links call it. */
  readonly name: string;
  readonly stations: readonly Station[];
  readonly land: Land | null;
}

/** Which piece of the chart was shown. */
export interface LinkView {
  readonly centre: LatLon;
  /** Nautical miles across. */
  readonly widthNm: number;
}

export type Packed = string | number | readonly Packed[];

/** Where each thing stands in the list. */
export const PLACES = [
  "world",
  "title",
  "about",
  "date",
  "stations",
  "land",
  "aircraft",
  "wind",
  "receivers",
  "covers",
  "ask",
  "view",
  "signal",
] as const;

/** Instead of a list of stations: all of the world's. Instead of a land: the world's. */
export const THE_WORLDS = 1;
export const NOTHING = 0;

/** Stations and land for a link, by reference to the world where they are its own. */
export function packGround(
  { stations: all, land: under }: { readonly stations: readonly Station[]; readonly land: Land | null },
  world: LinkWorld,
): Readonly<Record<"world" | "stations" | "land", Packed>> {
  const stations = packStations(all, world);
  const land = under === null ? NOTHING : isWorldsLand(under, world) ? THE_WORLDS : packLand(under);
  const drawsOnWorld =
    land === THE_WORLDS ||
    stations === THE_WORLDS ||
    (Array.isArray(stations) && stations.some((station) => typeof station === "string"));
  return { world: drawsOnWorld ? packWorld(world) : NOTHING, stations, land };
}

export function packScene(scene: Scene, world: LinkWorld, view: LinkView | null): Packed {
  const { aircraft, wind } = scene;
  const places: Readonly<Record<(typeof PLACES)[number], Packed>> = {
    ...packGround(scene, world),
    title: scene.title,
    about: scene.about,
    date: scene.date,
    aircraft: [...packPlace(aircraft.position), aircraft.heading, aircraft.altitudeFt, aircraft.tasKt],
    wind: [wind.from, wind.speedKt],
    receivers: scene.receivers.map(packReceiver),
    covers: scene.covers,
    ask: scene.ask,
    view: view === null ? NOTHING : [...packPlace(view.centre), view.widthNm],
    signal: scene.signal === null ? NOTHING : packSignal(scene.signal),
  };
  // Without a signal of its own a scene has the link that it always had.
  const used = scene.signal === null ? PLACES.slice(0, -1) : PLACES;
  return used.map((place) => places[place]);
}

const packSignal = ({ kind, noiseDb, reflectors, propeller }: SignalConditions): Packed => [
  kind,
  noiseDb ?? NO_NOISE,
  reflectors.map(({ ident, position, amplitude }) => [ident, ...packPlace(position), amplitude]),
  propeller === null ? NOTHING : [propeller.speedRpm, propeller.blades],
];

/** Its name, and check letters of its stations and its land, by which a later edition knows that it differs. */
export const packWorld = (world: LinkWorld): readonly [string, string, string] => [
  world.name,
  checkLetters(world.stations.map(stationText).join()),
  checkLetters(world.land === null ? "" : landText(world.land)),
];

function packStations(stations: readonly Station[], world: LinkWorld): Packed {
  const isWorlds = (station: Station): boolean => {
    const known = world.stations.find(({ ident }) => ident === station.ident);
    return known !== undefined && stationText(known) === stationText(station);
  };
  const all =
    stations.length === world.stations.length &&
    stations.length > 0 &&
    stations.every((station, index) => {
      const known = world.stations[index];
      return known !== undefined && stationText(known) === stationText(station);
    });
  if (all) return THE_WORLDS;
  return stations.map((station) => (isWorlds(station) ? station.ident : packStation(station)));
}

const isWorldsLand = (land: Land, world: LinkWorld): boolean =>
  land === world.land || (world.land !== null && landText(land) === landText(world.land));

/** The defaults at the end of the list are left out; so 0 stands for each of them. */
export function packStation(station: Station): readonly Packed[] {
  const { ident, name, kind, vorClass, dmeClass, dmeSite } = station;
  return withoutDefaults([
    ident,
    kind,
    station.frequencyMhz,
    ...packPlace(station.position),
    station.elevationFt,
    station.declinationDeg,
    name === ident ? NOTHING : name,
    [vorClass, dmeClass].filter(Boolean).join("/") || NOTHING,
    station.status === "on-air" ? NOTHING : station.status,
    station.eirpW === defaultEirpW(vorClass) ? NOTHING : station.eirpW,
    dmeSite === null ? NOTHING : [...packPlace(dmeSite.position), dmeSite.elevationFt],
    station.declinationEstimated ? 1 : NOTHING,
  ]);
}

const packReceiver = ({ name, frequencyMhz, course, face, bearingErrorDeg }: ReceiverSettings): Packed =>
  withoutDefaults([name, frequencyMhz, course, face === "cdi" ? NOTHING : face, bearingErrorDeg]);

const packPlace = ({ latDeg, lonDeg }: LatLon): readonly [number, number] => [latDeg, lonDeg];

const packLand = ({ name, islands, relief, peaks, airfields }: Land): readonly Packed[] => [
  name,
  islands.map((island) => [island.name, island.coast.flatMap(packPlace)]),
  relief.map(({ aboveFt, ring }) => [aboveFt, ring.flatMap(packPlace)]),
  peaks.map((peak) => [peak.name, ...packPlace(peak.position), peak.elevationFt, peak.baseRadiusNm]),
  airfields.map((field) => [
    field.name,
    ...packPlace(field.position),
    field.elevationFt,
    field.runway ?? NOTHING,
  ]),
];

function withoutDefaults(values: readonly Packed[]): readonly Packed[] {
  const last = values.findLastIndex((value) => value !== NOTHING);
  return values.slice(0, last + 1);
}

// Asked for anew with every turn of a knob, of stations and lands that stay the same.
const stationTexts = new WeakMap<Station, string>();
const landTexts = new WeakMap<Land, string>();

const stationText = (station: Station): string =>
  kept(stationTexts, station, () => JSON.stringify(packStation(station)));
const landText = (land: Land): string => kept(landTexts, land, () => JSON.stringify(packLand(land)));

function kept<K extends object>(texts: WeakMap<K, string>, key: K, make: () => string): string {
  const before = texts.get(key);
  if (before !== undefined) return before;
  const text = make();
  texts.set(key, text);
  return text;
}
