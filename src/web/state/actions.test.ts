import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { magneticDeg, stationDeg } from "../../earth/index.ts";
import type { Scene } from "../../scene/index.ts";
import { act, HIGHEST_ALTITUDE_FT, LOWEST_ALTITUDE_FT, type SceneAction } from "./actions.ts";

const receiver = (name: string, courseDeg: number) => ({
  name,
  frequencyMhz: 115.6,
  course: stationDeg(courseDeg),
  face: "cdi" as const,
  bearingErrorDeg: 0,
});

const SCENE: Scene = {
  title: "Which way to the course?",
  about: "",
  date: "2026-07-01",
  stations: [],
  land: null,
  aircraft: {
    position: { latDeg: -10.3, lonDeg: 2.06 },
    heading: magneticDeg(90),
    altitudeFt: 3500,
    tasKt: 100,
  },
  wind: { from: magneticDeg(0) as never, speedKt: 0 },
  receivers: [receiver("NAV1", 70), receiver("NAV2", 94)],
  signal: null,
  covers: ["NAV1.needle"],
  ask: "",
};

describe("act", () => {
  it("turns one receiver's course and leaves the other alone", () => {
    const after = act(SCENE, { kind: "turn-course", receiver: "NAV1", byDeg: -75 });
    expect(after.receivers.map((each) => each.course)).toEqual([355, 94]);
    expect(after.receivers[1]).toBe(SCENE.receivers[1]);
  });

  it("sets courses and headings in whole degrees, through north", () => {
    const course = act(SCENE, { kind: "set-course", receiver: "NAV2", course: stationDeg(359.7) });
    expect(course.receivers[1]?.course).toBe(0);
    const heading = act(SCENE, { kind: "turn-heading", byDeg: -100 });
    expect(heading.aircraft.heading).toBe(350);
  });

  it("keeps the altitude in what the bench offers", () => {
    const at = (altitudeFt: number) => act(SCENE, { kind: "set-altitude", altitudeFt }).aircraft.altitudeFt;
    expect(at(-500)).toBe(LOWEST_ALTITUDE_FT);
    expect(at(1e6)).toBe(HIGHEST_ALTITUDE_FT);
    expect(at(4500.4)).toBe(4500);
  });

  it("moves the aircraft and changes nothing else", () => {
    const to = { latDeg: -10, lonDeg: 2 };
    const after = act(SCENE, { kind: "move-aircraft", to });
    expect(after).toEqual({ ...SCENE, aircraft: { ...SCENE.aircraft, position: to } });
  });

  it("lifts every cover at once", () => {
    expect(act(SCENE, { kind: "lift-covers" }).covers).toEqual([]);
  });

  it("flies the aircraft on and changes nothing else", () => {
    const aircraft = { ...SCENE.aircraft, altitudeFt: 3507.25 };
    expect(act(SCENE, { kind: "fly", aircraft })).toEqual({ ...SCENE, aircraft });
  });

  it("brings back a moment of a flight, but neither covers nor receivers that have gone", () => {
    const then = act(SCENE, { kind: "set-course", receiver: "NAV1", course: stationDeg(200) });
    const now = { ...SCENE, covers: [], receivers: [...SCENE.receivers.slice(0, 1), receiver("NAV3", 12)] };
    const { aircraft, wind, receivers } = { ...then, aircraft: { ...then.aircraft, altitudeFt: 4000 } };
    const back = act(now, { kind: "replay", aircraft, wind, receivers });
    expect(back.covers).toEqual([]);
    expect(back.aircraft).toBe(aircraft);
    expect(back.receivers.map(({ name, course }) => [name, course])).toEqual([
      ["NAV1", 200],
      ["NAV3", 12],
    ]);
  });

  it("refuses a receiver that is not there", () => {
    expect(() => act(SCENE, { kind: "turn-course", receiver: "NAV9", byDeg: 1 })).toThrow(/NAV9/);
  });

  it("gives the same object when nothing changes, and never alters the one it was given", () => {
    const unchanged: SceneAction[] = [
      { kind: "set-heading", heading: magneticDeg(90) },
      { kind: "turn-course", receiver: "NAV1", byDeg: 360 },
      { kind: "tune-receiver", receiver: "NAV2", frequencyMhz: 115.6 },
      { kind: "move-aircraft", to: { latDeg: -10.3, lonDeg: 2.06 } },
      { kind: "set-altitude", altitudeFt: 3500 },
      { kind: "fly", aircraft: SCENE.aircraft },
      { kind: "replay", aircraft: SCENE.aircraft, wind: SCENE.wind, receivers: [...SCENE.receivers] },
    ];
    for (const action of unchanged) expect(act(SCENE, action)).toBe(SCENE);
    const before = structuredClone(SCENE);
    act(SCENE, { kind: "turn-heading", byDeg: 20 });
    expect(SCENE).toEqual(before);
  });

  it("turning a course there and back again gives the course", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1000, max: 1000 }), (byDeg) => {
        const there = act(SCENE, { kind: "turn-course", receiver: "NAV1", byDeg });
        const back = act(there, { kind: "turn-course", receiver: "NAV1", byDeg: -byDeg });
        expect(back.receivers).toEqual(SCENE.receivers);
      }),
    );
  });
});
