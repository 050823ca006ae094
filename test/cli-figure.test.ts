import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import {
  chartField,
  choiceFor,
  type FieldKind,
  figureScale,
  fitView,
  newChoice,
  THEMES,
} from "../src/draw/index.ts";
import { resolveScene } from "../src/scene/index.ts";
import { demoScene } from "./browser/demo-in-node.ts";
import { needlework } from "./cli.ts";

const SCENE = "demo/scenes/01-which-way-to-the-course.yaml";

/** A scene whose needle is hidden, for the learner to infer. */
const COVERED = `scene: 1
title: Covered
date: 2026-06-01
stations:
  - { ident: QQV, kind: VOR-DME, frequency: 112.30, at: [47.5, 8.5], elevation: 1500, declination: 0 }
aircraft: { at: QQV 300/12, heading: 010, altitude: 6500, tas: 100 }
receivers:
  - { name: NAV1, tune: QQV, course: 125 }
cover: [NAV1.needle]
`;

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "needlework-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

const figure = (name: string, ...args: string[]) =>
  needlework(["figure", SCENE, "-o", join(folder, name), ...args]);
const bytesOf = (name: string) => readFileSync(join(folder, name));
const rootOf = (svg: string) => /<svg[^>]*>/.exec(svg)?.[0] ?? "";
const views = (svg: string) => [...svg.matchAll(/data-view="(\w+)"/g)].map(([, view]) => view);

