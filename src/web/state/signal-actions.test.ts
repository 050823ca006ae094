import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread } from "../../../test/spread.ts";
import { latLon, magneticDeg, stationDeg, trueDeg } from "../../earth/index.ts";
import type { Reflector, SignalConditions } from "../../panel/index.ts";
import type { Station } from "../../radio/index.ts";
import { resolveScene, type Scene } from "../../scene/index.ts";
import { act, type SceneAction } from "./actions.ts";
import { createBench } from "./bench.ts";
import { FIRST_PROPELLER, PLAIN_SIGNAL } from "./signal-actions.ts";

const station = (ident: string, kind: Station["kind"], frequencyMhz: number): Station => ({
  ident,
  name: ident,
  kind,
  frequencyMhz,
  dmeChannel: null,
  position: latLon(-10, 2),
  elevationFt: 0,
  dmeSite: null,
  declinationDeg: -9,
  declinationEstimated: false,
  vorClass: null,
  dmeClass: null,
  status: "on-air",
  eirpW: 200,
});

const OFF: Scene = {
  title: "",
  about: "",
  date: "2026-07-01",
  stations: [station("ABC", "VOR", 115.6), station("VVV", "VOT", 111), station("DDD", "DME", 113.9)],
  land: null,
  aircraft: { position: latLon(-10.3, 2), heading: magneticDeg(90), altitudeFt: 3500, tasKt: 100 },
  wind: { from: trueDeg(0), speedKt: 0 },
  receivers: [{ name: "NAV1", frequencyMhz: 115.6, course: stationDeg(70), face: "cdi", bearingErrorDeg: 0 }],
  signal: null,
  covers: [],
  ask: "",
};
const NEAR: Reflector = { ident: "ABC", position: latLon(-10, 2.05), amplitude: 0.2 };
const FAR: Reflector = { ident: "ABC", position: latLon(-10.1, 2.2), amplitude: 0.3 };
const measuring = (change: Partial<SignalConditions>): Scene => ({
  ...OFF,
  signal: { ...PLAIN_SIGNAL, ...change },
});
const BOTH = measuring({ reflectors: [NEAR, FAR] });

