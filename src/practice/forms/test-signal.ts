/** A test signal (VOT) and an aircraft on the apron beside it. */

import { direct, trueDeg } from "../../earth/index.ts";
import { type Station, VOR_CHANNELS_MHZ } from "../../radio/index.ts";
import type { Chance } from "../chance.ts";
import { type Stand, stand } from "../stand.ts";
import type { World } from "../world.ts";

/** On the apron. */
const APART_NM = 0.3;

/** Where a world has no test signal of its own, one stands beside a beacon, on a channel no one uses. */
export function drawTestSignal(
  chance: Chance,
  world: World,
  courseDeg: number,
): { readonly at: Stand; readonly stations: readonly Station[] } {
  const own = world.stations.filter(({ kind, status }) => kind === "VOT" && status === "on-air");
  const vot = own.length > 0 ? chance.pick(own) : madeTestSignal(chance, world);
  const at = stand(world, {
    station: vot,
    radialDeg: chance.integer(1, 360),
    distanceNm: APART_NM,
    altitudeFt: vot.elevationFt,
    courseDeg,
    headingDeg: chance.integer(1, 360),
    tasKt: 0,
  });
  return { at, stations: own.length > 0 ? world.stations : [...world.stations, vot] };
}

function madeTestSignal(chance: Chance, world: World): Station {
  const beacon = chance.pick(world.beacons);
  const used = new Set(world.stations.map(({ frequencyMhz }) => frequencyMhz.toFixed(2)));
  const frequencyMhz = VOR_CHANNELS_MHZ.find((mhz) => !used.has(mhz.toFixed(2))) ?? 108;
  return {
    ...beacon,
    ident: "VOT",
    name: `${beacon.name} test`,
    kind: "VOT",
    frequencyMhz,
    dmeChannel: null,
    dmeSite: null,
    dmeClass: null,
    vorClass: null,
    position: direct(beacon.position, trueDeg(90), 1),
  };
}
