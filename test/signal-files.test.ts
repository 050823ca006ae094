/** `needlework signal` as a person calls it: files made, measured again, changed in every usual way, and broken in every usual way. */

import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import wavefile from "wavefile";
import { type StationDeg, stationDeg, turnBetween } from "../src/earth/index.ts";
import { needlework, needleworkHere } from "./cli.ts";
import { localizer, recordingOf, voice } from "./recordings.ts";

const SCENE = "demo/scenes/24-three-faces.yaml";
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "needlework-"));
});
afterEach(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);

async function made(name: string, ...options: string[]): Promise<string> {
  const { code, stderr } = await needleworkHere(["signal", SCENE, "-o", at(name), ...options]);
  expect({ code, stderr }).toEqual({ code: 0, stderr: expect.stringContaining(`${at(name)} written: `) });
  return at(name);
}

// biome-ignore lint/suspicious/noExplicitAny: what a caller of the program sees
async function decoded(file: string, ...options: string[]): Promise<any> {
  const { code, stdout, stderr } = await needleworkHere(["signal", "--decode", file, "--json", ...options]);
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  return JSON.parse(stdout);
}

/** The one sentence with which a recording is refused. */
async function refusal(file: string, ...options: string[]): Promise<string> {
  const { code, stdout, stderr } = await needleworkHere(["signal", "--decode", file, ...options]);
  expect({ code, stdout, lines: stderr.trim().split("\n").length }).toEqual({
    code: 1,
    stdout: "",
    lines: 1,
  });
  return stderr.trim().replace(`${file} `, "");
}

const offDeg = (radialDeg: number, found: number): number =>
  Math.abs(turnBetween(stationDeg(radialDeg) as StationDeg, stationDeg(found)));

/** The radial of the first receiver by the engine, which knows nothing of samples. */
async function engineRadial(): Promise<number> {
  const { stdout } = await needleworkHere(["read", SCENE, "--json"]);
  return JSON.parse(stdout).receivers[0].radialDeg;
}

/** Writes samples with another program's code. */
function write(name: string, form: string, channels: readonly Float64Array[], rateHz = 48_000): string {
  const bits = form === "8a" || form === "8m" ? 16 : Number.parseInt(form, 10);
  const isFloat = form === "32f" || form === "64";
  const half = 2 ** (bits - 1);
  const scaled = channels.map((channel) =>
    Array.from(channel, (x) => (isFloat ? x : Math.round(x * (half - 1)) + (bits === 8 ? half : 0))),
  );
  const file = new wavefile.WaveFile();
  file.fromScratch(
    channels.length,
    rateHz,
    form === "8a" || form === "8m" ? "16" : form,
    channels.length === 1 ? scaled[0]! : scaled,
  );
  if (form === "8a") file.toALaw();
  if (form === "8m") file.toMuLaw();
  writeFileSync(at(name), file.toBuffer());
  return at(name);
}

