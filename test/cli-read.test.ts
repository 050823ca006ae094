import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { hasStack, needlework, ROOT } from "./cli.ts";

const FIRST = "demo/scenes/01-which-way-to-the-course.yaml";
const DEMO = readdirSync(join(ROOT, "demo/scenes")).map((name) => `demo/scenes/${name}`);

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "needlework-"));
});
afterEach(() => rmSync(folder, { recursive: true }));
const put = (name: string, text: string | Uint8Array) => {
  mkdirSync(join(folder, name, ".."), { recursive: true });
  writeFileSync(join(folder, name), text);
};
const lines = (text: string) => text.split("\n").filter((line) => line !== "");

/** A scene that stands alone: the aircraft 12 NM out on the 300 radial of a station whose north is true north. */
const SCENE = `scene: 1
title: Alone
date: 2026-06-01
stations:
  - { ident: QQV, kind: VOR-DME, frequency: 112.30, at: [47.5, 8.5], elevation: 1500, declination: 0 }
aircraft: { at: QQV 300/12, heading: 010, altitude: 6500, tas: 100 }
receivers:
  - { name: NAV1, tune: QQV, course: 125 }
`;

describe("needlework read --json", () => {
  it("prints one object a line, in the order of the files", async () => {
    const { code, stdout, stderr } = await needlework(["read", "--json", ...DEMO]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(lines(stdout).map((line) => (JSON.parse(line) as { file: string }).file)).toEqual(DEMO);
  });

  it("keeps its contract", async () => {
    put("scene.yaml", SCENE);
    const { stdout } = await needlework(["read", "--json", join(folder, "scene.yaml")]);
    const reading = JSON.parse(stdout);
    expect(Object.keys(reading)).toEqual(["file", "title", "situation", "receivers", "reasons", "cautions"]);
    expect(reading.title).toBe("Alone");
    expect(reading.receivers).toHaveLength(1);
    const { distanceNm, dmeNm, radialDeg, bearingToDeg, deviationDeg, needleDots, ...rest } =
      reading.receivers[0];
    // 12 NM out and 5,000 ft up: the slant is the root of 12^2 + (5000 / 6076.115)^2.
    expect(distanceNm).toBeCloseTo(12, 3);
    expect(dmeNm).toBeCloseTo(Math.hypot(12, 5000 / 6076.115), 2);
    expect(radialDeg).toBeCloseTo(300, 4);
    expect(bearingToDeg).toBeCloseTo(120, 4);
    // Course 125 comes in along the 305 radial; the aircraft on the 300 has that line 5 degrees away, and facing 125
    // with the station ahead the 305 radial lies to the left.
    expect(deviationDeg).toBeCloseTo(-5, 4);
    expect(needleDots).toBeCloseTo(2.5, 4);
    expect(rest).toMatchObject({
      name: "NAV1",
      frequencyMhz: 112.3,
      station: "QQV",
      reception: "good",
      signal: "good",
      serviceVolume: "unknown",
      courseDeg: 125,
      needleSide: "left",
      fullScale: false,
      flag: "TO",
      reversed: true,
    });
    expect(reading.situation.variationDeg).toBeGreaterThan(2);
    expect(reading.situation.variationDeg).toBeLessThan(5);
    expect(reading.reasons[0]).toMatchObject({ receiver: "NAV1", number: 1 });
  });

  it("has null where there is none", async () => {
    put("scene.yaml", SCENE.replace("tune: QQV", "tune: 113.00"));
    const { stdout } = await needlework(["read", "--json", join(folder, "scene.yaml")]);
    expect(JSON.parse(stdout).receivers[0]).toMatchObject({
      station: null,
      reception: "none",
      signal: "no-station",
      radialDeg: null,
      bearingToDeg: null,
      distanceNm: null,
      dmeNm: null,
      deviationDeg: null,
      needleDots: null,
      needleSide: null,
      flag: "OFF",
      reversed: false,
    });
  });

  it("never prints minus zero or a direction of 360", async () => {
    const { stdout } = await needlework(["read", "--json", ...DEMO]);
    expect(stdout).not.toMatch(/:-0[,}]/);
    const degrees = [
      ...stdout.matchAll(/"(?:radial|bearingTo|course|heading|track|headingTrue|trackTrue)Deg":([\d.e+-]+)/g),
    ];
    expect(degrees.length).toBeGreaterThan(100);
    for (const [, value] of degrees) {
      expect(Number(value)).toBeGreaterThanOrEqual(0);
      expect(Number(value)).toBeLessThan(360);
    }
  });
});

