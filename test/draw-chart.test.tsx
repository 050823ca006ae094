/** What the chart shows, read back out of its SVG: roses, radials, courses, dart, norths, wind, scale and net lie where they should. */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ChartProjection, chartDescription, chartProjection } from "../src/draw/chart/index.ts";
import {
  direct,
  inverse,
  type LatLon,
  reciprocal,
  threeDigits,
  trueDeg,
  trueFromStation,
  turnBetween,
} from "../src/earth/index.ts";
import type { ReceiverReading, SignalConditions } from "../src/panel/index.ts";
import type { Situation } from "../src/scene/index.ts";
import {
  all,
  apartDeg,
  chartOf,
  cornersOfPath,
  type Drawn,
  demoSituations,
  directionDeg,
  distanceToLine,
  isInside,
  moved,
  only,
  type Point,
  partsOf,
  propsOf,
} from "./draw-chart-read.ts";
import { HJL, OXK, onRadial, situationOf, TXJ } from "./isles.ts";

const DEMO = demoSituations();

const projectionOf = (situation: Situation): ChartProjection => {
  const { view, widthPx, heightPx } = propsOf(situation);
  return chartProjection(view, widthPx, heightPx);
};

/** Where true north lies on the paper at a place, from two places a mile apart: a second route to what the chart works out. */
function northDeg({ toPaper }: ChartProjection, place: LatLon): number {
  return directionDeg(toPaper(place), toPaper(direct(place, trueDeg(0), 1)));
}

const pathsOf = (picture: Drawn, part: string, receiver?: string): Drawn[] =>
  partsOf(picture, part, receiver).filter(({ tag }) => tag === "path");

const hasLines = ({ station, signal }: ReceiverReading): boolean =>
  station !== null &&
  ["VOR", "VOR-DME", "VORTAC"].includes(station.kind) &&
  (signal.kind === "good" || signal.kind === "weak");

/** Place of the rose, tip of its north arrow, and its figures with their middles. */
function roseOf(picture: Drawn, ident: string) {
  const rose = only(
    all(
      picture,
      ({ attributes }) => attributes["data-part"] === "rose" && attributes["data-station"] === ident,
    ),
  );
  const arrow = only(
    all(rose, ({ tag, attributes }) => tag === "path" && (attributes.fill ?? "none") !== "none"),
  );
  const figures = all(rose, ({ tag }) => tag === "text").map((text) => ({
    figure: Number(text.words),
    middle: moved(
      {
        x: Number(text.attributes.x),
        y: Number(text.attributes.y) - 0.375 * Number(text.attributes["font-size"]),
      },
      text.matrix,
    ),
  }));
  const ring = only(all(rose, ({ tag }) => tag === "circle"));
  return { centre: moved({ x: 0, y: 0 }, ring.matrix), tip: cornersOfPath(arrow)[0] as Point, figures };
}

describe("a station's rose", () => {
  test("points at the station's own north, in every demo scene", () => {
    let roses = 0;
    for (const { situation } of DEMO) {
      const picture = chartOf(situation);
      const projection = projectionOf(situation);
      for (const station of situation.scene.stations) {
        const drawn = all(
          picture,
          ({ attributes }) =>
            attributes["data-part"] === "rose" && attributes["data-station"] === station.ident,
        );
        if (drawn.length === 0) continue;
        roses++;
        const { centre, tip, figures } = roseOf(picture, station.ident);
        const at = projection.toPaper(station.position);
        expect(Math.hypot(centre.x - at.x, centre.y - at.y)).toBeLessThan(0.02);
        const zeroDeg = northDeg(projection, station.position) + station.declinationDeg;
        expect(apartDeg(directionDeg(centre, tip), zeroDeg)).toBeLessThan(0.05);
        for (const { figure, middle } of figures)
          expect(apartDeg(directionDeg(centre, middle), zeroDeg + figure * 10)).toBeLessThan(0.1);
      }
    }
    expect(roses).toBeGreaterThan(DEMO.length);
  });

  test("has a figure every thirty degrees, north as 36", () => {
    const { figures } = roseOf(chartOf(situationOf({ at: onRadial(TXJ, 246, 18) })), "TXJ");
    expect(figures.map(({ figure }) => figure)).toEqual([36, 3, 6, 9, 12, 15, 18, 21, 24, 27, 30, 33]);
  });
});