describe("a round trip through a file", () => {
  it.each([
    ["sound", "a.wav", []],
    ["sound at 24 kHz", "a.wav", ["--rate", "24000"]],
    ["sound at 44.1 kHz", "a.wav", ["--rate", "44100"]],
    ["sound at 192 kHz", "a.wav", ["--rate", "192000", "--seconds", "2"]],
    ["baseband", "a.wav", ["--iq"]],
    ["baseband with the carrier aside", "a.wav", ["--iq", "--offset", "-870.5"]],
  ])("gives the engine's radial from %s", async (_, name, options) => {
    const file = await made(name, ...options);
    const radialDeg = await engineRadial();
    const iq = options.includes("--iq") ? ["--iq"] : [];
    const wav = await decoded(file, ...iq);
    // 16 bits: within 0.02 degree is asked, and found is a thousandth.
    expect(offDeg(radialDeg, wav.radialDeg)).toBeLessThan(0.002);
    const sigmf = await decoded(file.replace(".wav", ".sigmf-meta"));
    expect({ ...sigmf, file }).toEqual({ ...wav, file });
  });

  it("gives back depths, ratio, frequencies and ident", async () => {
    const found = await decoded(await made("a.wav"));
    expect(found).toMatchObject({
      ident: { kind: "ident", text: "LJY", times: 1 },
      flagCause: null,
      quality: "clean",
    });
    expect(found.toneDepth).toBeCloseTo(0.3, 4);
    expect(found.subcarrierDepth).toBeCloseTo(0.3, 4);
    expect(found.deviationRatio).toBeCloseTo(16, 3);
    expect(found.toneHz).toBeCloseTo(30, 3);
    expect(found.subcarrierHz).toBeCloseTo(9960, 2);
  });

  it("shows the needle as the engine does for a course", async () => {
    const found = await decoded(await made("a.wav", "--radial", "246"), "--course", "070");
    expect(found).toMatchObject({ courseDeg: 70, needleSide: "left", flag: "TO", fullScale: false });
    expect(found.deviationDeg).toBeCloseTo(-4, 2);
    expect(found.needleDots).toBeCloseTo(2, 2);
  });

  it("takes another receiver, and noise", async () => {
    const file = await made("a.wav", "--receiver", "NAV2", "--noise", "60");
    const noisy = await decoded(file);
    const { stdout } = await needleworkHere(["read", SCENE, "--json"]);
    expect(offDeg(JSON.parse(stdout).receivers[1].radialDeg, noisy.radialDeg)).toBeLessThan(1);
    expect(noisy.carrierToNoiseDbHz).toBeLessThan(70);
    expect(noisy.radialDeviationDeg).toBeGreaterThan(0.005);
  });

  it("reads a WAV file from stdin and writes one to stdout", async () => {
    const written = await needlework(["signal", SCENE, "-o", "-", "--seconds", "2"]);
    expect(written.stderr).toBe("");
    const read = await needlework(["signal", "--decode", "-", "--json"], { input: written.bytes });
    expect(offDeg(await engineRadial(), JSON.parse(read.stdout).radialDeg)).toBeLessThan(0.002);
  });

  it("keeps headroom: no sample at the end of the scale, the carrier where it says", async () => {
    const { stdout } = await needleworkHere(["signal", SCENE, "-o", at("a.wav"), "--json"]);
    const bytes = readFileSync(at("a.wav"));
    const samples = new Int16Array(
      bytes.buffer.slice(bytes.byteOffset + 44, bytes.byteOffset + bytes.length),
    );
    const most = samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0) / 32_767;
    const mean = samples.reduce((sum, x) => sum + x, 0) / samples.length / 32_767;
    expect(most).toBeLessThan(0.95);
    expect(most).toBeGreaterThan(0.8);
    expect(mean).toBeCloseTo(JSON.parse(stdout).carrierLevel, 3);
  });
});

describe("another program's WAV", () => {
  // What each form's steps leave of a radial over three seconds: eight bits have steps of 0.8 %.
  it.each([
    ["8", 0.1],
    ["16", 0.01],
    ["24", 0.01],
    ["32", 0.01],
    ["32f", 0.01],
    ["64", 0.01],
    ["8a", 0.3],
    ["8m", 0.3],
  ])("of form %s is measured within %f degree", async (form, withinDeg) => {
    const { channels } = recordingOf({ radialDeg: 317.3 });
    const found = await decoded(write("a.wav", form, channels));
    expect(offDeg(317.3, found.radialDeg)).toBeLessThan(withinDeg);
    expect(found.toneDepth).toBeCloseTo(0.3, 1.5);
  });

  it("of two channels is heard on the louder one", async () => {
    const [loud] = recordingOf({ radialDeg: 20 }).channels;
    const hum = loud!.map((_, index) => 0.01 * Math.sin(index / 9));
    expect(offDeg(20, (await decoded(write("a.wav", "16", [hum, loud!]))).radialDeg)).toBeLessThan(0.01);
  });

  it("of unknown length, as a pipe leaves it, is read to its end", async () => {
    const bytes = readFileSync(await made("a.wav", "--seconds", "2"));
    bytes.writeUInt32LE(0xffff_ffff, 4);
    bytes.writeUInt32LE(0xffff_ffff, 40);
    writeFileSync(at("b.wav"), bytes);
    expect(await decoded(at("b.wav"))).toMatchObject({ durationS: 2 });
  });

  it("without its direct part says that depths are unknown, and gives the ratio of both", async () => {
    const [channel] = recordingOf({ radialDeg: 88 }, { durationS: 6 }).channels;
    const file = write("a.wav", "16", [channel!.map((x) => x - 0.5)]);
    const found = await decoded(file);
    expect(found).toMatchObject({
      toneDepth: null,
      subcarrierDepth: null,
      carrierToNoiseDbHz: null,
      flagCause: null,
    });
    expect(found.depthRatio).toBeCloseTo(1, 2);
    expect(offDeg(88, found.radialDeg)).toBeLessThan(0.02);
    const { stdout } = await needleworkHere(["signal", "--decode", file]);
    expect(stdout).toContain("unknown; 30 Hz over 9960 Hz is 1.00");
    expect(stdout).toContain("depths cannot be known");
  });
});