describe("needlework read", () => {
  it("says what the instruments show, why, and what to beware of", async () => {
    const { code, stdout } = await needlework(["read", FIRST]);
    expect(code).toBe(0);
    expect(stdout).toContain("Which way to the course?");
    expect(stdout).toContain("NAV1, 115.60, ident TXJ heard. Course 070. TO. Needle 2 dots left, 4 degrees.");
    expect(stdout).toMatch(/^ {3}1 {2}\S/m);
    const beyond = await needlework(["read", "demo/scenes/16-beyond-the-published-volume.yaml"]);
    expect(beyond.stdout).toMatch(/^Cautions\n {2}! .+service volume/m);
  });

  it("reads a scene from stdin", async () => {
    const { code, stdout } = await needlework(["read", "--json", "-"], { input: SCENE });
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ file: "-", title: "Alone" });
  });

  it("finds the files a scene names beside it, from any folder", async () => {
    const { code } = await needlework(["read", join(ROOT, FIRST)], { cwd: folder });
    expect(code).toBe(0);
  });

  it("reads the good files, tells the bad ones and ends with 1", async () => {
    put("bad.yaml", SCENE.replace("course: 125", "course: 361").replace("tune: QQV", "tune: 108.10"));
    put("good.yaml", SCENE);
    const { code, stdout, stderr } = await needlework(
      ["read", "--json", "bad.yaml", "none.yaml", "good.yaml"],
      {
        cwd: folder,
      },
    );
    expect(code).toBe(1);
    expect(lines(stdout)).toHaveLength(1);
    const told = lines(stderr);
    expect(told).toHaveLength(3);
    expect(told[0]).toMatch(/^bad\.yaml:8:\d+ .*108\.10/);
    expect(told[1]).toMatch(/^bad\.yaml:8:\d+ .*361/);
    expect(told[2]).toBe("none.yaml: no such file or folder");
  });

  it.each<[string, string | Uint8Array]>([
    ["is empty", ""],
    ["is no text", Uint8Array.of(0, 1, 2, 255, 0, 7)],
    ["is another thing", "- one\n- two\n"],
    ["is not YAML", "scene: [1\n"],
    ["has 50 MB", new Uint8Array(50_000_000).fill(0x20)],
    ["includes itself", `stations: scene.yaml\n${SCENE.replace("stations:", "land:")}`],
    ["holds a thousand nested lists", `scene: ${"[".repeat(1000)}`],
  ])("tells a file that %s, without a stack", async (_, text) => {
    put("scene.yaml", text);
    const { code, stdout, stderr } = await needlework(["read", "scene.yaml"], { cwd: folder });
    expect({ code, stdout, hasStack: hasStack(stderr) }).toEqual({ code: 1, stdout: "", hasStack: false });
    for (const line of lines(stderr)) expect(line).toMatch(/^scene\.yaml:\d+:\d+ \S/);
    expect(lines(stderr).length).toBeGreaterThan(0);
  });

  it("tells a folder from a file", async () => {
    const { code, stderr } = await needlework(["read", folder]);
    expect({ code, stderr }).toEqual({ code: 1, stderr: `${folder}: is a folder, not a file\n` });
  });
});