describe("the radial", () => {
  test("leaves the station along its number and ends at the aircraft, in every demo scene", () => {
    let radials = 0;
    for (const { situation } of DEMO) {
      const picture = chartOf(situation);
      const projection = projectionOf(situation);
      const aircraft = projection.toPaper(situation.scene.aircraft.position);
      for (const reading of situation.receivers.filter(hasLines)) {
        const { station } = reading;
        if (!station || !reading.geometry) continue;
        radials++;
        const line = cornersOfPath(only(pathsOf(picture, "radial", reading.settings.name)));
        const [start, end] = [line[0] as Point, line.at(-1) as Point];
        expect(Math.hypot(end.x - aircraft.x, end.y - aircraft.y)).toBeLessThan(0.02);
        const { tip, centre } = roseOf(picture, station.ident);
        expect(Math.hypot(start.x - centre.x, start.y - centre.y)).toBeLessThan(0.02);
        // The law of the issue: chart's rose and computed radial agree, read back out of the picture.
        const readDeg = directionDeg(start, end) - directionDeg(centre, tip);
        expect(apartDeg(readDeg, reading.geometry.trueRadial)).toBeLessThan(0.1);
      }
    }
    expect(radials).toBeGreaterThan(20);
  });

  test("is written as three digits beside it", () => {
    const picture = chartOf(situationOf({ at: onRadial(TXJ, 66, 20) }));
    expect(partsOf(picture, "radial").map(({ words }) => words)).toContain("radial 066");
  });

  test("is not drawn where none is received", () => {
    const below = situationOf({ at: onRadial(TXJ, 246, 90), altitudeFt: 100 });
    expect(below.receivers[0]?.signal.kind).toBe("none");
    expect(partsOf(chartOf(below), "radial")).toEqual([]);
  });

  test("says whose it is when the station is off the sheet", () => {
    const situation = situationOf({ at: onRadial(TXJ, 246, 40), altitudeFt: 9000 });
    const view = { centre: situation.scene.aircraft.position, widthNm: 20 };
    expect(partsOf(chartOf(situation, { view }), "radial").map(({ words }) => words)).toContain(
      "TXJ radial 246",
    );
  });
});

const courseArbitrary = fc.record({
  courseDeg: fc.integer({ min: 0, max: 359 }),
  radialDeg: fc.double({ min: 0, max: 360, maxExcluded: true, noNaN: true }),
  distanceNm: fc.double({ min: 4, max: 38, noNaN: true }),
  station: fc.constantFrom(TXJ, HJL, OXK),
});