describe("what a hand does to the signal", () => {
  it("turns it on and off again, and changes nothing else", () => {
    const on = act(OFF, { kind: "set-signal", signal: PLAIN_SIGNAL });
    expect(on).toEqual({ ...OFF, signal: PLAIN_SIGNAL });
    expect(act(on, { kind: "set-signal", signal: null })).toEqual(OFF);
  });

  it("sets how the stations send, the noise and the propeller, each alone", () => {
    expect(act(BOTH, { kind: "set-signal-kind", signalKind: "doppler" }).signal).toEqual({
      ...BOTH.signal,
      kind: "doppler",
    });
    expect(act(BOTH, { kind: "set-noise", noiseDb: null }).signal).toEqual({ ...BOTH.signal, noiseDb: null });
    expect(act(BOTH, { kind: "set-propeller", propeller: FIRST_PROPELLER }).signal).toEqual({
      ...BOTH.signal,
      propeller: { speedRpm: 1810, blades: 2 },
    });
  });

  it("adds, changes and takes away one reflector, the others left as they are", () => {
    const near = act(measuring({}), { kind: "add-reflector", reflector: NEAR });
    const both = act(near, { kind: "add-reflector", reflector: FAR });
    expect(both.signal?.reflectors).toEqual([NEAR, FAR]);
    const stronger = { ...NEAR, amplitude: 0.5 };
    const changed = act(both, { kind: "change-reflector", index: 0, reflector: stronger });
    expect(changed.signal?.reflectors).toEqual([stronger, FAR]);
    expect(changed.signal?.reflectors[1]).toBe(both.signal?.reflectors[1]);
    expect(act(both, { kind: "remove-reflector", index: 0 }).signal?.reflectors).toEqual([FAR]);
  });

  it("keeps numbers in what a scene file holds, with as many decimals", () => {
    fc.assert(
      fc.property(spread(-1e4, 1e4), spread(-9, 9), (value, amplitude) => {
        const noisy = act(BOTH, { kind: "set-noise", noiseDb: value }).signal?.noiseDb ?? Number.NaN;
        expect(noisy).toBeGreaterThanOrEqual(0);
        expect(noisy).toBeLessThanOrEqual(80);
        expect(Object.is(noisy, -0)).toBe(false);
        if (value >= 0 && value <= 80) expect(Math.abs(noisy - value)).toBeLessThanOrEqual(0.0501);
        const propeller = { speedRpm: value, blades: value };
        const { speedRpm = 0, blades = 0 } =
          act(BOTH, { kind: "set-propeller", propeller }).signal?.propeller ?? {};
        expect(speedRpm).toBeGreaterThanOrEqual(300);
        expect(speedRpm).toBeLessThanOrEqual(3000);
        expect([2, 3, 4, 5, 6]).toContain(blades);
        const added = act(measuring({}), { kind: "add-reflector", reflector: { ...NEAR, amplitude } });
        const kept = added.signal?.reflectors[0]?.amplitude ?? Number.NaN;
        expect(kept).toBeGreaterThanOrEqual(0);
        expect(kept).toBeLessThanOrEqual(0.9);
        if (amplitude >= 0 && amplitude <= 0.9)
          expect(Math.abs(kept - amplitude)).toBeLessThanOrEqual(0.0000501);
      }),
    );
  });

  it("leaves the scene as it was where it has no place for the change", () => {
    const full = measuring({ reflectors: Array.from({ length: 8 }, () => NEAR) });
    const may = (scene: Scene, action: SceneAction) => expect(act(scene, action)).toBe(scene);
    may(full, { kind: "add-reflector", reflector: FAR });
    may(BOTH, { kind: "add-reflector", reflector: { ...NEAR, ident: "XYZ" } });
    may(BOTH, { kind: "add-reflector", reflector: { ...NEAR, ident: "VVV" } });
    may(BOTH, { kind: "change-reflector", index: 1, reflector: { ...NEAR, ident: "DDD" } });
    may(BOTH, { kind: "change-reflector", index: 2, reflector: { ...NEAR, amplitude: 0.7 } });
    may(BOTH, { kind: "remove-reflector", index: 2 });
    may(BOTH, { kind: "set-noise", noiseDb: 25.04 });
    may(BOTH, { kind: "set-signal", signal: { ...PLAIN_SIGNAL, reflectors: [{ ...NEAR }, { ...FAR }] } });
    may(OFF, { kind: "set-signal", signal: null });
    may(OFF, { kind: "set-noise", noiseDb: 10 });
    may(OFF, { kind: "add-reflector", reflector: NEAR });
    may(OFF, { kind: "set-signal", signal: { ...PLAIN_SIGNAL, reflectors: [{ ...NEAR, ident: "VVV" }] } });
  });

  it("bends what the receiver measures, and the needle with it", () => {
    const quiet = act(OFF, { kind: "set-signal", signal: { ...PLAIN_SIGNAL, noiseDb: null } });
    const radialOf = (scene: Scene) => resolveScene(scene).receivers[0]?.radial ?? Number.NaN;
    expect(Math.abs(radialOf(quiet) - radialOf(OFF))).toBeLessThan(0.02);
    const bent = act(quiet, { kind: "add-reflector", reflector: NEAR });
    expect(Math.abs(radialOf(bent) - radialOf(OFF))).toBeGreaterThan(0.5);
    // The Doppler station's wide aperture makes little of the same echo: Annex 10 Attachment C, 2.2 (from memory).
    const doppler = act(bent, { kind: "set-signal-kind", signalKind: "doppler" });
    expect(Math.abs(radialOf(doppler) - radialOf(OFF))).toBeLessThan(0.5);
  });
});

describe("taking it back", () => {
  it("gives each scene again, backward and forward, and makes one entry of one gesture", () => {
    const bench = createBench({ name: "scene", origin: "file" }, OFF);
    const seen = [bench.scene.value];
    const steps: readonly SceneAction[] = [
      { kind: "set-signal", signal: PLAIN_SIGNAL },
      { kind: "set-noise", noiseDb: 40 },
      { kind: "add-reflector", reflector: NEAR },
      { kind: "set-propeller", propeller: FIRST_PROPELLER },
      { kind: "remove-reflector", index: 0 },
      { kind: "set-signal", signal: null },
    ];
    for (const step of steps) {
      bench.act(step);
      seen.push(bench.scene.value);
    }
    for (const before of seen.slice(0, -1).reverse()) {
      bench.undo();
      expect(bench.scene.value).toBe(before);
    }
    for (const after of seen.slice(1)) {
      bench.redo();
      expect(bench.scene.value).toBe(after);
    }
    for (const noiseDb of [30, 31, 32]) bench.act({ kind: "set-noise", noiseDb }, "a turn of the wheel");
    expect(bench.scene.value.signal).toBeNull();
    bench.undo();
    for (const noiseDb of [30, 31, 32]) bench.act({ kind: "set-noise", noiseDb }, "a turn of the wheel");
    bench.undo();
    expect(bench.scene.value.signal?.noiseDb).toBe(40);
  });
});