describe("SigMF of another program", () => {
  it.each(["rf32_le", "rf32_be", "ri16_be", "cf32_le", "ci8", "cu8"])(
    "in %s is measured",
    async (datatype) => {
      const form = datatype.startsWith("c") ? "baseband" : "audio";
      const recorded = form === "audio" ? { form } : { form, carrierOffsetHz: 250 };
      const { channels } = recordingOf({ radialDeg: 203 }, recorded as { form: "audio" });
      const bits = Number(/\d+/.exec(datatype)![0]);
      const view = new DataView(new ArrayBuffer((channels.length * channels[0]!.length * bits) / 8));
      const little = datatype.endsWith("_le");
      let offset = 0;
      for (let index = 0; index < channels[0]!.length; index++)
        for (const channel of channels) {
          const x = channel[index]!;
          if (bits === 32) view.setFloat32(offset, x, little);
          else if (bits === 16) view.setInt16(offset, Math.round(x * 32_767), little);
          else if (datatype === "ci8") view.setInt8(offset, Math.round(x * 127));
          else view.setUint8(offset, Math.round(x * 127) + 128);
          offset += bits / 8;
        }
      writeFileSync(at("x.sigmf-data"), new Uint8Array(view.buffer));
      const global = { "core:datatype": datatype, "core:version": "1.0.0", "core:sample_rate": 48_000 };
      writeFileSync(at("x.sigmf-meta"), JSON.stringify({ global, captures: [], annotations: [] }));
      const found = await decoded(at("x.sigmf-meta"));
      expect(found.form).toBe(form);
      expect(offDeg(203, found.radialDeg)).toBeLessThan(bits === 8 ? 0.1 : 0.01);
      // Named by its data it is the same recording.
      expect((await decoded(at("x.sigmf-data"))).radialDeg).toBe(found.radialDeg);
    },
  );

  it("without a rate asks for it, and without its data says so", async () => {
    writeFileSync(at("x.sigmf-meta"), JSON.stringify({ global: { "core:datatype": "ri8" } }));
    expect(await refusal(at("x.sigmf-meta"))).toContain("has no core:sample_rate; say it with --rate HZ");
    expect(await refusal(at("x.sigmf-meta"), "--rate", "48000")).toBe(
      `${at("x.sigmf-data")}: no such file or folder`,
    );
    expect(await refusal(at("x.sigmf-meta"), "--iq")).toContain("leave --iq out");
  });
});

describe("a recording at fault gets one sentence:", () => {
  it("what cannot be measured", async () => {
    const station = recordingOf({ radialDeg: 5 }).channels[0]!;
    const rows: [Float64Array, string][] = [
      [station.map(() => 0), "is silent; check the cable and the level, and record it again"],
      [station.subarray(0, 4800), "is 0.1 s long, and the receiver needs 0.5 s"],
      [station.map((x) => Math.min(1, 2 * x)), "is clipped"],
      [localizer().channels[0]!, "holds a localizer"],
      [voice().channels[0]!, "holds no VOR"],
    ];
    for (const [samples, words] of rows)
      expect(await refusal(write("a.wav", "16", [samples]))).toContain(words);
  });

  it("a rate that is too low, and one that is wrong with the right one named", async () => {
    const { channels } = recordingOf({ radialDeg: 5 });
    const low = voice().channels[0]!;
    expect(await refusal(write("a.wav", "16", [low], 22_050))).toContain(
      "was sampled at 22050 Hz, too slowly for the 9960 Hz sub-carrier",
    );
    const lying = write("b.wav", "16", channels, 44_100);
    expect(await refusal(lying)).toContain("so try --rate 48000");
    expect(offDeg(5, (await decoded(lying, "--rate", "48000")).radialDeg)).toBeLessThan(0.01);
  });

  it("baseband without --iq and sound with it", async () => {
    const baseband = await made("a.wav", "--iq", "--offset", "500", "--seconds", "2");
    expect(await refusal(baseband)).toContain(
      "holds complex baseband on its two channels, not sound; add --iq",
    );
    const sound = await made("b.wav", "--seconds", "2");
    expect(await refusal(sound, "--iq")).toContain("leave --iq out");
  });

  it("no WAV file, another kind of file, one cut off, an empty one, none", async () => {
    const bytes = readFileSync(await made("a.wav", "--seconds", "2"));
    const rows: [Uint8Array, string][] = [
      [Buffer.from("scene: 1\ntitle: not a recording\n"), "is no WAV file and no SigMF metadata"],
      [Buffer.from("fLaC and more of it"), "is FLAC, not WAV; convert it: ffmpeg -i"],
      [bytes.subarray(0, 100_000), "is cut off: it promises 192000 bytes of samples and holds 99956"],
      [bytes.subarray(0, 30), "ends before any sample"],
      [Buffer.alloc(0), "is empty"],
    ];
    for (const [content, words] of rows) {
      writeFileSync(at("x.wav"), content);
      expect(await refusal(at("x.wav"))).toContain(words);
    }
    expect(await refusal(at("none.wav"))).toBe(`${at("none.wav")}: no such file or folder`);
    expect(await refusal(folder)).toBe(`${folder}: is a folder, not a file`);
  });

  it("a form of sound that is not read", async () => {
    const bytes = readFileSync(await made("a.wav", "--seconds", "2"));
    bytes.writeUInt16LE(0x55, 20);
    writeFileSync(at("x.wav"), bytes);
    expect(await refusal(at("x.wav"))).toContain("holds a form of sound that is not read (tag 85, 16 bits)");
  });
});