describe("needlework stations", () => {
  const DEMO_STATIONS = "demo/ostrelle.stations.yaml";
  const HEADER =
    "id,filename,ident,name,type,frequency_khz,latitude_deg,longitude_deg,elevation_ft,iso_country,dme_frequency_khz,dme_channel,dme_latitude_deg,dme_longitude_deg,dme_elevation_ft,slaved_variation_deg,magnetic_variation_deg,usageType,power,associated_airport";
  const TABLE = [
    HEADER,
    '1,"A","QQA","Alpha","VOR-DME",112300,47.5,8.5,1500,"ZZ",112300,"070X",47.5,8.5,1500,1.5,2,"BOTH","HIGH",""',
    '2,"B","QQB","Beta","VOR",113000,48.5,8.5,900,"ZZ",,,,,,,2,"BOTH","HIGH",""',
    '3,"C","QC","Gamma","NDB",350,48,8,900,"ZZ",,,,,,,2,"BOTH","LOW",""',
    '4,"D","QQD","Delta","VOR",113000,148.5,8.5,900,"ZZ",,,,,,,2,"BOTH","HIGH",""',
  ].join("\n");

  it("prints a station file as JSON", async () => {
    const { code, stdout } = await needlework(["stations", DEMO_STATIONS, "--json"]);
    expect(code).toBe(0);
    const { stations, skipped, counts } = JSON.parse(stdout);
    const written = readFileSync(join(ROOT, DEMO_STATIONS), "utf8").match(/- ident:/g) ?? [];
    expect(stations).toHaveLength(written.length);
    expect({ skipped, stations: counts.stations }).toEqual({ skipped: [], stations: written.length });
    expect(stations[0]).toMatchObject({
      ident: "HJL",
      kind: "VORTAC",
      frequencyMhz: 113.9,
      declinationDeg: -10,
    });
  });

  it("reads the worldwide table, tells the broken row and counts the rest", async () => {
    put("navaids.csv", TABLE);
    const { code, stdout } = await needlework([
      "stations",
      join(folder, "navaids.csv"),
      "--json",
      "--date",
      "2026-06-01",
    ]);
    expect(code).toBe(0);
    const { stations, skipped, counts } = JSON.parse(stdout);
    expect(stations.map((station: { ident: string }) => station.ident)).toEqual(["QQA", "QQB"]);
    expect(stations[1].declinationEstimated).toBe(true);
    expect(skipped).toEqual([{ line: 5, reason: expect.stringContaining("148.5") }]);
    expect(counts).toEqual({ stations: 2, declinationEstimated: 1, skipped: 1, beaconsLeftOut: 1 });
    const people = await needlework(["stations", join(folder, "navaids.csv")]);
    expect(people.stdout).toMatch(/^QQB +VOR +113\.00 .*estimated/m);
    expect(people.stdout).toContain("line 5: ");
    expect(people.stdout).toContain(
      "2 stations, 1 with estimated declination, 1 row skipped, 1 beacon left out",
    );
  });

  it("lists those near a place, nearest first", async () => {
    // One degree of latitude is 60 NM, near enough: Beta lies 60 NM north of Alpha.
    put("navaids.csv", TABLE);
    const near = async (...args: string[]) => {
      const { stdout } = await needlework(["stations", join(folder, "navaids.csv"), "--json", ...args]);
      return JSON.parse(stdout).stations.map((station: { ident: string }) => station.ident);
    };
    expect(await near("--near", "QQB")).toEqual(["QQB", "QQA"]);
    expect(await near("--near", "QQB", "--within", "59")).toEqual(["QQB"]);
    expect(await near("--near", "48°20′N 008°30′E")).toEqual(["QQB", "QQA"]);
  });

  it("converts what reads back to the same stations", async () => {
    put("navaids.csv", TABLE);
    const made = join(folder, "made.stations.yaml");
    const converted = await needlework(["stations", join(folder, "navaids.csv"), "--convert", made]);
    expect({ code: converted.code, stdout: converted.stdout }).toEqual({ code: 0, stdout: "" });
    const json = async (path: string) =>
      JSON.parse((await needlework(["stations", path, "--json"])).stdout).stations;
    expect(await json(made)).toEqual(await json(join(folder, "navaids.csv")));
    const demo = join(folder, "demo.yaml");
    await needlework(["stations", DEMO_STATIONS, "--convert", demo]);
    expect(await json(demo)).toEqual(await json(join(ROOT, DEMO_STATIONS)));
  });

  it("does not convert what could not be read back, nor write over what it reads", async () => {
    put("navaids.csv", TABLE.replace('"QQB"', '"QQA"'));
    const twice = await needlework(["stations", "navaids.csv", "--convert", "out.yaml"], { cwd: folder });
    expect(twice.code).toBe(1);
    expect(twice.stderr).toMatch(/QQA .*--near/);
    expect(readdirSync(folder)).toEqual(["navaids.csv"]);
    const over = await needlework(
      ["stations", "navaids.csv", "--near", "48 8", "--within", "35", "--convert", "./navaids.csv"],
      {
        cwd: folder,
      },
    );
    expect(over.code).toBe(2);
    expect(over.stderr).toContain("would be written over the file it is made from");
    expect(readFileSync(join(folder, "navaids.csv"), "utf8")).toContain("latitude_deg");
  });

  it("tells another table for what it is", async () => {
    put("other.csv", "a,b\n1,2\n");
    const { code, stderr } = await needlework(["stations", "other.csv"], { cwd: folder });
    expect(code).toBe(1);
    expect(stderr).toMatch(/^other\.csv:1:1 this is not the worldwide navaid table/);
  });
});
