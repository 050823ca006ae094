/** What other people's tools do to a recording leaves its radial: loudness, rate, steps, and codecs, as ffmpeg makes them. */

import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findFfmpeg } from "../scripts/ffmpeg.mjs";
import { stationDeg, turnBetween } from "../src/earth/index.ts";
import { needleworkHere } from "./cli.ts";

const ffmpeg = findFfmpeg();
if (ffmpeg === null)
  console.log("ffmpeg is not on this machine, so no recording is changed by it; install it and run again");

const RADIALS_DEG = [3.7, 128.4, 246.3];
let folder = "";
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "needlework-"));
  for (const radialDeg of RADIALS_DEG)
    for (const [name, options] of [
      ["sound", []],
      ["iq", ["--iq", "--offset", "350"]],
    ] as const)
      await needleworkHere([
        ...["signal", "demo/scenes/24-three-faces.yaml", "-o", join(folder, `${name}-${radialDeg}.wav`)],
        ...["--radial", String(radialDeg), ...options],
      ]);
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Through one file after the other, each made with these arguments; the last is a WAV file again. */
function changed(file: string, steps: readonly (readonly [ending: string, ...args: string[]])[]): string {
  return steps.reduce((from, [ending, ...args], index) => {
    const to = `${file}.${index}.${ending}`;
    execFileSync(ffmpeg ?? "", ["-v", "error", "-y", "-i", from, ...args, to]);
    return to;
  }, file);
}

async function radialOf(file: string, ...options: string[]) {
  const { code, stdout, stderr } = await needleworkHere(["signal", "--decode", file, "--json", ...options]);
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  return JSON.parse(stdout);
}

describe.skipIf(ffmpeg === null)("after ffmpeg has changed it", () => {
  const quieter = ["-af", "volume=-12dB", "-ar", "44100", "-c:a", "pcm_s16le"] as const;
  // A codec that hears like an ear moves the fine structure of the sub-carrier. Found: MP3 under 0.01, Vorbis under 0.1 degree.
  test.each<[string, number, [string, ...string[]][]]>([
    ["12 dB quieter, at 44.1 kHz, 16 bits, FLAC", 0.05, [["wav", ...quieter], ["flac"], ["wav"]]],
    ["24 bits in the extensible form", 0.05, [["wav", "-c:a", "pcm_s24le"]]],
    ["floats at 96 kHz", 0.05, [["wav", "-ar", "96000", "-c:a", "pcm_f32le"]]],
    ["A-law", 0.3, [["wav", "-c:a", "pcm_alaw"]]],
    ["two channels alike", 0.05, [["wav", "-ac", "2"]]],
    ["MP3 at 128 kbit/s", 0.05, [["mp3", "-b:a", "128k"], ["wav"]]],
    ["Ogg Vorbis of quality 5", 0.2, [["ogg", "-c:a", "libvorbis", "-q:a", "5"], ["wav"]]],
  ])("%s: the radial is within %f degree, the ident is read", async (_, withinDeg, steps) => {
    for (const radialDeg of RADIALS_DEG) {
      const found = await radialOf(changed(join(folder, `sound-${radialDeg}.wav`), steps));
      expect(Math.abs(turnBetween(stationDeg(radialDeg), stationDeg(found.radialDeg)))).toBeLessThan(
        withinDeg,
      );
      expect(found).toMatchObject({ flagCause: null, ident: { kind: "ident", text: "LJY" } });
    }
  });

  test("complex baseband quieter, at 44.1 kHz, through FLAC", async () => {
    for (const radialDeg of RADIALS_DEG) {
      const file = changed(join(folder, `iq-${radialDeg}.wav`), [["wav", ...quieter], ["flac"], ["wav"]]);
      const found = await radialOf(file, "--iq");
      expect(Math.abs(turnBetween(stationDeg(radialDeg), stationDeg(found.radialDeg)))).toBeLessThan(0.05);
    }
  });
});
