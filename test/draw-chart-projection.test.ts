/** The chart's projection against geodesics on the ellipsoid, everywhere a chart may be centred. */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ChartView, chartProjection } from "../src/draw/chart/index.ts";
import { conformalFromGeodetic, geodeticFromConformal } from "../src/draw/chart/projection.ts";
import { direct, geodesicDistanceNm, type LatLon, latLon, trueDeg, wrap180 } from "../src/earth/index.ts";
import { apartDeg, directionDeg } from "./draw-chart-read.ts";

const WIDTH_PX = 1000;
const HEIGHT_PX = 700;

const viewArbitrary = fc
  .record({
    latDeg: fc.double({ min: -80, max: 80, noNaN: true }),
    lonDeg: fc.double({ min: -180, max: 179.999, noNaN: true }),
    widthNm: fc.double({ min: 10, max: 250, noNaN: true }),
  })
  .map(({ latDeg, lonDeg, widthNm }): ChartView => ({ centre: { latDeg, lonDeg }, widthNm }));
const onPaper = fc.record({
  x: fc.double({ min: 0, max: WIDTH_PX, noNaN: true }),
  y: fc.double({ min: 0, max: HEIGHT_PX, noNaN: true }),
});

describe("the projection", () => {
  test("keeps angles: a direction on the paper, from true north there, is the direction on the earth", () => {
    fc.assert(
      fc.property(viewArbitrary, onPaper, fc.integer({ min: 0, max: 359 }), (view, { x, y }, azimuthDeg) => {
        const projection = chartProjection(view, WIDTH_PX, HEIGHT_PX);
        const place = projection.toWorld(x, y);
        const ahead = direct(place, trueDeg(azimuthDeg), 0.05);
        const paperDeg = directionDeg(projection.toPaper(place), projection.toPaper(ahead));
        // Over 0.05 NM a shortest line bends by less than 0.0001 degree; the rest is the projection's own.
        expect(apartDeg(paperDeg - projection.trueNorthAngle(place), azimuthDeg)).toBeLessThan(0.0002);
      }),
    );
  });

  test("keeps distances to a thousandth across the whole sheet", () => {
    fc.assert(
      fc.property(viewArbitrary, onPaper, onPaper, (view, a, b) => {
        const projection = chartProjection(view, WIDTH_PX, HEIGHT_PX);
        const paperNm = Math.hypot(b.x - a.x, b.y - a.y) / projection.pxPerNm;
        const trueNm = geodesicDistanceNm(projection.toWorld(a.x, a.y), projection.toWorld(b.x, b.y));
        expect(Math.abs(paperNm - trueNm)).toBeLessThan(0.001 * trueNm + 1e-6);
      }),
    );
  });

  test("comes back to the same pixel, across the antimeridian too", () => {
    fc.assert(
      fc.property(viewArbitrary, onPaper, (view, { x, y }) => {
        const projection = chartProjection(view, WIDTH_PX, HEIGHT_PX);
        const place = projection.toWorld(x, y);
        latLon(place.latDeg, place.lonDeg);
        const back = projection.toPaper(place);
        expect(Math.hypot(back.x - x, back.y - y)).toBeLessThan(1e-5);
      }),
    );
  });

  test("puts the centre in the middle and north up there", () => {
    fc.assert(
      fc.property(viewArbitrary, (view) => {
        const projection = chartProjection(view, WIDTH_PX, HEIGHT_PX);
        const middle = projection.toPaper(view.centre);
        expect(middle.x).toBeCloseTo(WIDTH_PX / 2, 6);
        expect(middle.y).toBeCloseTo(HEIGHT_PX / 2, 6);
        expect(projection.trueNorthAngle(view.centre)).toBe(0);
      }),
    );
  });

  test("meridians lean together toward the nearer pole", () => {
    const east: LatLon = { latDeg: 0, lonDeg: 2 };
    const north = chartProjection({ centre: { latDeg: 50, lonDeg: 0 }, widthNm: 200 }, WIDTH_PX, HEIGHT_PX);
    const south = chartProjection({ centre: { latDeg: -50, lonDeg: 0 }, widthNm: 200 }, WIDTH_PX, HEIGHT_PX);
    // A meridian turns by the sine of the latitude for each degree of longitude, to the left of north when east of the middle.
    expect(north.trueNorthAngle(east)).toBeCloseTo(-2 * Math.sin((50 * Math.PI) / 180), 2);
    expect(south.trueNorthAngle(east)).toBeCloseTo(2 * Math.sin((50 * Math.PI) / 180), 2);
  });

  test("passes over the equator without a jump", () => {
    const at = (centreLatDeg: number) => {
      const projection = chartProjection(
        { centre: { latDeg: centreLatDeg, lonDeg: 10 }, widthNm: 150 },
        WIDTH_PX,
        HEIGHT_PX,
      );
      const point = projection.toPaper({ latDeg: centreLatDeg + 0.5, lonDeg: 11 });
      return [point.x, point.y, projection.trueNorthAngle({ latDeg: 0, lonDeg: 11 })];
    };
    const middle = at(0);
    for (const latDeg of [-0.002, -0.0005, 0.0005, 0.002]) {
      const [x = 0, y = 0, turnDeg = 0] = at(latDeg);
      expect(x).toBeCloseTo(middle[0] ?? 0, 2);
      expect(y).toBeCloseTo(middle[1] ?? 0, 2);
      expect(Math.abs(turnDeg)).toBeLessThan(1e-4);
    }
  });

  test("the antimeridian is no edge", () => {
    const projection = chartProjection(
      { centre: { latDeg: -17, lonDeg: 179.9 }, widthNm: 100 },
      WIDTH_PX,
      HEIGHT_PX,
    );
    const west = projection.toPaper({ latDeg: -17, lonDeg: 179.999 });
    const east = projection.toPaper({ latDeg: -17, lonDeg: -179.999 });
    expect(east.x - west.x).toBeCloseTo(0.002 * 60 * Math.cos((17 * Math.PI) / 180) * projection.pxPerNm, 2);
  });
});

describe("conformal latitude", () => {
  /** Snyder, USGS Professional Paper 1395, eq. 3-1, as printed: a second form of what the projection works out. */
  const asPrinted = (latDeg: number): number => {
    const e = Math.sqrt(0.00669437999014);
    const lat = (latDeg * Math.PI) / 180;
    const stretch = ((1 - e * Math.sin(lat)) / (1 + e * Math.sin(lat))) ** (e / 2);
    return (2 * Math.atan(Math.tan(Math.PI / 4 + lat / 2) * stretch) - Math.PI / 2) * (180 / Math.PI);
  };

  test("is Snyder's", () => {
    for (let latDeg = -89; latDeg <= 89; latDeg += 0.5)
      expect(conformalFromGeodetic(latDeg)).toBeCloseTo(asPrinted(latDeg), 9);
  });

  test("goes back and forth", () => {
    fc.assert(
      fc.property(fc.double({ min: -90, max: 90, noNaN: true }), (latDeg) => {
        expect(geodeticFromConformal(conformalFromGeodetic(latDeg))).toBeCloseTo(latDeg, 9);
      }),
    );
    expect(wrap180(conformalFromGeodetic(90))).toBe(90);
  });
});
