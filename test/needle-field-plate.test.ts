/** The bench's plates of the needle field, pixel by pixel against the engine; their print; where they lie after a move. */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  choiceFor,
  coverOver,
  FIELD_KINDS,
  type FieldKind,
  type FieldShown,
  newChoice,
} from "../src/draw/field/field-choice.ts";
import { shadeTable } from "../src/draw/field/field-print.ts";
import { sameSubject, subjectOf } from "../src/draw/field/field-subject.ts";
import {
  EDGE_INK,
  FIX_INKS,
  INK_COUNT,
  inksFor,
  RECEPTION_INKS,
  TILE_CELLS,
} from "../src/draw/field/inks.ts";
import { type PaperGrid, paperPlaces } from "../src/draw/field/paper-places.ts";
import {
  COARSE_FACTOR,
  makePlate,
  type Plate,
  type PlateRequest,
  plateFields,
} from "../src/draw/field/plate.ts";
import { printPlate } from "../src/draw/field/print-plate.ts";
import { type ChartView, chartProjection, fitView, THEMES } from "../src/draw/index.ts";
import {
  convergenceDeg,
  fromStation,
  inverse,
  type LatLon,
  stationDeg,
  stationFrame,
} from "../src/earth/index.ts";
import {
  binOfCell,
  crossFixAt,
  fieldCell,
  fieldReception,
  fixBand,
  fixBandOfCell,
  NO_BIN,
  NO_FIX,
  receptionCode,
  receptionOfCell,
  SHADE_OFF,
  shadeOf,
} from "../src/panel/index.ts";
import { resolveScene, type Scene } from "../src/scene/index.ts";
import { coveredPart, paperShift } from "../src/web/field/plate-place.ts";
import { demoScene } from "./browser/demo-in-node.ts";

const WIDTH_PX = 960;
const HEIGHT_PX = 600;

function requestFor(scene: Scene, choice: FieldShown, view: ChartView, cellPx = 1): PlateRequest {
  const subject = subjectOf(scene, choice);
  if (subject === null) throw new Error("the scene has receivers");
  return { subject, paper: { view, widthPx: WIDTH_PX, heightPx: HEIGHT_PX }, cellPx };
}

function wholePlate(request: PlateRequest): Plate {
  const making = makePlate(request, plateFields(request.subject, WIDTH_PX));
  for (;;) {
    const step = making.next();
    if (step.done) return step.value;
  }
}

const choiceOf = (scene: Scene, kind: FieldKind): FieldShown => {
  const choice = choiceFor(scene, newChoice(kind, scene.receivers[0]?.name ?? ""));
  if (choice === null) throw new Error("the scene can show the field");
  return choice;
};

const readingsAt = (scene: Scene, position: LatLon) =>
  resolveScene({ ...scene, aircraft: { ...scene.aircraft, position } }).receivers;

/** Pixels spread over the paper without a pattern, always the same. */
const somePixels = (count: number): { readonly x: number; readonly y: number }[] =>
  Array.from({ length: count }, (_, index) => ({
    x: Math.floor((index * 0.754877666 * WIDTH_PX) % WIDTH_PX),
    y: Math.floor((index * 0.569840296 * HEIGHT_PX) % HEIGHT_PX),
  }));

