/** A scene after reading: one situation as its author set it, every reference followed. Plain data. */

import type { LatLon, MagneticDeg, Wind } from "../earth/index.ts";
import type { ReceiverSettings, SignalConditions } from "../panel/index.ts";
import type { Land, Station } from "../radio/index.ts";

export interface Aircraft {
  readonly position: LatLon;
  readonly heading: MagneticDeg;
  /** Feet above mean sea level. */
  readonly altitudeFt: number;
  /** True airspeed, kt. */
  readonly tasKt: number;
}

export interface Scene {
  readonly title: string;
  /** What the scene shows, for the person who opens it; empty when not given. */
  readonly about: string;
  /** ISO date, YYYY-MM-DD. */
  readonly date: string;
  readonly stations: readonly Station[];
  readonly land: Land | null;
  readonly aircraft: Aircraft;
  /** Calm is speed 0. */
  readonly wind: Wind;
  /** One to four. */
  readonly receivers: readonly ReceiverSettings[];
  /** What the scene says of the signal itself; null: the computed radial is used. */
  readonly signal: SignalConditions | null;
  /** What is hidden: a view ("chart", "panel", "signal", "reasons"), "aircraft", "heading", or "NAV1.needle" and the like. */
  readonly covers: readonly string[];
  readonly ask: string;
}