describe("a scene", () => {
  const scene = (aircraft: string, more = ""): string => {
    const stations = join(process.cwd(), "demo/ostrelle.stations.yaml");
    writeFileSync(
      at("s.yaml"),
      `scene: 1\ntitle: T\ndate: 2026-07-01\nstations: ${stations}\naircraft: { at: ${aircraft}, heading: 090, altitude: 3500 }\nreceivers:\n  - { name: NAV1, tune: 115.60, course: 070 }\n${more}`,
    );
    return at("s.yaml");
  };

  it("that covers anything has neither radial, station nor frequency told", async () => {
    const file = scene("TXJ 246/18", "cover: [NAV1.needle]\n");
    const { code, stderr } = await needleworkHere(["signal", file, "-o", at("a.wav"), "--seconds", "1"]);
    expect(code).toBe(0);
    const told = stderr.replaceAll(folder, "") + readFileSync(at("a.sigmf-meta"), "utf8");
    expect(told).not.toMatch(/246|TXJ|115/);
    const json = await needleworkHere(["signal", file, "-o", at("b.wav"), "--seconds", "1", "--json"]);
    expect(JSON.parse(json.stdout)).toMatchObject({ radialDeg: null, station: null, frequencyMhz: null });
    const open = await needleworkHere(["signal", scene("TXJ 246/18"), "-o", at("c.wav"), "--seconds", "1"]);
    expect(open.stderr).toContain("TXJ 115.60, conventional, radial 246");
  });

  it("with a signal of its own gives that: kind, noise, echoes", async () => {
    const file = scene(
      "TXJ 246/18",
      "signal: { kind: doppler, noise: 60, reflectors: [{ at: TXJ 300/2, amplitude: 0.02 }] }\n",
    );
    const { stdout } = await needleworkHere(["read", file, "--json"]);
    const call = ["signal", file, "-o", at("a.wav")];
    const { code, stderr } = await needleworkHere(call);
    expect({ code, stderr }).toEqual({ code: 0, stderr: expect.stringContaining("doppler") });
    const found = await decoded(at("a.wav"));
    expect(offDeg(JSON.parse(stdout).receivers[0].radialDeg, found.radialDeg)).toBeLessThan(1);
    expect(found.carrierToNoiseDbHz).toBeLessThan(75);
    await needleworkHere([...call.slice(0, 3), at("b.wav"), "--noise", "none"]);
    expect((await decoded(at("b.wav"))).carrierToNoiseDbHz).toBeGreaterThan(85);
  });

  it("where nothing arrives writes nothing and says why", async () => {
    const file = scene("TXJ 246/190");
    const { code, stderr } = await needleworkHere(["signal", file, "-o", at("a.wav")]);
    expect(code).toBe(1);
    expect(stderr).toContain(
      "no VOR's signal arrives at NAV1: the station is below the horizon; move the aircraft",
    );
    expect(existsSync(at("a.wav"))).toBe(false);
  });

  it("leaves two files and nothing else", async () => {
    await made("a.wav", "--seconds", "1");
    expect(readdirSync(folder).sort()).toEqual(["a.sigmf-meta", "a.wav"]);
  });
});

it.each([
  [["signal"], "SCENE is missing; or give a recording: --decode FILE"],
  [["signal", SCENE], "say where the samples go: -o FILE"],
  [["signal", SCENE, "--decode", "x.wav"], "--decode takes no scene"],
  [["signal", "--decode", "x.wav", "--offset", "3"], "--offset has no meaning with --decode"],
  [["signal", SCENE, "-o", "x.wav", "--course", "070"], "--course has no meaning without --decode"],
  [
    ["signal", SCENE, "-o", "x.wav", "--offset", "30"],
    "--offset moves the carrier, which sound does not hold",
  ],
  [
    ["signal", SCENE, "-o", "x.wav", "--rate", "22050"],
    "--rate must be a whole number from 24000 to 192000 Hz",
  ],
  [["signal", SCENE, "-o", "x.wav", "--receiver", "NAV9"], 'unknown receiver "NAV9"'],
  [["signal", SCENE, "-o", "x.wav", "--noise", "loud"], "--noise must be a number from 0 to 120 dB"],
  [["signal", SCENE, "-o", "-", "--json"], "--json and -o - would both go to stdout"],
])("the call %j is at fault", async (args, words) => {
  const { code, stderr } = await needleworkHere(args);
  expect({ code, stderr }).toEqual({ code: 2, stderr: expect.stringContaining(words) });
  expect(existsSync("x.wav")).toBe(false);
});