describe("the places under a row of pixels", () => {
  test.each<[string, ChartView, number]>([
    ["a wide view", { centre: { latDeg: -10.4, lonDeg: 1.6 }, widthNm: 600 }, 1],
    ["across the antimeridian", { centre: { latDeg: 52, lonDeg: 179.9 }, widthNm: 400 }, 0.5],
    ["at the equator, in fours", { centre: { latDeg: 0, lonDeg: 20 }, widthNm: 200 }, 4],
    ["far north", { centre: { latDeg: 74, lonDeg: -40 }, widthNm: 300 }, 1],
    ["a runway's neighbourhood", { centre: { latDeg: -10.5, lonDeg: 1.55 }, widthNm: 4 }, 1],
  ])("are where the chart's projection puts them: %s", (_name, view, cellPx) => {
    const grid: PaperGrid = { widthPx: WIDTH_PX, heightPx: HEIGHT_PX, cellPx };
    const projection = chartProjection(view, WIDTH_PX, HEIGHT_PX);
    const station = { latDeg: view.centre.latDeg + 0.3, lonDeg: view.centre.lonDeg };
    const frame = stationFrame(station);
    const places = paperPlaces(projection, grid, [(place) => convergenceDeg(station, place)]);
    for (let row = 3; row < HEIGHT_PX / cellPx; row += 37) {
      const { table, numbers } = places.row(row);
      for (let column = 1; column < table.count; column += 53) {
        const exact = projection.toWorld((column + 0.5) * cellPx, (row + 0.5) * cellPx);
        const [x, y, z] = table.xyzM.subarray(3 * column, 3 * column + 3);
        expect(metresApart(exact, { x: x!, y: y!, z: z! })).toBeLessThan(0.001);
        const line = fromStation(frame, exact);
        // A millimetre at half a pixel from the station turns the azimuth by less than the thousandth part of a degree.
        if (line.kind === "line")
          expect(0.001 / (line.distanceNm * 1852)).toBeLessThan((0.001 * Math.PI) / 180);
        expect(numbers[0]?.[column]).toBeCloseTo(convergenceDeg(station, exact), 6);
      }
    }
  });

  /** Between a place and earth-centred metres, through the place they stand for. */
  function metresApart(place: LatLon, { x, y, z }: { x: number; y: number; z: number }): number {
    // Bowring's latitude, exact on the ellipsoid itself.
    const e2 = 0.0066943799901413165;
    const latDeg = (Math.atan2(z, (1 - e2) * Math.hypot(x, y)) * 180) / Math.PI;
    const lonDeg = (Math.atan2(y, x) * 180) / Math.PI;
    return inverse(place, { latDeg, lonDeg }).distanceNm * 1852;
  }
});

