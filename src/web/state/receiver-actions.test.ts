import { describe, expect, it } from "vitest";
import { magneticDeg, stationDeg, trueDeg } from "../../earth/index.ts";
import type { Station } from "../../radio/index.ts";
import { resolveScene, type Scene, sceneJsonSchema } from "../../scene/index.ts";
import { act } from "./actions.ts";
import { LARGEST_ERROR_DEG, MOST_RECEIVERS } from "./receiver-actions.ts";

const station = (ident: string, frequencyMhz: number, kind: Station["kind"] = "VOR"): Station => ({
  ident,
  name: ident,
  kind,
  frequencyMhz,
  dmeChannel: null,
  position: { latDeg: -10, lonDeg: 2 },
  elevationFt: 0,
  dmeSite: null,
  declinationDeg: 0,
  declinationEstimated: false,
  vorClass: null,
  dmeClass: null,
  status: "on-air",
  eirpW: 100,
});
const receiver = (name: string) => ({
  name,
  frequencyMhz: 115.6,
  course: stationDeg(70),
  face: "cdi" as const,
  bearingErrorDeg: 0,
});
const SCENE: Scene = {
  title: "Panel",
  about: "",
  date: "2026-07-01",
  stations: [station("TXJ", 115.6), station("DIS", 112.7, "DME"), station("HJL", 113.9)],
  land: null,
  aircraft: {
    position: { latDeg: -10.3, lonDeg: 2 },
    heading: magneticDeg(90),
    altitudeFt: 3500,
    tasKt: 100,
  },
  wind: { from: trueDeg(0), speedKt: 0 },
  receivers: [receiver("NAV1"), receiver("NAV2")],
  signal: null,
  covers: ["NAV1.needle", "NAV2", "NAV2.flag", "heading"],
  ask: "",
};
const names = (scene: Scene) => scene.receivers.map(({ name }) => name);

describe("receivers", () => {
  it("get another face, and the other receiver keeps its own", () => {
    const after = act(SCENE, { kind: "set-face", receiver: "NAV2", face: "rmi" });
    expect(after.receivers.map(({ face }) => face)).toEqual(["cdi", "rmi"]);
    expect(after.receivers[0]).toBe(SCENE.receivers[0]);
  });

  it("get an error in tenths, within what a file may hold, and the engine measures with it", () => {
    const after = act(SCENE, { kind: "set-bearing-error", receiver: "NAV1", errorDeg: 3.96 });
    expect(after.receivers[0]!.bearingErrorDeg).toBe(4);
    const [off, right] = resolveScene(after).receivers;
    expect(off!.radial! - right!.radial!).toBeCloseTo(4, 9);
    const far = act(SCENE, { kind: "set-bearing-error", receiver: "NAV1", errorDeg: -99 });
    expect(far.receivers[0]!.bearingErrorDeg).toBe(-30);
    expect(
      Object.is(
        act(after, { kind: "set-bearing-error", receiver: "NAV1", errorDeg: -0.01 }).receivers[0]!
          .bearingErrorDeg,
        0,
      ),
    ).toBe(true);
  });

  it("come one by one to four, tuned to what nobody hears yet and can be flown by", () => {
    const three = act(SCENE, { kind: "add-receiver" });
    expect(three.receivers[2]).toEqual({
      ...receiver("NAV3"),
      frequencyMhz: 113.9,
      course: 0,
    });
    const four = act(three, { kind: "add-receiver" });
    expect(four.receivers[3]).toMatchObject({ name: "NAV4", frequencyMhz: 113.9 });
    expect(four.receivers.length).toBe(MOST_RECEIVERS);
    expect(act(four, { kind: "add-receiver" })).toBe(four);
    resolveScene(four);
  });

  it("take the first free number, and its place", () => {
    const left = act(SCENE, { kind: "remove-receiver", receiver: "NAV1" });
    expect(names(act(left, { kind: "add-receiver" }))).toEqual(["NAV1", "NAV2"]);
    const odd = { ...SCENE, receivers: [receiver("left"), receiver("NAV2")] };
    expect(names(act(odd, { kind: "add-receiver" }))).toEqual(["left", "NAV1", "NAV2"]);
  });

  it("go with their covers, but the last one stays", () => {
    const one = act(SCENE, { kind: "remove-receiver", receiver: "NAV2" });
    expect(names(one)).toEqual(["NAV1"]);
    expect(one.covers).toEqual(["NAV1.needle", "heading"]);
    expect(act(one, { kind: "remove-receiver", receiver: "NAV1" })).toBe(one);
    expect(SCENE.covers.length).toBe(4);
  });

  it("are kept within what a scene file holds", () => {
    const shape = JSON.stringify(sceneJsonSchema());
    expect(shape).toContain(`"maxItems":${MOST_RECEIVERS}`);
    expect(shape).toContain(`"minimum":-${LARGEST_ERROR_DEG},"maximum":${LARGEST_ERROR_DEG}`);
  });

  it("are left alone by what changes nothing or names nobody", () => {
    expect(act(SCENE, { kind: "set-face", receiver: "NAV1", face: "cdi" })).toBe(SCENE);
    expect(act(SCENE, { kind: "set-face", receiver: "NAV9", face: "hsi" })).toBe(SCENE);
    expect(act(SCENE, { kind: "set-bearing-error", receiver: "NAV1", errorDeg: 0.04 })).toBe(SCENE);
    expect(act(SCENE, { kind: "remove-receiver", receiver: "NAV9" })).toBe(SCENE);
  });
});
