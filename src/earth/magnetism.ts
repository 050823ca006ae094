/**
 * The earth's magnetic field by the World Magnetic Model (NOAA NCEI and British Geological Survey), through geomagnetism.
 * Variation is east positive, degrees. Each model has a life: from the day its coefficients were issued, on which it
 * replaced the one before, to the last day of its fifth year (NCEI's product page: "valid for 2020.0 - 2025.0"). Where
 * two lives overlap the newer model answers, as its makers direct. Outside every life the nearest model is carried on at
 * its own yearly rate, and the answer says that the date was outside.
 */

import geomagnetism, { type GeomagnetismModel } from "geomagnetism";
import { type LatLon, latLon } from "./position.ts";
import { kmFromFt } from "./units.ts";

interface Life {
  readonly name: string;
  readonly validFrom: string;
  readonly validTo: string;
  /** A 1 January inside the life as the package counts it: the moment its coefficients are first drawn for. */
  readonly anchorYear: number;
}

/** Newest first. First days: dates in the coefficient files' headers. */
const LIVES: readonly [Life, ...Life[]] = [
  { name: "WMM-2025", validFrom: "2024-11-13", validTo: "2029-12-31", anchorYear: 2025 },
  { name: "WMM-2020", validFrom: "2019-12-10", validTo: "2024-12-31", anchorYear: 2020 },
  { name: "WMM-2015v2", validFrom: "2018-09-18", validTo: "2019-12-31", anchorYear: 2019 },
  { name: "WMM-2015", validFrom: "2014-12-15", validTo: "2019-12-31", anchorYear: 2015 },
];

export interface ModelLife {
  readonly name: string;
  /** First and last day of its life, ISO. */
  readonly validFrom: string;
  readonly validTo: string;
  /** False: the date asked for lies outside every model's life, and this is the nearest. */
  readonly dateInside: boolean;
}

export interface MagneticField {
  /** Declination of the field, degrees east of true north, (-180, 180]. */
  readonly variationDeg: number;
  /** Inclination, degrees below the horizon, [-90, 90]. */
  readonly dipDeg: number;
  /** Horizontal intensity, nanotesla. Under 6,000 compasses grow unreliable; under 2,000 they fail (WMM report). */
  readonly horizontalNt: number;
}

export interface MagneticModel extends ModelLife {
  /**
   * The field at a place and a height in feet above mean sea level. The model counts height from the ellipsoid; the
   * 100 m at most between the two change variation by less than 0.001 degree outside the polar blackout zones.
   * Throws RangeError on a latitude outside [-90, 90] or NaN.
   */
  readonly field: (position: LatLon, altitudeFt: number) => MagneticField;
}

export interface Variation {
  /** Degrees, east positive, (-180, 180]. */
  readonly variationDeg: number;
  readonly model: ModelLife;
}

/**
 * Magnetic variation at a place, a height in feet above mean sea level and an ISO date (YYYY-MM-DD, at 0 h UTC).
 * Never fails for a date outside the models' lives: `model.dateInside` is false then. Throws RangeError on a date that
 * is not in the calendar, a latitude outside [-90, 90] or NaN. Checked to the printed 0.01 degree against NCEI's test values.
 */
export function variation(at: {
  readonly position: LatLon;
  readonly altitudeFt: number;
  readonly date: string;
}): Variation {
  const { name, validFrom, validTo, dateInside, field } = magneticModel(at.date);
  const { variationDeg } = field(at.position, at.altitudeFt);
  return { variationDeg, model: { name, validFrom, validTo, dateInside } };
}

/** The model that serves an ISO date, drawn for that day. Throws RangeError on a date that is not in the calendar. */
export const magneticModel = (date: string): MagneticModel => magneticModelAtYear(decimalYear(date));

/** The model that serves a moment given as a decimal year (2027.5 is half way through 2027). Throws RangeError on NaN. */
export function magneticModelAtYear(year: number): MagneticModel {
  if (!Number.isFinite(year)) throw new RangeError(`a decimal year must be finite, got ${year}`);
  const kept = drawn.get(year);
  if (kept) return kept;
  const model = drawModel(year);
  // A scene asks for a handful of dates; the bound only keeps a long session from growing without end.
  if (drawn.size >= DRAWN_LIMIT) drawn.clear();
  drawn.set(year, model);
  return model;
}

/** An ISO date as a decimal year, counted in days of that year (WMM report, time conventions). Throws RangeError on no date. */
export function decimalYear(date: string): number {
  const year = /^(\d{4})-\d{2}-\d{2}$/.exec(date)?.[1];
  const ms = Date.parse(`${date}T00:00:00Z`);
  // The engine rolls 30 February over into March, so the day must survive the journey there and back.
  if (year === undefined || !Number.isFinite(ms) || new Date(ms).toISOString().slice(0, 10) !== date)
    throw new RangeError(`a date must be a day of the calendar written YYYY-MM-DD, got "${date}"`);
  const daysBefore = (ms - Date.parse(`${year}-01-01T00:00:00Z`)) / MS_PER_DAY;
  return Number(year) + daysBefore / daysInYear(Number(year));
}

const MS_PER_DAY = 86_400_000;
const daysInYear = (year: number): number =>
  year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 366 : 365;

const DRAWN_LIMIT = 64;
const drawn = new Map<number, MagneticModel>();

function drawModel(year: number): MagneticModel {
  const inside = LIVES.find((life) => year >= decimalYear(life.validFrom) && year < lastYear(life) + 1);
  const life = inside ?? (year >= 2020 ? LIVES[0] : (LIVES.at(-1) ?? LIVES[0]));
  const coefficients = coefficientsAt(life, year);
  return {
    name: life.name,
    validFrom: life.validFrom,
    validTo: life.validTo,
    dateInside: inside !== undefined,
    field: (position, altitudeFt) => fieldAt(coefficients, position, altitudeFt),
  };
}

const lastYear = (life: Life): number => Number(life.validTo.slice(0, 4));

/** The package's own type leaves out half of the coefficients it holds. */
interface Coefficients extends GeomagnetismModel {
  main_field_coeff_h: number[];
  secular_var_coeff_g: number[];
}

/**
 * The life's coefficients carried linearly from its anchor to a moment, as the model prescribes. The package would do so
 * itself, but only inside a life that it ends early, and with every year counted as 365 days.
 */
function coefficientsAt(life: Life, year: number): Coefficients {
  const coefficients = geomagnetism.model(new Date(Date.UTC(life.anchorYear, 0))) as Coefficients;
  const years = year - life.anchorYear;
  const { main_field_coeff_g, main_field_coeff_h, secular_var_coeff_g, secular_var_coeff_h } = coefficients;
  const carried = (main: number[], yearly: number[]) =>
    main.map((value, i) => value + years * (yearly[i] ?? 0));
  coefficients.main_field_coeff_g = carried(main_field_coeff_g, secular_var_coeff_g);
  coefficients.main_field_coeff_h = carried(main_field_coeff_h, secular_var_coeff_h);
  return coefficients;
}

function fieldAt(coefficients: Coefficients, position: LatLon, altitudeFt: number): MagneticField {
  if (!Number.isFinite(altitudeFt))
    throw new RangeError(`an altitude must be finite feet, got ${altitudeFt}`);
  const { latDeg, lonDeg } = latLon(position.latDeg, position.lonDeg);
  const { decl, incl, h } = coefficients.point([latDeg, lonDeg, kmFromFt(altitudeFt)]);
  return { variationDeg: decl <= -180 ? 180 : decl + 0, dipDeg: incl + 0, horizontalNt: h };
}