describe("a plate", () => {
  test.each<[string, FieldKind, Partial<ChartView>]>([
    ["01-which-way-to-the-course", "needle", {}],
    ["12-in-the-cone", "needle", {}],
    ["14-what-the-mountain-hides", "reception", {}],
    ["14-what-the-mountain-hides", "reception", { widthNm: 12, centre: { latDeg: -10.47, lonDeg: 1.35 } }],
    ["15-below-the-horizon", "reception", { widthNm: 400 }],
    ["22-two-lines-one-mailboat", "fix", {}],
    ["23-proving-the-receiver", "needle", {}],
  ])(
    "of %s (%s) says at 2,000 pixels what the engine reads there",
    (name, kind, otherView) => {
      const scene = demoScene(name);
      const choice = choiceOf(scene, kind);
      const view = { ...fitView(resolveScene(scene), WIDTH_PX, HEIGHT_PX), ...otherView };
      const { toWorld } = chartProjection(view, WIDTH_PX, HEIGHT_PX);
      const plate = wholePlate(requestFor(scene, choice, view));
      const table = shadeTable();
      const course = scene.receivers[0]!.course;
      table.turnTo({ kind, course, bearingErrorDeg: scene.receivers[0]!.bearingErrorDeg });
      for (const { x, y } of somePixels(2000)) {
        const cell = plate.cells[y * plate.columns + x]!;
        const place = toWorld(x + 0.5, y + 0.5);
        const readings = readingsAt(scene, place);
        const reading = readings.find(({ settings }) => settings.name === choice.receiver)!;
        expect(receptionOfCell(cell)).toBe(fieldReception(reading));
        expect(binOfCell(cell) === NO_BIN ? SHADE_OFF : table.shades[binOfCell(cell)]).toBe(shadeOf(reading));
        if (kind === "fix") {
          const other = readings.find(({ settings }) => settings.name === choice.other)!;
          const errorNm = crossFixAt(place, reading, other, choice.allowedErrorDeg);
          expect(fixBandOfCell(cell)).toBe(errorNm === null ? NO_FIX : fixBand(errorNm));
        } else expect(fixBandOfCell(cell)).toBe(NO_FIX);
      }
      expect(plate.receptions.length).toBeGreaterThan(0);
      const seen = new Set(Array.from(plate.cells, receptionOfCell));
      expect(new Set(plate.receptions)).toEqual(seen);
    },
    60_000,
  );

  test("in fours has the cells of the middles of its fours", () => {
    const scene = demoScene("14-what-the-mountain-hides");
    const choice = choiceOf(scene, "reception");
    const view = fitView(resolveScene(scene), WIDTH_PX, HEIGHT_PX);
    const coarse = wholePlate(requestFor(scene, choice, view, COARSE_FACTOR));
    const { toWorld } = chartProjection(view, WIDTH_PX, HEIGHT_PX);
    expect([coarse.columns, coarse.rows]).toEqual([240, 150]);
    for (let at = 0; at < coarse.cells.length; at += 97) {
      const place = toWorld(((at % 240) + 0.5) * 4, (Math.floor(at / 240) + 0.5) * 4);
      const [reading] = readingsAt(scene, place);
      expect(receptionOfCell(coarse.cells[at]!)).toBe(fieldReception(reading!));
    }
  });

  test("serves on while the aircraft moves and the course turns, over land or none; not at another altitude", () => {
    const whole = demoScene("01-which-way-to-the-course");
    for (const scene of [whole, { ...whole, land: null }])
      for (const kind of FIELD_KINDS) {
        const subject = (of: Scene) => subjectOf(of, choiceOf(of, kind));
        const { aircraft } = scene;
        const moved = { ...scene, aircraft: { ...aircraft, position: { latDeg: -10, lonDeg: 2 } } };
        const turned = {
          ...scene,
          receivers: scene.receivers.map((receiver) => ({ ...receiver, course: stationDeg(1) })),
        };
        const higher = { ...scene, aircraft: { ...aircraft, altitudeFt: aircraft.altitudeFt + 100 } };
        const silenced = {
          ...scene,
          stations: scene.stations.map((station) => ({ ...station, status: "silent" }) as const),
        };
        expect(sameSubject(subject(scene), subject(moved))).toBe(true);
        expect(sameSubject(subject(scene), subject(turned))).toBe(true);
        expect(sameSubject(subject(scene), subject(higher))).toBe(false);
        expect(sameSubject(subject(scene), subject(silenced))).toBe(false);
      }
  });
});

