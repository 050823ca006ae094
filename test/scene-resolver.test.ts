/** A resolver hands out the very readings it gave before for receivers that nothing has been done to, and never a stale one. */

import { describe, expect, it } from "vitest";
import { magneticDeg, stationDeg, trueDeg } from "../src/earth/index.ts";
import { resolver, resolveScene, type Scene } from "../src/scene/index.ts";
import { onRadial, situationOf, TXJ } from "./isles.ts";

const { scene: one } = situationOf({ at: onRadial(TXJ, 236, 18), windKt: 20 });
const [nav1] = one.receivers;
if (nav1 === undefined) throw new Error("the setup has one receiver");
const scene: Scene = { ...one, receivers: [nav1, { ...nav1, name: "NAV2", frequencyMhz: 113.9 }] };
const { aircraft, receivers } = scene;

describe("a resolver", () => {
  it("keeps the reading of NAV2 while the course of NAV1 is turned", () => {
    const resolve = resolver(scene.stations, scene.land);
    const [before1, before2] = resolve(scene).receivers;
    const turned = { ...scene, receivers: [{ ...nav1, course: stationDeg(90) }, ...receivers.slice(1)] };
    const [after1, after2] = resolve(turned).receivers;
    expect(after2).toBe(before2);
    expect(after1).not.toBe(before1);
    expect(after1?.settings.course).toBe(90);
  });

  it.each<[string, Scene]>([
    ["the aircraft moves", { ...scene, aircraft: { ...aircraft, position: onRadial(TXJ, 100, 9) } }],
    ["it turns", { ...scene, aircraft: { ...aircraft, heading: magneticDeg(200) } }],
    ["it climbs", { ...scene, aircraft: { ...aircraft, altitudeFt: 9000 } }],
    ["the wind shifts", { ...scene, wind: { from: trueDeg(300), speedKt: 35 } }],
    ["a year goes by", { ...scene, date: "2027-07-01" }],
    ["the stations are others", { ...scene, stations: scene.stations.slice(1) }],
  ])("reads all anew when %s", (_, changed) => {
    const resolve = resolver(scene.stations, scene.land);
    const before = resolve(scene);
    const after = resolve(changed);
    expect(after).toEqual(resolveScene(changed));
    expect(after.receivers.some((reading) => before.receivers.includes(reading))).toBe(false);
    expect(resolve(scene)).toEqual(before);
  });
});
