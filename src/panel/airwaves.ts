/**
 * The stations within reach of a scene, sorted by channel, with each one's station frame worked out once. Build it once a scene;
 * every panel state afterwards is cheap.
 */

import { type LatLon, type StationFrame, stationFrame } from "../earth/index.ts";
import { type Peak, type Station, type TerrainAround, terrainAround } from "../radio/index.ts";

/** One antenna, with all worked out that does not depend on the aircraft. */
export interface Site {
  readonly frame: StationFrame;
  readonly elevationFt: number;
  readonly terrain: TerrainAround;
}

export interface OnAir {
  readonly station: Station;
  /** Where the bearing part stands. */
  readonly site: Site;
  /** Where the distance part stands; the same unless it has a site of its own. */
  readonly dmeSite: Site;
}

export interface Airwaves {
  /** Keyed by the tuned frequency in kHz. */
  readonly byChannelKhz: ReadonlyMap<number, readonly OnAir[]>;
}

/** A channel as a whole number of kHz, so that 115.6 and 115.60000001 are one. */
export const channelKhz = (frequencyMhz: number): number => Math.round(frequencyMhz * 1000);

/**
 * The stations on the air among these hills. Throws RangeError for a station nearer a pole than its frame reaches; the readers
 * of station files refuse such a station first.
 */
export function airwaves(stations: readonly Station[], peaks: readonly Peak[] = []): Airwaves {
  const siteAt = (position: LatLon, elevationFt: number): Site => ({
    frame: stationFrame(position),
    elevationFt,
    terrain: terrainAround({ position, altitudeFt: elevationFt }, peaks),
  });
  const byChannelKhz = new Map<number, OnAir[]>();
  for (const station of stations) {
    const site = siteAt(station.position, station.elevationFt);
    const dmeSite =
      station.dmeSite === null ? site : siteAt(station.dmeSite.position, station.dmeSite.elevationFt);
    const channel = channelKhz(station.frequencyMhz);
    const sharing = byChannelKhz.get(channel);
    if (sharing) sharing.push({ station, site, dmeSite });
    else byChannelKhz.set(channel, [{ station, site, dmeSite }]);
  }
  return { byChannelKhz };
}
