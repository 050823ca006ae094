/** A calm scene in the isles to build on: the stations and the land, one aircraft in their midst, and nothing tuned yet. */

import { latLon, magneticDeg, stationDeg, trueDeg } from "../../earth/index.ts";
import type { ReceiverSettings } from "../../panel/index.ts";
import type { Scene } from "../../scene/index.ts";

/** Lowest channel of the band; in the isles nobody sends there. */
const NOBODY_MHZ = 108;

const receiver = (name: string): ReceiverSettings => ({
  name,
  frequencyMhz: NOBODY_MHZ,
  course: stationDeg(0),
  face: "cdi",
  bearingErrorDeg: 0,
});

/** `world` gives the stations, the land and the day. */
export const emptyScene = ({ stations, land, date }: Pick<Scene, "stations" | "land" | "date">): Scene => ({
  title: "A scene of my own",
  about: "Nothing is tuned yet: pick a station on the panel, and drag the aircraft to where it should be.",
  date,
  stations,
  land,
  aircraft: { position: latLon(-10.42, 1.8), heading: magneticDeg(0), altitudeFt: 3500, tasKt: 100 },
  wind: { from: trueDeg(0), speedKt: 0 },
  receivers: [receiver("NAV1"), receiver("NAV2")],
  signal: null,
  covers: [],
  ask: "",
});
