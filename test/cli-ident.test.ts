import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { needlework } from "./cli.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "needlework-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Seconds of a WAV file, by its own header: data bytes over bytes a second. */
function wavSeconds(bytes: Buffer): number {
  expect(bytes.toString("latin1", 0, 4)).toBe("RIFF");
  expect(bytes.toString("latin1", 8, 12)).toBe("WAVE");
  return bytes.readUInt32LE(40) / bytes.readUInt32LE(28);
}

describe("needlework ident", () => {
  // H .... J .--- L .-..: 7, 13 and 9 dot units with two gaps of 3 make 35; a dot at 7 words a minute is 1.2/7 s
  // (PARIS is 50 units). ITU-R M.1677-1.
  const HJL_S = (35 * 1.2) / 7;

  it("prints the contract with --json", async () => {
    const { code, stdout, stderr } = await needlework(["ident", "hjl", "--json"]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    const { durationS, ...rest } = JSON.parse(stdout);
    expect(rest).toEqual({ text: "HJL", morse: ".... .--- .-..", wordsPerMinute: 7, toneHz: 1020 });
    expect(durationS).toBeCloseTo(HJL_S, 9);
  });

  it("writes a sound of that length", async () => {
    const file = join(folder, "hjl.wav");
    const { code, stdout } = await needlework(["ident", "HJL", "-o", file]);
    expect({ code, stdout }).toEqual({ code: 0, stdout: "" });
    expect(wavSeconds(readFileSync(file))).toBeCloseTo(HJL_S, 3);
  });

  it("repeats it every ten seconds, as on the air", async () => {
    const file = join(folder, "hjl.wav");
    await needlework(["ident", "HJL", "-o", file, "--repeat", "3"]);
    expect(wavSeconds(readFileSync(file))).toBeCloseTo(20 + HJL_S, 3);
  });

  it("takes another speed and tone", async () => {
    const { stdout } = await needlework(["ident", "HJL", "--json", "--wpm", "14", "--tone", "1350"]);
    expect(JSON.parse(stdout)).toMatchObject({ wordsPerMinute: 14, toneHz: 1350, durationS: HJL_S / 2 });
  });

  it("writes to stdout for -", async () => {
    const { bytes, stderr } = await needlework(["ident", "E", "-o", "-"]);
    expect(stderr).toBe("");
    expect(wavSeconds(bytes)).toBeCloseTo(1.2 / 7, 3);
  });

  it.each(["H-L", "ÄÖ", "", "A B"])("refuses %j, which has no code", async (text) => {
    const file = join(folder, "x.wav");
    const { code, stderr } = await needlework(["ident", text, "-o", file]);
    expect({ code, lines: stderr.trim().split("\n").length }).toEqual({ code: 1, lines: 1 });
    expect(stderr).toContain("only the letters A to Z and figures have a code");
    expect(existsSync(file)).toBe(false);
  });

  it("says where it cannot write, and leaves the old file", async () => {
    const missing = await needlework(["ident", "E", "-o", join(folder, "no", "x.wav")]);
    expect({ code: missing.code, stderr: missing.stderr }).toEqual({
      code: 1,
      stderr: `${join(folder, "no", "x.wav")}: no such file or folder\n`,
    });
    const isFolder = await needlework(["ident", "E", "-o", folder]);
    expect(isFolder.stderr).toBe(`${folder}: is a folder, not a file\n`);
  });

  it("replaces a file whole and leaves nothing beside it", async () => {
    const file = join(folder, "e.wav");
    writeFileSync(file, "old");
    expect((await needlework(["ident", "E", "-o", file])).code).toBe(0);
    expect(readFileSync(file).toString("latin1", 0, 4)).toBe("RIFF");
    const { readdirSync } = await import("node:fs");
    expect(readdirSync(folder)).toEqual(["e.wav"]);
  });
});
