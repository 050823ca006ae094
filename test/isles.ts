/** Stations and scenes for tests, placed among the demo isles without reading their files. */

import {
  direct,
  type LatLon,
  magneticDeg,
  stationDeg,
  trueDeg,
  trueFromStation,
} from "../src/earth/index.ts";
import type { Face, SignalConditions } from "../src/panel/index.ts";
import type { Land, Station } from "../src/radio/index.ts";
import { resolveScene, type Scene, type Situation } from "../src/scene/index.ts";

const dm = (degrees: number, minutes: number): number => degrees + minutes / 60;

const BASE = {
  dmeSite: null,
  declinationEstimated: false,
  dmeClass: null,
  status: "on-air",
  eirpW: 200,
} as const;

export const HJL: Station = {
  ...BASE,
  ident: "HJL",
  name: "Haldrey",
  kind: "VORTAC",
  frequencyMhz: 113.9,
  dmeChannel: "86X",
  position: { latDeg: -dm(10, 20), lonDeg: dm(1, 27) },
  elevationFt: 1240,
  declinationDeg: -10,
  vorClass: "VH",
};
export const TXJ: Station = {
  ...BASE,
  ident: "TXJ",
  name: "Tamsel",
  kind: "VOR-DME",
  frequencyMhz: 115.6,
  dmeChannel: "103X",
  position: { latDeg: -dm(10, 9), lonDeg: dm(2, 19) },
  elevationFt: 22,
  declinationDeg: -9,
  vorClass: "VL",
};
export const OXK: Station = {
  ...BASE,
  ident: "OXK",
  name: "Oskerry",
  kind: "VOR",
  frequencyMhz: 117.3,
  dmeChannel: null,
  position: { latDeg: -dm(11, 24), lonDeg: dm(1, 44) },
  elevationFt: 310,
  declinationDeg: -10,
  vorClass: "VL",
};
export const CORVANE: Land = {
  name: "Haldrey",
  islands: [],
  relief: [],
  airfields: [],
  peaks: [
    {
      name: "Mount Corvane",
      position: { latDeg: -dm(10, 27.5), lonDeg: dm(1, 22) },
      elevationFt: 4260,
      baseRadiusNm: 6,
    },
  ],
};

/** The place on a station's radial at a ground distance. */
export const onRadial = (station: Station, radialDeg: number, distanceNm: number): LatLon =>
  direct(station.position, trueFromStation(stationDeg(radialDeg), station.declinationDeg), distanceNm);

export interface Setup {
  readonly at: LatLon;
  readonly stations?: readonly Station[];
  readonly land?: Land | null;
  readonly altitudeFt?: number;
  readonly headingDeg?: number;
  readonly windKt?: number;
  readonly tune?: number;
  readonly courseDeg?: number;
  readonly face?: Face;
  readonly errorDeg?: number;
  readonly covers?: readonly string[];
  readonly date?: string;
  readonly signal?: SignalConditions | null;
  /** Of the stations' clock, seconds. */
  readonly atS?: number;
}

export function situationOf(setup: Setup): Situation {
  const scene: Scene = {
    title: "A test",
    about: "",
    date: setup.date ?? "2026-07-01",
    stations: setup.stations ?? [HJL, TXJ, OXK],
    land: setup.land ?? null,
    aircraft: {
      position: setup.at,
      heading: magneticDeg(setup.headingDeg ?? 0),
      altitudeFt: setup.altitudeFt ?? 3500,
      tasKt: 100,
    },
    wind: { from: trueDeg(140), speedKt: setup.windKt ?? 0 },
    receivers: [
      {
        name: "NAV1",
        frequencyMhz: setup.tune ?? 115.6,
        course: stationDeg(setup.courseDeg ?? 0),
        face: setup.face ?? "cdi",
        bearingErrorDeg: setup.errorDeg ?? 0,
      },
    ],
    signal: setup.signal ?? null,
    covers: setup.covers ?? [],
    ask: "",
  };
  return resolveScene(scene, setup.atS);
}

/** The one receiver of `situationOf`. */
export function readingOf(setup: Setup) {
  const [reading] = situationOf(setup).receivers;
  if (reading === undefined) throw new Error("the setup has one receiver");
  return reading;
}
