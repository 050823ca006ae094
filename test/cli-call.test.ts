import { mkdtempSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { COMMANDS } from "../src/cli/run.ts";
import { hasStack, needlework, needleworkHere, ROOT } from "./cli.ts";

const NAMES = COMMANDS.map((command) => command.name);

describe("a call at fault", () => {
  it.each([
    [[], "usage: needlework COMMAND"],
    [["raed"], "unknown command raed (did you mean read?); see needlework --help"],
    [["zzzzzz"], "unknown command zzzzzz; see needlework --help"],
    [["--halp"], "unknown option --halp (did you mean --help?)"],
    [["constructor"], "unknown command constructor; see"],
    [["read"], "needlework read: SCENE... is missing; see needlework read --help"],
    [["read", "--jsn", "x.yaml"], "unknown option --jsn (did you mean --json?); see needlework read --help"],
    [["read", "--json=1", "x.yaml"], '--json takes no value, but got "1"'],
    [["read", "--constructor", "x.yaml"], "unknown option --constructor; see"],
    [["ident", "HJL", "-o"], "-o needs a value: -o FILE"],
    [["ident", "HJL", "-o", "--json"], "-o needs a value: -o FILE"],
    [["ident", "HJL", "--wpm", "7", "--wpm", "8"], "--wpm is given twice"],
    [["ident", "HJL", "--wpm", "fast"], '--wpm must be a number from 1 to 40 words a minute, but got "fast"'],
    [
      ["ident", "HJL", "--repeat", "1.5"],
      '--repeat must be a whole number from 1 to 60 times, but got "1.5"',
    ],
    [["ident", "HJL", "TXJ"], '"TXJ" is one operand too many'],
    [
      ["stations", "demo/ostrelle.stations.yaml", "--near", "HJX"],
      "no station is called HJX (did you mean HJL?)",
    ],
    [
      ["stations", "demo/ostrelle.stations.yaml", "--near", "north of HJL"],
      '"north of HJL" is neither an ident',
    ],
    [["stations", "demo/ostrelle.stations.yaml", "--within", "10"], "--within needs --near"],
    [
      ["stations", "demo/ostrelle.stations.yaml", "--date", "2026-02-30"],
      "--date must be a day of the calendar",
    ],
    [["bench", "--port", "99999"], "--port must be a whole number from 1 to 65535"],
    [["bench", "-"], "it needs a file"],
  ])("%j ends with 2 and one sentence", async (args, sentence) => {
    const { code, stdout, stderr } = await needleworkHere(args);
    expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
    expect(stderr).toContain(sentence);
    if (args.length > 0) expect(stderr.trim().split("\n")).toHaveLength(1);
  });

  it("ends the process so, too", async () => {
    for (const args of [[], ["read", "--jsn", "x.yaml"], ["bench", "--port", "99999"]]) {
      const { code, stdout, stderr } = await needlework(args);
      expect({ code, stdout, stderr }).toEqual(await needleworkHere(args));
      expect(code).toBe(2);
    }
  });
});

describe("help", () => {
  it("lists every command", async () => {
    const { code, stdout, stderr } = await needlework(["--help"]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    for (const name of NAMES) expect(stdout).toMatch(new RegExp(`^  ${name} `, "m"));
  });

  it("gives the version of package.json", async () => {
    const { stdout, code } = await needlework(["--version"]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });

  describe.each(NAMES)("of %s", (name) => {
    let folder = "";
    beforeAll(() => {
      folder = mkdtempSync(join(tmpdir(), "needlework-"));
      symlinkSync(join(ROOT, "demo"), join(folder, "demo"));
    });
    afterAll(() => rmSync(folder, { recursive: true }));

    it("ends with an example that works", async () => {
      const { code, stdout } = await needlework([name, "--help"]);
      expect(code).toBe(0);
      const example = stdout.trimEnd().split("\n").at(-1) ?? "";
      expect(example).toMatch(new RegExp(`^ {2}needlework ${name}`));
      // The bench runs until it is ended; its own test starts it.
      if (name === "bench") return;
      const ended = await needlework(example.trim().split(" ").slice(1), { cwd: folder });
      expect({ code: ended.code, hasStack: hasStack(ended.stderr) }).toEqual({ code: 0, hasStack: false });
    });
  });
});

describe("a reader that closes early", () => {
  it("ends the program quietly", async () => {
    const { spawn } = await import("node:child_process");
    const child = spawn(
      "sh",
      ["-c", `"${process.execPath}" bin/needlework.mjs read demo/scenes/*.yaml | head -n 1`],
      {
        cwd: ROOT,
      },
    );
    let [out, err] = ["", ""];
    child.stdout.on("data", (chunk) => {
      out += chunk;
    });
    child.stderr.on("data", (chunk) => {
      err += chunk;
    });
    await new Promise((resolve) => child.on("close", resolve));
    expect(out.trim().split("\n")).toHaveLength(1);
    expect(err).toBe("");
  });
});
