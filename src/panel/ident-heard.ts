/** What the pilot hears on the tuned channel: the only proof that it is the right station, and that it is fit for use. */

import { givesBearing, type Station } from "../radio/index.ts";
import type { IdentHeard, Signal } from "./reading.ts";

/** FAA AIM 1-1-3 c (T-E-S-T or no ident: do not use) and 1-1-7 (a lone ident about every 30 s: the DME alone works); 1-1-4 for a test signal. */
export function identHeard(signal: Signal, station: Station | null, dmeAnswers: boolean): IdentHeard {
  if (signal.kind === "two-at-once")
    return { kind: "mixed", texts: [signal.stations[0].ident, signal.stations[1].ident] };
  if (station === null) return { kind: "none" };
  const bearingHeard = signal.kind !== "none" && givesBearing(station);
  if (bearingHeard && station.status === "test") return { kind: "test" };
  if (bearingHeard && station.kind === "VOT") return { kind: "test-signal" };
  if (bearingHeard && station.status === "on-air") return { kind: "ident", text: station.ident };
  return dmeAnswers ? { kind: "dme-only", text: station.ident } : { kind: "none" };
}