describe("the course line", () => {
  test("passes through the station and lies as far from the aircraft as the deviation says", () => {
    fc.assert(
      fc.property(courseArbitrary, ({ courseDeg, radialDeg, distanceNm, station }) => {
        const at = onRadial(station, radialDeg, distanceNm);
        const situation = situationOf({ at, courseDeg, tune: station.frequencyMhz, altitudeFt: 9000 });
        const picture = chartOf(situation);
        const projection = projectionOf(situation);
        const halves = all(picture, ({ attributes }) => attributes["data-half"] !== undefined).map(
          (half) => ({
            name: half.attributes["data-half"],
            points: cornersOfPath(half),
          }),
        );
        expect(halves.map(({ name }) => name).sort()).toEqual(["FROM", "TO"]);
        const from = halves.find(({ name }) => name === "FROM")?.points ?? [];
        const to = halves.find(({ name }) => name === "TO")?.points ?? [];
        const centre = projection.toPaper(station.position);
        for (const half of [from, to])
          expect(Math.hypot((half[0]?.x ?? 0) - centre.x, (half[0]?.y ?? 0) - centre.y)).toBeLessThan(0.02);
        const { tip } = roseOf(picture, station.ident);
        const leavesDeg = directionDeg(from[0] as Point, from.at(-1) as Point) - directionDeg(centre, tip);
        expect(apartDeg(leavesDeg, courseDeg)).toBeLessThan(0.1);
        expect(
          apartDeg(
            directionDeg(to[0] as Point, to.at(-1) as Point),
            directionDeg(from[0] as Point, from.at(-1) as Point),
          ),
        ).toBeGreaterThan(179.9);
        // Plane trigonometry: at these distances the sphere adds less than 0.01 NM.
        const offNm = Math.abs(distanceNm * Math.sin(((radialDeg - courseDeg) * Math.PI) / 180));
        const line = [...to].reverse().concat(from);
        const drawnNm = distanceToLine(projection.toPaper(at), line) / projection.pxPerNm;
        expect(Math.abs(drawnNm - offNm)).toBeLessThan(0.02);
      }),
      { numRuns: 40 },
    );
  });

  test("its hatched side is where the flag says TO", () => {
    let flags = 0;
    fc.assert(
      fc.property(courseArbitrary, ({ courseDeg, radialDeg, distanceNm, station }) => {
        const at = onRadial(station, radialDeg, distanceNm);
        const situation = situationOf({ at, courseDeg, tune: station.frequencyMhz, altitudeFt: 9000 });
        const flag = situation.receivers[0]?.flag;
        if (flag === "OFF") return;
        flags++;
        const side = cornersOfPath(only(pathsOf(chartOf(situation), "to-side", "NAV1")));
        expect(isInside(projectionOf(situation).toPaper(at), side)).toBe(flag === "TO");
      }),
      { numRuns: 40 },
    );
    expect(flags).toBeGreaterThan(20);
  });

  test("its arrows fly along the course on both sides of the station", () => {
    const situation = situationOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 });
    const picture = chartOf(situation);
    const arrows = all(picture, ({ attributes }) => attributes["data-arrow"] === "course").map(cornersOfPath);
    expect(arrows.length).toBeGreaterThan(2);
    const courseTrue = trueFromStation(situation.receivers[0]!.settings.course, TXJ.declinationDeg);
    for (const [tip, , notch] of arrows)
      expect(apartDeg(directionDeg(notch as Point, tip as Point), courseTrue)).toBeLessThan(0.5);
  });

  test("names TO, FROM and itself", () => {
    const picture = chartOf(situationOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 }));
    const words = (part: string) => partsOf(picture, part).map((element) => element.words);
    expect(words("to-side")).toContain("TO");
    expect(words("from-side")).toContain("FROM");
    expect(words("course")).toContain("course 070");
  });

  test("tells no halves apart while there is no flag to show", () => {
    const below = situationOf({ at: onRadial(TXJ, 246, 90), altitudeFt: 100, courseDeg: 70 });
    const picture = chartOf(below);
    expect(partsOf(picture, "course", "NAV1").length).toBeGreaterThan(0);
    for (const part of ["to-side", "from-side", "abeam"]) expect(partsOf(picture, part)).toEqual([]);
  });

  test("the abeam line stands square to it at the station", () => {
    const situation = situationOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 });
    const line = cornersOfPath(only(pathsOf(chartOf(situation), "abeam", "NAV1")));
    const courseTrue = trueFromStation(situation.receivers[0]!.settings.course, TXJ.declinationDeg);
    expect(distanceToLine(projectionOf(situation).toPaper(TXJ.position), line)).toBeLessThan(0.05);
    const turnDeg = apartDeg(directionDeg(line[0] as Point, line.at(-1) as Point), courseTrue);
    expect(Math.abs(turnDeg - 90)).toBeLessThan(0.3);
  });

  test("the distance from it is drawn square to it, and written, only while it is lit", () => {
    const situation = situationOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 });
    expect(partsOf(chartOf(situation), "offset")).toEqual([]);
    const picture = chartOf(situation, { lit: { receiver: "NAV1", parts: ["offset"] } });
    const [from, to] = cornersOfPath(only(pathsOf(picture, "offset", "NAV1"))) as [Point, Point];
    const lengthNm = Math.hypot(to.x - from.x, to.y - from.y) / projectionOf(situation).pxPerNm;
    // 18 NM at 4 degrees: 18 sin 4 = 1.26.
    expect(lengthNm).toBeCloseTo(1.26, 1);
    expect(partsOf(picture, "offset").map(({ words }) => words)).toContain("1.3 NM");
  });
});