describe("needlework figure", () => {
  it("writes an SVG that stands alone, with title, description and its own fonts", async () => {
    const { code, stdout, stderr } = await figure("a.svg");
    expect({ code, stdout }).toEqual({ code: 0, stdout: "" });
    expect(stderr).toContain("1920 by 1080");
    const svg = bytesOf("a.svg").toString();
    expect(rootOf(svg)).toMatch(/width="1920" height="1080"/);
    expect(svg).toContain(">Which way to the course?</title>");
    expect(svg).toMatch(/<desc [^>]*>[^<]*NAV1[^<]*<\/desc>/);
    expect(svg.match(/font-face/g)).toHaveLength(4);
    expect(svg.replaceAll(/xmlns(:\w+)?="[^"]*"/g, "")).not.toMatch(/https?:/);
    expect(views(svg)).toEqual(["chart", "panel"]);
  });

  it("writes a PNG of the size asked for, not empty", async () => {
    await figure("a.png", "--size", "640x480");
    const png = bytesOf("a.png");
    expect(png.toString("latin1", 1, 4)).toBe("PNG");
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([640, 480]);
    expect(png.length).toBeGreaterThan(20_000);
    await figure("b.png", "--size", "640x480", "--theme", "dark");
    expect(bytesOf("b.png").equals(png)).toBe(false);
  });

  it("writes a PDF of one page in our fonts, as lines and letters", async () => {
    const { code } = await figure("a.pdf", "--size", "4:3");
    expect(code).toBe(0);
    const pdf = bytesOf("a.pdf").toString("latin1");
    expect(pdf.startsWith("%PDF-")).toBe(true);
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    // 1600 by 1200 pixels at 96 to the inch, in points.
    expect(pdf).toMatch(/\/MediaBox\s*\[0 0 1200 900\]/);
    expect(pdf).toMatch(/\/BaseFont\s*\/[A-Z]+\+B612-Regular/);
    expect(pdf).not.toMatch(/\/Subtype\s*\/Image/);
  });

  it("gives the same bytes each time", async () => {
    for (const ending of ["svg", "png", "pdf"]) {
      await figure(`1.${ending}`, "--size", "640x480");
      await figure(`2.${ending}`, "--size", "640x480");
      expect(bytesOf(`1.${ending}`).equals(bytesOf(`2.${ending}`)), ending).toBe(true);
    }
  });

  it("shows the views asked for, in that order", async () => {
    await figure("a.svg", "--views", "panel,reasons,signal");
    expect(new Set(views(bytesOf("a.svg").toString()))).toEqual(new Set(["panel", "reasons", "signal"]));
  });

  it("leaves the ground empty when asked to", async () => {
    const svg = async (...args: string[]) => {
      const { stdout } = await needlework(["figure", SCENE, "-o", "-", "--format", "svg", ...args]);
      return stdout;
    };
    const ground = /<rect width="1920" height="1080"/;
    expect(await svg()).toMatch(ground);
    expect(await svg("--transparent")).not.toMatch(ground);
  });

  it("keeps covers, in the picture and in its description, until told otherwise", async () => {
    const svg = async (...args: string[]) => {
      const call = ["figure", "-", "-o", "-", "--format", "svg", "--views", "panel", ...args];
      return (await needlework(call, { input: COVERED })).stdout;
    };
    expect(await svg()).not.toMatch(/dots? left/);
    expect(await svg("--uncover")).toMatch(/2½ dots left/);
  });

  it.each(["needle", "to-from", "reception", "cross-fix"])("wears the field asked for: %s", async (word) => {
    const svg = async (...args: string[]) => {
      const { stdout } = await needlework(["figure", SCENE, "-o", "-", "--format", "svg", ...args]);
      return stdout;
    };
    const args = ["--views", "chart", "--size", "640x480", "--uncover", "--receiver", "NAV2"];
    const drawn = await svg("--field", word, ...args);
    const href = /<image data-part="field" href="([^"]+)"/.exec(drawn)?.[1];
    const box = /data-view="chart".*?<svg[^>]*? width="([\d.]+)" height="([\d.]+)"/s.exec(drawn);
    const [widthPx, heightPx] = [Number(box?.[1]), Number(box?.[2])];
    const scene = { ...demoScene("01-which-way-to-the-course"), covers: [] };
    const choice = choiceFor(scene, newChoice(word === "cross-fix" ? "fix" : (word as FieldKind), "NAV2"));
    const situation = resolveScene(scene);
    const view = fitView(situation, widthPx, heightPx, figureScale(640, 480));
    const field = choice === null ? null : chartField(scene, choice);
    expect(href === field?.pictureOn({ view, widthPx, heightPx }, THEMES.light).href).toBe(true);
    expect(await svg(...args)).not.toContain('data-part="field"');
  });

  it.each([
    [["--field", "nedle"], 'unknown field "nedle" (did you mean needle?)'],
    [["--field", "needle", "--views", "panel"], "--field needle colours the chart; add chart to --views"],
    [["--field", "needle", "--receiver", "NAV9"], 'unknown receiver "NAV9"'],
  ])("%j is refused", async (args, sentence) => {
    const call = ["figure", SCENE, "-o", join(folder, "a.svg"), ...args];
    const { code, stderr } = await needlework(call);
    expect({ code, sentence: stderr.includes(sentence) }).toEqual({ code: 2, sentence: true });
    expect(readdirSync(folder)).toEqual([]);
  });

  it("shows no field that a cover is over, and says which", async () => {
    const call = ["figure", "-", "-o", "-", "--format", "svg", "--field", "needle"];
    const { code, stderr } = await needlework(call, { input: COVERED });
    expect(code).toBe(2);
    expect(stderr).toContain("--field needle would show what the scene covers (NAV1 needle); add --uncover");
  });

  it.each([
    [["-o", "a.gif"], "a.gif does not end in .svg, .png or .pdf"],
    [["-o", "-"], "say which picture goes to stdout: --format svg, png or pdf"],
    [["-o", "a.svg", "--format", "png"], "--format png contradicts the name a.svg"],
    [[], "say where the picture goes: -o FILE"],
    [["-o", "a.svg", "--views", "chart,pannel"], 'unknown view "pannel" (did you mean panel?)'],
    [["-o", "a.svg", "--views", "chart,chart"], "names a view twice"],
    [["-o", "a.svg", "--theme", "drak"], 'unknown theme "drak" (did you mean dark?)'],
    [["-o", "a.svg", "--size", "big"], '--size must be 16:9, 4:3 or pixels such as 1920x1080, but got "big"'],
    [["-o", "a.svg", "--size", "9000x10"], "--size must lie between 200 and 8000 pixels a side"],
  ])("%j is refused and writes nothing", async (args, sentence) => {
    const { code, stdout, stderr } = await needlework(["figure", join(process.cwd(), SCENE), ...args], {
      cwd: folder,
    });
    expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
    expect(stderr).toContain(sentence);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("leaves an old picture whole when the scene is at fault", async () => {
    await figure("a.svg");
    const before = bytesOf("a.svg");
    const { code } = await needlework(["figure", "-", "-o", join(folder, "a.svg")], { input: "scene: 2\n" });
    expect(code).toBe(1);
    expect(bytesOf("a.svg").equals(before)).toBe(true);
  });
});