describe("the print of a plate", () => {
  const scene = demoScene("14-what-the-mountain-hides");
  const view = fitView(resolveScene(scene), WIDTH_PX, HEIGHT_PX);

  /** Colours as bytes in the order of memory. */
  function printed(kind: FieldKind, course: number, plate: Plate, pixelsPerCell: number): Uint8Array {
    const table = shadeTable();
    const look = { kind, course: stationDeg(course), bearingErrorDeg: 0 };
    table.turnTo(look);
    const bytes = inksFor(kind, THEMES.light);
    const pixels = new Uint32Array(WIDTH_PX * HEIGHT_PX);
    const inks = new Uint32Array(bytes.buffer, 0, INK_COUNT * TILE_CELLS);
    printPlate({ plate, pixelsPerCell, look, shades: table.shades, inks, pixels, width: WIDTH_PX });
    return new Uint8Array(pixels.buffer);
  }

  const inksOf = Object.fromEntries(FIELD_KINDS.map((kind) => [kind, inksFor(kind, THEMES.light)]));
  const colourOfInk = (kind: FieldKind, ink: number, x: number, y: number): number[] => {
    const from = (ink * TILE_CELLS + (y & 7) * 8 + (x & 7)) * 4;
    return [...inksOf[kind]!.subarray(from, from + 4)];
  };

  test.each<[FieldKind, number]>([
    ["needle", 43],
    ["needle", 200.5],
    ["to-from", 43],
    ["reception", 0],
    ["fix", 0],
  ])("of a %s field for course %d wears the inks of what is read at each pixel", (kind, course) => {
    const turned = {
      ...scene,
      receivers: scene.receivers.map((receiver) => ({ ...receiver, course: stationDeg(course) })),
    };
    const choice = choiceOf(turned, kind);
    const bytes = printed(kind, course, wholePlate(requestFor(turned, choice, view)), 1);
    const { toWorld } = chartProjection(view, WIDTH_PX, HEIGHT_PX);
    const inkColours = (reading: ReturnType<typeof readingsAt>, place: LatLon, x: number, y: number) => {
      const [first, second] = reading;
      const reception = RECEPTION_INKS + receptionCode(fieldReception(first!));
      if (kind === "reception") return colourOfInk(kind, reception, x, y);
      if (kind === "fix") {
        const errorNm = crossFixAt(place, first!, second!, choice.allowedErrorDeg);
        return colourOfInk(kind, FIX_INKS + (errorNm === null ? NO_FIX : fixBand(errorNm)), x, y);
      }
      return colourOfInk(kind, first!.radial === null ? reception : shadeOf(first!), x, y);
    };
    let edges = 0;
    for (const { x, y } of somePixels(1000)) {
      const from = (y * WIDTH_PX + x) * 4;
      const colour = [...bytes.subarray(from, from + 4)];
      const place = toWorld(x + 0.5, y + 0.5);
      const expected = inkColours(readingsAt(turned, place), place, x, y);
      if (String(colour) === String(expected)) continue;
      // What is not the place's own ink is the line along an edge.
      expect(colour).toEqual(colourOfInk(kind, EDGE_INK, x, y));
      edges++;
    }
    expect(edges).toBeLessThan(30);
  });

  test("in fours repeats each cell", () => {
    const choice = choiceOf(scene, "reception");
    const coarse = wholePlate(requestFor(scene, choice, view, COARSE_FACTOR));
    const bytes = printed("reception", 0, coarse, COARSE_FACTOR);
    for (const { x, y } of somePixels(500)) {
      const cell = coarse.cells[(y >> 2) * coarse.columns + (x >> 2)]!;
      const from = (y * WIDTH_PX + x) * 4;
      const colour = [...bytes.subarray(from, from + 4)];
      const own = colourOfInk("reception", RECEPTION_INKS + receptionCode(receptionOfCell(cell)), x, y);
      if (String(colour) !== String(own)) expect(colour).toEqual(colourOfInk("reception", EDGE_INK, x, y));
    }
  });

  test("darkens a light sheet only, and lightens a dark one only by what it prints", () => {
    for (const theme of [THEMES.light, THEMES.dark])
      for (const kind of ["needle", "to-from", "reception", "fix"] as const) {
        const inks = inksFor(kind, theme);
        const nothing = theme.name === "light" ? 255 : 0;
        const off = inks.subarray(SHADE_OFF * TILE_CELLS * 4, (SHADE_OFF + 1) * TILE_CELLS * 4);
        off.forEach((value, at) => {
          expect(value).toBe(at % 4 === 3 ? 255 : nothing);
        });
      }
  });

  test("tells every step of the needle from the next", () => {
    for (const theme of [THEMES.light, THEMES.dark]) {
      const inks = inksFor("needle", theme);
      const seen = new Set<string>();
      // Pixel (2, 0) of a square lies between the lines.
      for (let shade = 0; shade < SHADE_OFF / 2; shade++) {
        const from = (shade * TILE_CELLS + 2) * 4;
        seen.add(String(inks.subarray(from, from + 3)));
      }
      expect(seen.size).toBe(SHADE_OFF / 2);
    }
  });
});