describe("the aircraft", () => {
  test("its nose points along the true heading and its track along the true track", () => {
    for (const headingDeg of [1, 90, 137, 305]) {
      const situation = situationOf({ at: onRadial(TXJ, 246, 18), headingDeg, windKt: 25 });
      const picture = chartOf(situation);
      const projection = projectionOf(situation);
      const gridDeg = northDeg(projection, situation.scene.aircraft.position);
      const dart = only(partsOf(picture, "aircraft"));
      const corners = cornersOfPath(all(dart, ({ tag }) => tag === "path")[0] as Drawn);
      const noseDeg = directionDeg(corners[2] as Point, corners[0] as Point);
      expect(apartDeg(noseDeg, gridDeg + situation.headingTrue)).toBeLessThan(0.1);
      const track = all(only(partsOf(picture, "track")), ({ tag }) => tag === "path")[0] as Drawn;
      const [start, end] = cornersOfPath(track);
      expect(
        apartDeg(directionDeg(start as Point, end as Point), gridDeg + situation.trackTrue),
      ).toBeLessThan(0.1);
    }
  });

  test("shows no track of its own in still air", () => {
    expect(partsOf(chartOf(situationOf({ at: onRadial(TXJ, 246, 18) })), "track")).toEqual([]);
  });

  test("is labelled with heading and height", () => {
    const svg = chartOf(situationOf({ at: onRadial(TXJ, 246, 18), headingDeg: 90 }));
    expect(all(svg, ({ tag }) => tag === "text").map(({ words }) => words)).toContain(
      "heading 090 · 3,500 ft",
    );
  });
});

describe("round the sheet", () => {
  const situation = situationOf({ at: onRadial(TXJ, 246, 18), windKt: 18 });
  const picture = chartOf(situation);
  const projection = projectionOf(situation);
  const texts = all(picture, ({ tag }) => tag === "text");

  test("magnetic north is turned from true north by the variation", () => {
    const tip = (north: string) => {
      const group = only(all(picture, ({ attributes }) => attributes["data-north"] === north));
      const [foot, top] = cornersOfPath(all(group, ({ tag }) => tag === "path")[0] as Drawn);
      return directionDeg(foot as Point, top as Point);
    };
    expect(apartDeg(tip("true"), 0)).toBeLessThan(0.01);
    expect(apartDeg(tip("magnetic"), situation.variationDeg)).toBeLessThan(0.01);
    expect(texts.map(({ words }) => words)).toContain("variation 7.4° W");
  });

  test("the wind's arrow flies away from where it blows from", () => {
    const arrow = all(only(partsOf(picture, "wind")), ({ tag }) => tag === "path")[0] as Drawn;
    const [tail, head] = cornersOfPath(arrow);
    expect(apartDeg(directionDeg(head as Point, tail as Point), 140)).toBeLessThan(0.01);
    expect(texts.map(({ words }) => words)).toContain("wind 140/18");
    expect(partsOf(chartOf(situationOf({ at: onRadial(TXJ, 246, 18) })), "wind")).toEqual([]);
  });

  test("the scale bar is as long as it says", () => {
    const bar = only(all(picture, ({ attributes }) => attributes["data-scale-nm"] !== undefined));
    const [a, b] = cornersOfPath(all(bar, ({ tag }) => tag === "path")[0] as Drawn);
    const scaleNm = Number(bar.attributes["data-scale-nm"]);
    expect(((b?.x ?? 0) - (a?.x ?? 0)) / projection.pxPerNm).toBeCloseTo(scaleNm, 1);
    expect(bar.words).toContain(`${scaleNm} NM`);
  });

  test("figures on the border stand at their latitude and longitude", () => {
    let figures = 0;
    for (const text of texts) {
      const found = /^(\d+)°(\d\d)′([NSEW])$/.exec(text.words);
      if (!found) continue;
      figures++;
      const [, degrees, minutes, side = ""] = found;
      const value = (Number(degrees) + Number(minutes) / 60) * (side === "S" || side === "W" ? -1 : 1);
      const x = Number(text.attributes.x);
      const size = Number(text.attributes["font-size"]);
      if (side === "N" || side === "S") {
        // The line is drawn turned: its middle stays where it was put, before the step to the baseline.
        const y = Number(text.attributes.y) - 0.375 * size;
        expect(projection.toWorld(22, y).latDeg).toBeCloseTo(value, 3);
      } else expect(projection.toWorld(x, 700 - 22).lonDeg).toBeCloseTo(value, 3);
    }
    expect(figures).toBeGreaterThan(6);
  });
});

