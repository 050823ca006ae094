/** Any scene that a file can hold, for property tests. */

import fc from "fast-check";
import { type LatLon, latLon, magneticDeg, stationDeg, trueDeg } from "../src/earth/index.ts";
import type { ReceiverSettings, SignalConditions } from "../src/panel/index.ts";
import {
  DME_CLASSES,
  defaultEirpW,
  type Land,
  pairedDmeChannel,
  SIGNAL_KINDS,
  type Station,
  VOR_CHANNELS_MHZ,
  VOR_CLASSES,
} from "../src/radio/index.ts";
import { RECEIVER_PARTS, type Scene, VIEWS } from "../src/scene/index.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

export const placeArbitrary = (limitLatDeg: number): fc.Arbitrary<LatLon> =>
  fc.tuple(number(-limitLatDeg, limitLatDeg), number(-180, 180)).map(([lat, lon]) => latLon(lat, lon));

/** What people write, and what only a machine would: line breaks, quotes, colons, emoji, leading spaces. */
const words = (maxLength: number) =>
  fc.oneof(
    fc.constantFrom(
      "",
      "Which way?",
      "a: b # c",
      "- 1",
      "null",
      "060",
      "'",
      '"',
      "  x ",
      "a\nb\n\n c",
      "yes",
      "\t",
    ),
    fc.string({ maxLength, unit: "grapheme" }),
  );

const ident = fc.oneof(
  fc.constantFrom("NO", "ON", "1E5", "123", "TRUE", "0"),
  fc.string({
    minLength: 1,
    maxLength: 4,
    unit: fc.constantFrom(..."ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"),
  }),
);

const station: fc.Arbitrary<Station> = fc
  .record({
    ident,
    name: words(20).filter((text) => text.trim() !== ""),
    kind: fc.constantFrom("VOR", "VOR-DME", "VORTAC", "DME", "TACAN"),
    frequencyMhz: fc.constantFrom(...VOR_CHANNELS_MHZ),
    position: placeArbitrary(79.9),
    elevationFt: number(-1000, 20_000),
    declination: fc.option(number(-180, 180)),
    vorClass: fc.option(fc.constantFrom(...VOR_CLASSES)),
    dmeClass: fc.option(fc.constantFrom(...DME_CLASSES)),
    status: fc.constantFrom("on-air", "silent", "test", "no-ident"),
    eirpW: fc.option(tenths(1, 9000)),
    hasOwnDme: fc.boolean(),
  })
  .map(({ declination, hasOwnDme, eirpW, ...made }) => {
    const hasDistance = made.kind !== "VOR";
    const hasBearing = made.kind !== "DME" && made.kind !== "TACAN";
    const vorClass = hasBearing ? made.vorClass : null;
    return {
      ...made,
      dmeChannel: hasDistance ? (pairedDmeChannel(made.frequencyMhz)?.text ?? null) : null,
      dmeSite: hasDistance && hasOwnDme ? { position: made.position, elevationFt: 100 } : null,
      vorClass,
      dmeClass: hasDistance ? made.dmeClass : null,
      declinationDeg: declination ?? 0,
      declinationEstimated: declination === null,
      eirpW: eirpW ?? defaultEirpW(vorClass),
    } as Station;
  });

const receiver: fc.Arbitrary<ReceiverSettings> = fc.record({
  name: fc.constantFrom("NAV1", "NAV2", "left", "no", "X-1", "true"),
  frequencyMhz: fc.constantFrom(...VOR_CHANNELS_MHZ),
  course: number(0, 360).map(stationDeg),
  face: fc.constantFrom("cdi", "hsi", "rmi"),
  bearingErrorDeg: fc.oneof(fc.constant(0), number(-30, 30)),
});

export const receiversArbitrary = fc.uniqueArray(receiver, {
  minLength: 1,
  maxLength: 4,
  selector: ({ name }) => name,
});

/** A ring does not say its first point again at its end, nor one that rounds to it. */
const ring = fc
  .array(placeArbitrary(80), { minLength: 3, maxLength: 14 })
  .filter((points) => Math.abs((points[0]?.latDeg ?? 0) - (points.at(-1)?.latDeg ?? 0)) > 0.0001);
const land: fc.Arbitrary<Land> = fc.record({
  name: words(20).filter((text) => text.trim() !== ""),
  islands: fc.array(fc.record({ name: fc.constantFrom("Haldrey", "St: A"), coast: ring }), { maxLength: 2 }),
  relief: fc
    .array(fc.record({ aboveFt: fc.integer({ min: 0, max: 9000 }), ring }), { maxLength: 2 })
    .map((areas) => areas.sort((one, other) => one.aboveFt - other.aboveFt)),
  peaks: fc.array(
    fc.record({
      name: fc.constantFrom("Mount Corvane", "No"),
      position: placeArbitrary(80),
      elevationFt: fc.integer({ min: 1, max: 9000 }),
      baseRadiusNm: tenths(1, 60),
    }),
    { maxLength: 2 },
  ),
  airfields: fc.array(
    fc.record({
      name: fc.constant("Brevane Moor"),
      position: placeArbitrary(80),
      elevationFt: fc.integer({ min: 0, max: 9000 }),
      runway: fc.option(fc.integer({ min: 1, max: 36 })),
    }),
    { maxLength: 2 },
  ),
});

export const windArbitrary = fc.record({ from: number(0, 360).map(trueDeg), speedKt: number(0, 250) });

export const aircraftArbitrary = fc.record({
  position: placeArbitrary(89),
  heading: number(0, 360).map(magneticDeg),
  altitudeFt: number(-1000, 60_000),
  tasKt: number(0, 600),
});

export const coversArbitrary = (names: readonly string[]): fc.Arbitrary<string[]> =>
  fc.uniqueArray(
    fc.constantFrom(
      ...VIEWS,
      "aircraft",
      "heading",
      ...names,
      ...names.flatMap((name) => RECEIVER_PARTS.map((part) => `${name}.${part}`)),
    ),
    { maxLength: 5 },
  );

/** None, or any; reflectors only of stations that have radials. */
export function signalArbitrary(stations: readonly Station[]): fc.Arbitrary<SignalConditions | null> {
  const idents = stations.filter(({ kind }) => kind !== "DME" && kind !== "TACAN").map(({ ident }) => ident);
  const reflectors =
    idents.length === 0
      ? fc.constant([])
      : fc.array(
          fc.record({
            ident: fc.constantFrom(...idents),
            position: placeArbitrary(89),
            amplitude: number(0, 0.9),
          }),
          { maxLength: 8 },
        );
  return fc.option(
    fc.record({
      kind: fc.constantFrom(...SIGNAL_KINDS),
      noiseDb: fc.option(number(0, 80)),
      reflectors,
      propeller: fc.option(
        fc.record({ speedRpm: number(300, 3000), blades: fc.integer({ min: 2, max: 6 }) }),
      ),
    }),
  );
}

export const sceneArbitrary: fc.Arbitrary<Scene> = fc
  .record({
    title: words(40),
    about: words(300),
    date: fc.constantFrom("2026-06-01", "2024-02-29"),
    stations: fc.uniqueArray(station, { maxLength: 4, selector: (one) => one.ident }),
    land: fc.option(land),
    aircraft: aircraftArbitrary,
    wind: windArbitrary,
    receivers: receiversArbitrary,
    ask: words(60),
  })
  .chain((scene) =>
    fc
      .record({
        covers: coversArbitrary(scene.receivers.map(({ name }) => name)),
        signal: signalArbitrary(scene.stations),
      })
      .map((more) => ({ ...scene, ...more })),
  );
