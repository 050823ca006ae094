/** The world's stations with one of them out of order. */

import type { Station, StationStatus } from "../../radio/index.ts";
import type { World } from "../world.ts";

/** The stations in the world's order, one with another status. */
export const withStatus = (world: World, ident: string, status: StationStatus): readonly Station[] =>
  world.stations.map((station) => (station.ident === ident ? { ...station, status } : station));
