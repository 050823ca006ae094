/** What a scene's `signal:` comes to where little of it is written: kind, noise, and whose signal a reflector throws back. */

import { describe, expect, it } from "vitest";
import { openFrom } from "../../test/scene-files.ts";
import { TYPICAL_NOISE_DB } from "../radio/index.ts";
import { faultLine } from "./fault.ts";
import { readScene } from "./scene-file.ts";

/** A VOR at 10 N, and nearer to 11 N a DME, a TACAN and a test station, which have no radials; a farther VOR at 14 N. */
const STATIONS = `stations:
  - { ident: FAR, kind: VOR, frequency: 113.40, at: [14, 20], elevation: 500, declination: 0 }
  - { ident: VVV, kind: VOR, frequency: 112.30, at: [10, 20], elevation: 500, declination: 0 }
  - { ident: DDD, kind: DME, frequency: 112.50, at: [11, 20], elevation: 500 }
  - { ident: TTT, kind: VOT, frequency: 111.00, at: [11, 20.01], elevation: 500, declination: 0 }
  - { ident: NNN, kind: VOR, frequency: 113.70, at: [16, 20], elevation: 500, declination: 0 }
`;
const sceneText = (signal: string, stations = STATIONS): string => `scene: 1
date: 2026-06-01
${stations}aircraft: { at: [10.5, 20], altitude: 4000 }
receivers: [{ tune: 112.30 }]
signal: ${signal}
`;
const read = (signal: string, stations?: string) =>
  readScene(sceneText(signal, stations), { path: "s.yaml", open: openFrom({}) });

function signalOf(text: string) {
  const scene = read(text);
  if (!scene.ok) throw new Error(scene.faults.map(faultLine).join("\n"));
  return scene.scene.signal;
}
function faultsOf(text: string, stations?: string): string[] {
  const scene = read(text, stations);
  return scene.ok ? [] : scene.faults.map(faultLine);
}

describe("a signal of which little is written", () => {
  it("is of a conventional station, with the noise that is usual", () => {
    expect(signalOf("{ propeller: { speed: 2400, blades: 3 } }")).toEqual({
      kind: "conventional",
      noiseDb: TYPICAL_NOISE_DB,
      reflectors: [],
      propeller: { speedRpm: 2400, blades: 3 },
    });
    expect(signalOf("{ kind: doppler, noise: None }")).toMatchObject({ kind: "doppler", noiseDb: null });
  });

  it("has no reflectors under an empty key", () => {
    expect(signalOf("\n  noise: none\n  reflectors:\n")).toMatchObject({ noiseDb: null, reflectors: [] });
  });
});

describe("a reflector", () => {
  it("without a station throws back the nearest that has radials, and no DME or test station nearer by", () => {
    expect(signalOf("{ reflectors: [{ at: [11, 20], amplitude: 0.1 }] }")?.reflectors).toEqual([
      { ident: "VVV", position: { latDeg: 11, lonDeg: 20 }, amplitude: 0.1 },
    ]);
    expect(signalOf("{ reflectors: [{ at: [15.5, 20], amplitude: 0.1 }] }")?.reflectors[0]?.ident).toBe(
      "NNN",
    );
  });

  it("names its station in small letters as well", () => {
    expect(
      signalOf("{ reflectors: [{ station: vvv, at: [11, 20], amplitude: 0.1 }] }")?.reflectors[0]?.ident,
    ).toBe("VVV");
  });

  it.each(["DDD", "TTT"])("of %s, which has no radials, is refused", (ident) => {
    const kind = ident === "DDD" ? "DME" : "VOT";
    expect(faultsOf(`{ reflectors: [{ station: ${ident}, at: [11, 20], amplitude: 0.1 }] }`)).toEqual([
      expect.stringContaining(
        `reflector station ${ident} is a ${kind} and has no radials that an echo could bend; name a VOR`,
      ),
    ]);
  });

  it("is not blamed for a station that could not be read itself: that has its own fault, and the only one", () => {
    const broken = "stations:\n  - { ident: VVV, kind: VOR, frequency: 999, at: [10, 20], elevation: 500 }\n";
    for (const reflector of [
      "{ at: [11, 20], amplitude: 0.1 }",
      "{ station: VVV, at: [11, 20], amplitude: 0.1 }",
    ]) {
      const faults = faultsOf(`{ reflectors: [${reflector}] }`, broken);
      expect(faults.join("\n")).not.toMatch(/reflector/);
      expect(faults.join("\n")).toMatch(/999/);
    }
    // Nor while a file of stations could not be opened at all.
    for (const reflector of [
      "{ at: [11, 20], amplitude: 0.1 }",
      "{ station: XXX, at: [11, 20], amplitude: 0.1 }",
    ])
      expect(faultsOf(`{ reflectors: [${reflector}] }`, "stations: gone.yaml\n").join("\n")).not.toMatch(
        /reflector/,
      );
    const dmeOnly =
      "stations:\n  - { ident: DDD, kind: DME, frequency: 112.30, at: [10, 20], elevation: 500 }\n";
    expect(faultsOf("{ reflectors: [{ at: [11, 20], amplitude: 0.1 }] }", dmeOnly)).toEqual([
      expect.stringMatching(/reflector has no station, and the scene has none with radials to throw back/),
    ]);
  });
});