describe("a plate on a chart that was moved", () => {
  const made = {
    view: { centre: { latDeg: -10.4, lonDeg: 1.6 }, widthNm: 120 },
    widthPx: 960,
    heightPx: 600,
  };

  test("lies where it was while nothing moves", () => {
    const { a, b, e, f } = paperShift(made, made);
    for (const [value, expected] of [
      [a, 1],
      [b, 0],
      [e, 0],
      [f, 0],
    ] as const)
      expect(value).toBeCloseTo(expected, 9);
    expect(coveredPart(made, made, { a, b, e, f })).toBeCloseTo(1, 9);
  });

  test("lies with its places within a pixel of their own, panned by a quarter or zoomed by half", () => {
    const lat = fc.integer({ min: -25, max: 25 }).map((part) => part / 100);
    fc.assert(
      fc.property(lat, lat, fc.constantFrom(80, 120, 180), (northDeg, eastDeg, widthNm) => {
        const now = {
          ...made,
          view: { centre: { latDeg: -10.4 + northDeg, lonDeg: 1.6 + eastDeg }, widthNm },
        };
        const { a, b, e, f } = paperShift(made, now);
        const from = chartProjection(made.view, 960, 600);
        const to = chartProjection(now.view, 960, 600);
        for (const [x, y] of [
          [480, 300],
          [200, 150],
          [800, 500],
        ] as const) {
          const own = to.toPaper(from.toWorld(x, y));
          expect(Math.hypot(a * x - b * y + e - own.x, b * x + a * y + f - own.y)).toBeLessThan(1);
        }
      }),
    );
  });

  test("covers the less the farther it went", () => {
    const at = (eastDeg: number) => {
      const now = { ...made, view: { ...made.view, centre: { latDeg: -10.4, lonDeg: 1.6 + eastDeg } } };
      return coveredPart(made, now, paperShift(made, now));
    };
    expect(at(0.5)).toBeGreaterThan(0.7);
    expect(at(1.5)).toBeLessThan(0.3);
    expect(at(4)).toBe(0);
  });
});

describe("a choice of field", () => {
  const scene = demoScene("01-which-way-to-the-course");

  test("gives way to what the scene has", () => {
    expect(choiceFor(scene, null)).toBeNull();
    expect(choiceFor(scene, newChoice("needle", "NAV2"))).toMatchObject({ receiver: "NAV2" });
    expect(choiceFor(scene, newChoice("needle", "NAV9"))).toMatchObject({ receiver: "NAV1" });
    expect(choiceFor(scene, { ...newChoice("fix", "NAV2"), other: "NAV2" })).toMatchObject({
      receiver: "NAV2",
      other: "NAV1",
    });
    const alone = { ...scene, receivers: scene.receivers.slice(0, 1) };
    expect(choiceFor(alone, newChoice("fix", "NAV1"))).toBeNull();
    const kept = choiceOf(scene, "needle");
    expect(choiceFor(scene, kept)).toBe(kept);
  });

  test.each<[string, FieldKind, string | null]>([
    ["chart", "reception", "chart"],
    ["panel", "needle", "panel"],
    ["panel", "reception", null],
    ["NAV1", "to-from", "NAV1"],
    ["NAV1.needle", "needle", "NAV1 needle"],
    ["NAV1.needle", "to-from", null],
    ["NAV1.flag", "needle", "NAV1 flag"],
    ["NAV1.course", "to-from", "NAV1 course"],
    ["NAV1.course", "reception", null],
    ["NAV1.ident", "reception", "NAV1 ident"],
    ["NAV2.frequency", "fix", "NAV2 frequency"],
    ["NAV2.frequency", "needle", null],
    ["aircraft", "needle", null],
  ])("under the cover %s does not give it away: %s", (cover, kind, covered) => {
    expect(coverOver({ ...scene, covers: [cover] }, choiceOf(scene, kind))).toBe(covered);
  });
});

test("cells hold what the receiver reads, whole", () => {
  const scene = demoScene("01-which-way-to-the-course");
  const [reading] = resolveScene(scene).receivers;
  expect(receptionOfCell(fieldCell(reading!))).toBe("good-inside");
  expect(binOfCell(fieldCell(reading!))).toBe(Math.floor(reading!.radial! * 182));
});
