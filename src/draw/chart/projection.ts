/**
 * From the earth to the paper and back: Lambert's conformal conic, as aeronautical charts are drawn. Conformal on the WGS 84
 * ellipsoid: geodetic latitude becomes conformal latitude, and the conic is drawn from that sphere, so an angle measured on the
 * paper is the angle on the earth. (Taking geodetic latitude for the sphere's would turn bearings by up to 0.19 degree.)
 * Source: Snyder, Map Projections: A Working Manual, USGS Professional Paper 1395 (1987), eq. 3-1, 3-4 and chapter 15.
 */

import { type GeoProjection, geoConicConformal } from "d3-geo";
import { type LatLon, wrap180 } from "../../earth/index.ts";
import type { PaperPoint } from "../plain/paper.ts";

export interface ChartView {
  readonly centre: LatLon;
  /** Nautical miles across the drawing's width, at the centre. */
  readonly widthNm: number;
}

export interface ChartProjection {
  /** Pixels to the nautical mile at the centre; across a view of 200 NM the scale changes by less than 0.1 per cent. */
  readonly pxPerNm: number;
  /** Any place; places far from the view fall far outside the paper. */
  toPaper(place: LatLon): PaperPoint;
  toWorld(x: number, y: number): LatLon;
  /** Where true north points on the paper at that place: degrees clockwise from straight up, (-180, 180]. */
  trueNorthAngle(place: LatLon): number;
}

/** WGS 84: equatorial radius in NM, and first eccentricity. NGA.STND.0036, table 3.1. */
const EQUATORIAL_RADIUS_NM = 6_378_137 / 1852;
const ECCENTRICITY_SQUARED = 0.00669437999014;
const ECCENTRICITY = Math.sqrt(ECCENTRICITY_SQUARED);

/** So near the equator the cone is a cylinder for every purpose (1e-3 degree of latitude turns a meridian by 1e-5 per degree). */
const CYLINDER_BELOW_DEG = 1e-3;
/** The cone has no use for a pole. */
const HIGHEST_LATITUDE_DEG = 89;

const rad = (deg: number): number => (deg * Math.PI) / 180;
const deg = (radians: number): number => (radians * 180) / Math.PI;

/**
 * The projection of one view onto a drawing of this size, its centre in the middle of the drawing. Pure arithmetic: works in both
 * hemispheres, becomes Mercator's cylinder at the equator, and does not tear at the antimeridian.
 */
export function chartProjection(view: ChartView, widthPx: number, heightPx: number): ChartProjection {
  const centreLatDeg = clamp(view.centre.latDeg, HIGHEST_LATITUDE_DEG);
  const centreDeg = conformalFromGeodetic(centreLatDeg);
  const pxPerNm = widthPx / view.widthNm;
  const [southDeg, northDeg] = standardParallels(centreDeg, heightPx / pxPerNm / 60);
  const conic = geoConicConformal()
    .parallels([southDeg, northDeg])
    .rotate([-view.centre.lonDeg, 0])
    .center([0, centreDeg])
    .scale(1)
    .translate([0, 0]);
  conic
    .scale(scaleFor(conic, view.centre.lonDeg, centreLatDeg, pxPerNm))
    .translate([widthPx / 2, heightPx / 2]);
  const cone = coneConstant(southDeg, northDeg);
  return {
    pxPerNm,
    toPaper({ latDeg, lonDeg }) {
      const point = conic([lonDeg, conformalFromGeodetic(latDeg)]);
      if (!point) throw new RangeError(`no place on the chart for ${latDeg}, ${lonDeg}`);
      return { x: point[0], y: point[1] };
    },
    toWorld(x, y) {
      const place = conic.invert?.([x, y]);
      if (!place) throw new RangeError(`no place on the earth for ${x}, ${y}`);
      return { latDeg: geodeticFromConformal(place[1]), lonDeg: wrap180(place[0]) };
    },
    trueNorthAngle: ({ lonDeg }) => wrap180(-cone * wrap180(lonDeg - view.centre.lonDeg)),
  };
}

/** Conformal latitude of a geodetic latitude on WGS 84, degrees. Snyder eq. 3-1, in the form that keeps its digits near the pole. */
export function conformalFromGeodetic(latDeg: number): number {
  if (Math.abs(latDeg) >= 90) return Math.sign(latDeg) * 90;
  const lat = rad(latDeg);
  const isometric = Math.asinh(Math.tan(lat)) - ECCENTRICITY * Math.atanh(ECCENTRICITY * Math.sin(lat));
  return deg(Math.atan(Math.sinh(isometric)));
}

/** Geodetic latitude of a conformal latitude on WGS 84, degrees. Snyder eq. 3-4: each round brings two more digits. */
export function geodeticFromConformal(conformalDeg: number): number {
  if (Math.abs(conformalDeg) >= 90) return Math.sign(conformalDeg) * 90;
  const isometric = Math.asinh(Math.tan(rad(conformalDeg)));
  let lat = rad(conformalDeg);
  for (let round = 0; round < 8; round++) {
    lat = Math.atan(Math.sinh(isometric + ECCENTRICITY * Math.atanh(ECCENTRICITY * Math.sin(lat))));
  }
  return deg(lat);
}

/** One sixth of the way in from the bottom and top of the sheet, the cartographer's rule for the least change of scale. */
function standardParallels(centreDeg: number, heightDeg: number): [number, number] {
  const reachDeg = Math.min(heightDeg / 3, 30);
  if (Math.abs(centreDeg) < CYLINDER_BELOW_DEG) return [-reachDeg, reachDeg];
  return [
    clamp(centreDeg - reachDeg, HIGHEST_LATITUDE_DEG),
    clamp(centreDeg + reachDeg, HIGHEST_LATITUDE_DEG),
  ];
}

/** How far a meridian turns on the paper for a degree of longitude; negative in the south. Snyder eq. 15-3 on the sphere. */
function coneConstant(southDeg: number, northDeg: number): number {
  if (southDeg === -northDeg) return 0;
  if (southDeg === northDeg) return Math.sin(rad(southDeg));
  const t = (parallelDeg: number) => Math.tan(Math.PI / 4 + rad(parallelDeg) / 2);
  return Math.log(Math.cos(rad(southDeg)) / Math.cos(rad(northDeg))) / Math.log(t(northDeg) / t(southDeg));
}

/** The scale that makes a short piece of the centre's parallel as long as it should be. */
function scaleFor(unit: GeoProjection, lonDeg: number, latDeg: number, pxPerNm: number): number {
  const stepDeg = 0.01;
  const end = unit([lonDeg + stepDeg, conformalFromGeodetic(latDeg)]);
  if (!end) throw new RangeError(`no chart can be centred on ${latDeg}, ${lonDeg}`);
  const lat = rad(latDeg);
  const parallelRadiusNm =
    (EQUATORIAL_RADIUS_NM * Math.cos(lat)) / Math.sqrt(1 - ECCENTRICITY_SQUARED * Math.sin(lat) ** 2);
  return (pxPerNm * parallelRadiusNm * rad(stepDeg)) / Math.hypot(end[0], end[1]);
}

const clamp = (value: number, limit: number): number => Math.max(-limit, Math.min(limit, value));
