/** Which course to select so that the needle is corrected toward: the one the aircraft will fly. IFH ch. 9, tracking. */

import { reciprocal, type StationDeg } from "../earth/index.ts";

/** Inbound along a radial the course is its reciprocal; outbound it is the radial itself. */
export const courseForRadial = (radial: StationDeg, sense: "inbound" | "outbound"): StationDeg =>
  sense === "inbound" ? reciprocal(radial) : radial;
