/**
 * Whole panel states: one receiver with DME, the aircraft at a new place each time, from variation and wind to needle,
 * flag and slant range. Beside it what the two libraries alone would take for the place: one geodesic, one field.
 */

import geographiclib from "geographiclib-geodesic";
import geomagnetism from "geomagnetism";
import { direct, magneticDeg, stationDeg, trueDeg } from "../src/earth/index.ts";
import type { Station } from "../src/radio/index.ts";
import { resolver, type Scene } from "../src/scene/index.ts";
import { figure, perSecond } from "./rate.ts";

const COUNT = 1000;

const station: Station = {
  ident: "HJL",
  name: "Haldrey",
  kind: "VORTAC",
  frequencyMhz: 113.9,
  dmeChannel: "86X",
  position: { latDeg: -10.3, lonDeg: 1.45 },
  elevationFt: 1240,
  dmeSite: null,
  declinationDeg: -10,
  declinationEstimated: false,
  vorClass: "VH",
  dmeClass: null,
  status: "on-air",
  eirpW: 100,
};

const scene: Scene = {
  title: "bench",
  about: "",
  date: "2026-06-01",
  stations: [station],
  land: null,
  aircraft: { position: station.position, heading: magneticDeg(90), altitudeFt: 8500, tasKt: 110 },
  wind: { from: trueDeg(140), speedKt: 18 },
  receivers: [{ name: "NAV1", frequencyMhz: 113.9, course: stationDeg(60), face: "cdi", bearingErrorDeg: 0 }],
  signal: null,
  covers: [],
  ask: "",
};

const scenes: readonly Scene[] = Array.from({ length: COUNT }, (_, index) => ({
  ...scene,
  aircraft: {
    ...scene.aircraft,
    position: direct(station.position, trueDeg(index * 137.507764), 5 + (60 * index) / COUNT),
  },
}));

/** Lines of the report. */
export function panelStates(): string[] {
  const resolve = resolver(scene.stations, scene.land);
  const shown = resolve(scenes[0] ?? scene).receivers[0];
  if (shown?.deviationDeg == null || shown.dme == null) throw new Error("the bench's receiver shows nothing");
  const states = perSecond(COUNT, () => {
    for (const next of scenes) resolve(next);
  });
  const { WGS84, DISTANCE, AZIMUTH } = geographiclib.Geodesic;
  const geodesic = perSecond(COUNT, () => {
    for (const { aircraft } of scenes)
      WGS84.Inverse(
        station.position.latDeg,
        station.position.lonDeg,
        aircraft.position.latDeg,
        aircraft.position.lonDeg,
        DISTANCE | AZIMUTH,
      );
  });
  const model = geomagnetism.model(new Date("2026-06-01T00:00:00Z"));
  const field = perSecond(COUNT, () => {
    for (const { aircraft } of scenes) model.point([aircraft.position.latDeg, aircraft.position.lonDeg]);
  });
  const both = 1 / (1 / geodesic + 1 / field);
  return [
    `geomagnetism, field at a place                 ${figure(field)} a second`,
    `geographiclib and geomagnetism, one of each    ${figure(both)} a second`,
    `whole panel states, one receiver with DME      ${figure(states)} a second   ${(states / both).toFixed(2)} times one of each, ${(states / field).toFixed(2)} times the field alone`,
  ];
}
