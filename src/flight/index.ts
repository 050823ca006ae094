export { type Air, CLIMB_FT_PER_MIN, type Flight, flyOn, levelFlight } from "./fly-on.ts";
