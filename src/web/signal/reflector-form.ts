/** A reflector as it is typed and shown: its place from the station whose signal it throws back, in the words that every place has here. */

import { inverse, latLonText, stationDeg } from "../../earth/index.ts";
import type { Reflector } from "../../panel/index.ts";
import { radialToward, type Station, spokenPoint } from "../../radio/index.ts";
import { REFLECTOR_AMPLITUDE, readAircraftPlace, type Scene } from "../../scene/index.ts";
import { readWithin } from "../input/read-number.ts";

export interface ReflectorForm {
  readonly at: string;
  /** Ident of the station. */
  readonly station: string;
  readonly amplitude: string;
}

export type ReflectorChecked =
  | { readonly ok: true; readonly reflector: Reflector }
  /** A sentence for each field at fault: upper-case start, with a full stop. */
  | { readonly ok: false; readonly faults: Readonly<Partial<Record<keyof ReflectorForm, string>>> };

/** A form to begin with. */
export const blankReflector = (station: string): ReflectorForm => ({ at: "", station, amplitude: "0.1" });

export const formOfReflector = (reflector: Reflector, stations: readonly Station[]): ReflectorForm => ({
  at: reflectorPlace(reflector, stations),
  station: reflector.ident,
  amplitude: String(reflector.amplitude),
});

/** "TXJ 300/2", to the whole degree and the tenth of a mile; latitude and longitude where its station is not among these. */
export function reflectorPlace(
  { ident, position }: Pick<Reflector, "ident" | "position">,
  stations: readonly Station[],
): string {
  const station = stations.find((each) => each.ident === ident);
  if (station === undefined) return latLonText(position, 1);
  const line = inverse(station.position, position);
  return line.kind === "same-place"
    ? spokenPoint({ ident, radial: stationDeg(0), distanceNm: 0 })
    : spokenPoint({ ident, radial: radialToward(station, line.azimuth), distanceNm: line.distanceNm });
}

/** The station among these that the text counts from; null where it names none of them. */
export function stationNamedIn(text: string, idents: readonly string[]): string | null {
  const first = /^\s*([A-Z0-9]+)\s/i.exec(text)?.[1]?.toUpperCase();
  return idents.find((ident) => ident === first) ?? null;
}

/**
 * The reflector that the form describes, or what is wrong with it. `before` is the one that is being changed, null for a new one: a place that
 * was not retyped keeps its digits.
 */
export function checkReflector(
  form: ReflectorForm,
  scene: Scene,
  before: Reflector | null,
): ReflectorChecked {
  const position = placeOf(form.at, scene, before);
  const amplitude = readWithin(form.amplitude.trim(), REFLECTOR_AMPLITUDE);
  if (typeof position !== "string" && typeof amplitude !== "string")
    return { ok: true, reflector: { ident: form.station, position, amplitude } };
  return {
    ok: false,
    faults: {
      ...(typeof position === "string" && { at: sentence(position) }),
      ...(typeof amplitude === "string" && { amplitude: sentence(amplitude) }),
    },
  };
}

function placeOf(text: string, scene: Scene, before: Reflector | null) {
  if (before !== null && text === reflectorPlace(before, scene.stations)) return before.position;
  if (text.trim() === "")
    return "where it stands is missing; write a station's radial and miles such as TXJ 300/2, or latitude and longitude";
  const read = readAircraftPlace(text, { own: scene.stations, table: [] });
  return read.ok ? read.position : read.reason;
}

/** A reader's message as one speaks: a capital first, and a full stop last unless it asks. */
const sentence = (message: string): string =>
  `${message.charAt(0).toUpperCase()}${message.slice(1)}${message.endsWith("?") ? "" : "."}`;