describe("two receivers", () => {
  const { situation } = DEMO.find(({ name }) => name.startsWith("22")) ?? DEMO[0]!;

  test("both radials are drawn and told apart by number; the chosen one has its course line", () => {
    for (const [chosen, other] of [
      ["NAV1", "NAV2"],
      ["NAV2", "NAV1"],
    ] as const) {
      const picture = chartOf(situation, { receiver: chosen });
      for (const receiver of [chosen, other]) expect(pathsOf(picture, "radial", receiver)).toHaveLength(1);
      expect(partsOf(picture, "course", chosen).length).toBeGreaterThan(0);
      expect(partsOf(picture, "course", other)).toEqual([]);
      expect(
        partsOf(picture, "radial", "NAV2")
          .map(({ words }) => words)
          .join(),
      ).toContain("2radial 233");
    }
  });

  test("their radials cross at the aircraft as two azimuths do", () => {
    const picture = chartOf(situation);
    const [one, two] = ["NAV1", "NAV2"].map((name) => cornersOfPath(only(pathsOf(picture, "radial", name))));
    const cutDeg = apartDeg(
      directionDeg(one?.at(-1) as Point, one?.[0] as Point),
      directionDeg(two?.at(-1) as Point, two?.[0] as Point),
    );
    const { position } = situation.scene.aircraft;
    const bearings = situation.receivers.map(({ station }) => {
      const line = inverse(position, station?.position as LatLon);
      return line.kind === "line" ? line.azimuth : trueDeg(0);
    });
    const expected = Math.abs(
      turnBetween(bearings[0] ?? trueDeg(0), reciprocal(reciprocal(bearings[1] ?? trueDeg(0)))),
    );
    expect(Math.abs(cutDeg - expected)).toBeLessThan(0.1);
  });

  test("the label of each radial is its own three digits", () => {
    const picture = chartOf(situation);
    for (const reading of situation.receivers) {
      const digits = threeDigits(reading.geometry?.trueRadial ?? 0);
      const words = partsOf(picture, "radial", reading.settings.name).map((element) => element.words);
      expect(words.join()).toContain(`radial ${digits}`);
    }
  });
});

describe("a reflector", () => {
  const hangar = onRadial(TXJ, 300, 8);
  const signal: SignalConditions = {
    kind: "conventional",
    noiseDb: null,
    reflectors: [{ ident: "TXJ", position: hangar, amplitude: 0.1 }],
    propeller: null,
  };
  const setup = { at: onRadial(TXJ, 246, 18), courseDeg: 70 };
  const signs = (picture: Drawn) => all(picture, ({ attributes }) => attributes["data-reflector"] === "TXJ");
  const saying = (picture: Drawn) =>
    all(picture, ({ tag, words }) => tag === "text" && words === "reflector");

  test("stands where the scene has it, with its name in words and in the description", () => {
    const situation = situationOf({ ...setup, signal });
    const picture = chartOf(situation);
    const wall = all(only(signs(picture)), ({ tag }) => tag === "path")[1]!;
    const [left, right] = cornersOfPath(wall);
    const at = projectionOf(situation).toPaper(hangar);
    expect((left!.x + right!.x) / 2).toBeCloseTo(at.x, 1);
    expect(left!.y).toBeCloseTo(at.y, 1);
    expect(saying(picture)).toHaveLength(1);
    expect(chartDescription(situation)).toContain(
      "A reflector stands on the 300 radial of TXJ, 8.0 miles out.",
    );
    expect(signs(chartOf(situationOf(setup)))).toEqual([]);
  });

  test.each(["signal", "NAV1.ident", "NAV1.frequency", "NAV1", "chart"])(
    "is not drawn while %s is covered, for it stands near the station that is meant",
    (cover) => {
      const situation = situationOf({ ...setup, signal, covers: [cover] });
      expect(signs(chartOf(situation))).toEqual([]);
      expect(chartDescription(situation)).not.toContain("reflector");
    },
  );
});
