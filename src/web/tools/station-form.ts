/**
 * A station of one's own from what is typed into a form: written as a station file would have it and read by that file's own reader, so
 * that the form and the file refuse the same things in the same words.
 */

import { type LatLon, latLonText, variation } from "../../earth/index.ts";
import { frequencyText, type Station } from "../../radio/index.ts";
import { type Fault, readAircraftPlace, readStations, type Scene } from "../../scene/index.ts";
import { identIsFree, stationMoved } from "../state/station-actions.ts";

export const STATION_FIELDS = [
  "ident",
  "name",
  "kind",
  "frequency",
  "at",
  "elevation",
  "declination",
] as const;
export type StationField = (typeof STATION_FIELDS)[number];
export type StationForm = Readonly<Record<StationField, string>>;

export type StationChecked =
  | { readonly ok: true; readonly station: Station }
  /** A sentence for each field at fault: upper-case start, with a full stop. */
  | { readonly ok: false; readonly faults: Readonly<Partial<Record<StationField, string>>> };

/** A form to begin with, for a place. */
export const blankForm = (at: LatLon, date: string): StationForm => ({
  ident: "",
  name: "",
  kind: "VOR-DME",
  frequency: "",
  at: placeText(at),
  elevation: "0",
  declination: declinationOn(at, date),
});

export const formOf = (station: Station): StationForm => ({
  ident: station.ident,
  name: station.name,
  kind: station.kind,
  frequency: frequencyText(station.frequencyMhz),
  at: latLonText(station.position, 2),
  elevation: String(Math.round(station.elevationFt)),
  declination: eastWest(Number(station.declinationDeg.toFixed(1))),
});

export const placeText = (at: LatLon): string => latLonText(at, 1);

/** What a survey on that day would give the station: the day's variation to the whole degree, "8W". */
export const declinationOn = (position: LatLon, date: string): string =>
  eastWest(Math.round(variation({ position, altitudeFt: 0, date }).variationDeg));

const eastWest = (declinationDeg: number): string =>
  declinationDeg === 0 ? "0" : `${Math.abs(declinationDeg)}${declinationDeg < 0 ? "W" : "E"}`;

/**
 * The station that the form describes, or what is wrong with it. `before` is the station that is being changed, null for a new one; what
 * the form does not ask for stays as it was. A place that was not retyped keeps its digits.
 */
export function checkStation(form: StationForm, scene: Scene, before: Station | null): StationChecked {
  const faults: Partial<Record<StationField, string>> = {};
  const at = placeOf(form, scene, before);
  if (typeof at === "string") faults.at = sentence(at);
  const written = yamlOf(form, typeof at === "string" ? { latDeg: 0, lonDeg: 0 } : at);
  const read = readStations(written.text, {
    path: "form",
    date: scene.date,
    open: () => ({ failure: "a form stands alone" }),
  });
  const found = read.ok ? [] : read.faults;
  for (const { line, message } of found as readonly Fault[]) {
    const field = written.fieldOfLine(line);
    faults[field] ??= sentence(message);
  }
  const ident = form.ident.trim().toUpperCase();
  if (ident !== before?.ident && !identIsFree(scene, ident))
    faults.ident ??= `${ident} is another station of this scene; give each its own ident.`;
  const station = read.ok ? read.stations[0] : undefined;
  if (station === undefined || Object.keys(faults).length > 0) return { ok: false, faults };
  if (typeof at === "string") return { ok: false, faults };
  // The text has twelve decimals of it; the place itself has them all.
  return { ok: true, station: withTheRest({ ...station, position: at }, form, before) };
}

function placeOf(form: StationForm, scene: Scene, before: Station | null): LatLon | string {
  if (before !== null && form.at === formOf(before).at) return before.position;
  if (form.at.trim() === "")
    return "where it stands is missing; write it like TXJ 246/18 or 10°18.8′S 002°03.7′E";
  const read = readAircraftPlace(form.at, { own: scene.stations, table: [] });
  return read.ok ? read.position : read.reason;
}

/** One key a line, so that a fault's line tells its field. */
function yamlOf(form: StationForm, at: LatLon) {
  const values: Readonly<Record<StationField, string>> = {
    ...form,
    ident: form.ident.trim().toUpperCase(),
    name: form.name.trim() === "" ? form.ident.trim().toUpperCase() : form.name,
    at: `{ lat: ${at.latDeg.toFixed(12)}, lon: ${at.lonDeg.toFixed(12)} }`,
  };
  const head = ["stations: 1", "list:"];
  const keys = STATION_FIELDS.map((field, index) => {
    const value = field === "at" ? values.at : scalar(values[field]);
    return `${index === 0 ? "  - " : "    "}${field}: ${value}`;
  });
  return {
    text: [...head, ...keys, ""].join("\n"),
    fieldOfLine: (line: number): StationField => STATION_FIELDS[line - head.length - 1] ?? "ident",
  };
}

/** Plain where it is a number, quoted otherwise, nothing where nothing was typed. */
function scalar(typed: string): string {
  const text = typed.trim().replace(/\s+/g, " ").replace(/^−/, "-");
  if (text === "") return "";
  return /^[-+]?\d+(\.\d+)?$/.test(text) ? text : JSON.stringify(text);
}

/** What the form does not ask for, and what was not retyped: the form shows rounded what the station has in full. */
function withTheRest(station: Station, form: StationForm, before: Station | null): Station {
  if (before === null) return station;
  const shown = formOf(before);
  const same = station.kind === before.kind;
  const { declinationDeg, declinationEstimated } = form.declination === shown.declination ? before : station;
  return {
    ...station,
    elevationFt: form.elevation === shown.elevation ? before.elevationFt : station.elevationFt,
    declinationDeg,
    declinationEstimated,
    status: before.status,
    eirpW: before.eirpW,
    vorClass: same ? before.vorClass : null,
    dmeClass: same ? before.dmeClass : null,
    dmeSite: same ? stationMoved(before, station.position).dmeSite : null,
  };
}

/** A reader's message as one speaks: a capital first, a full stop last. */
const sentence = (message: string): string => `${message.charAt(0).toUpperCase()}${message.slice(1)}.`;
