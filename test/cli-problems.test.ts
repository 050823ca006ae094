/** Problems and sheets on the command line: what is written, and what is refused in a sentence. */

import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { needleworkHere, ROOT } from "./cli.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "needlework-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

const at = (name: string) => join(folder, name);
const problems = (...args: string[]) => needleworkHere(["problems", ...args]);
const sheet = (...args: string[]) => needleworkHere(["sheet", ...args]);
const codesIn = (text: string) => text.match(/\b[0-9A-Z]{3}-[0-9A-Z]{3}-[0-9A-Z]{3}\b/g) ?? [];

describe("needlework problems", () => {
  it("prints problems without their answers, the same for the same seed", async () => {
    const one = await problems("--number", "4", "--seed", "7");
    expect(one).toEqual(await problems("--number", "4", "--seed", "7"));
    expect(codesIn(one.stdout)).toHaveLength(4);
    expect(codesIn((await problems("--number", "4", "--seed", "8")).stdout)).not.toEqual(codesIn(one.stdout));
  });

  it("writes a set that gives the same problems again, from file, codes and key", async () => {
    const path = at("set.yaml");
    const made = await problems(
      "--skills",
      "centre-and-read",
      "--number",
      "3",
      "-o",
      path,
      "--title",
      "Radials",
    );
    expect(made).toEqual({ code: 0, stdout: "", stderr: `3 problems written to ${path}\n` });
    const codes = codesIn(readFileSync(path, "utf8"));
    expect(codesIn((await problems(path)).stdout)).toEqual(codes);
    expect(codesIn((await problems(...codes)).stdout)).toEqual(codes);
    const key: { key: { code: string; text: string }[] } = JSON.parse(
      (await problems(path, "--json", "--key")).stdout,
    );
    expect(key.key.map(({ code }) => code)).toEqual(codes);
    const data = (await problems(path, "--json")).stdout;
    expect(JSON.parse(data)).toMatchObject({ title: "Radials", date: "2026-07-01" });
    expect(data).not.toContain("steps");
  });

  it("sets problems on stations of one's own, named by their path from the set's folder", async () => {
    const stations = at("mine.yaml");
    writeFileSync(stations, readFileSync(join(ROOT, "demo/ostrelle.stations.yaml")));
    const set = at("set.yaml");
    const date = ["--date", "2026-07-01"];
    expect((await problems(stations, ...date, "--number", "2", "-o", set)).code).toBe(0);
    expect(readFileSync(set, "utf8")).toContain("stations: mine.yaml\n");
    expect((await problems(set)).code).toBe(0);
    // No other land, no other mark: the isles' own codes are refused here.
    const [code = ""] = codesIn((await problems("--number", "1")).stdout);
    writeFileSync(set, readFileSync(set, "utf8").replace(/- \S+/, `- ${code}`));
    expect(await problems(set)).toMatchObject({
      code: 1,
      stderr: expect.stringMatching(new RegExp(`^${set}:6:5 ${code} was made on other stations`)),
    });
  });

  it.each([
    [
      ["--skills", "centre-and-rad"],
      2,
      /no skill is called centre-and-rad \(did you mean centre-and-read\?\)/,
    ],
    [["--slips", "nonsense"], 2, /no slip is called nonsense; they are radial-reads-inbound, /],
    [["--number", "0"], 2, /--number must be a whole number from 1 to 200, but got "0"/],
    [["--seed", "x"], 2, /--seed must be a whole number/],
    [["--mode", "chose"], 2, /--mode must be choose or tell, but got "chose" \(did you mean choose\?\)/],
    [["--date", "2026-02-30"], 2, /--date must be a day of the calendar/],
    [["--land", "x.yaml"], 2, /--land has no place here: the isles have their own/],
    [["none.yaml"], 1, /^none\.yaml: no such file or folder/],
    [["--json", "--qti", "x"], 2, /ask for one of them/],
    [["p1.abc.0000000"], 1, /the link was changed on its way here/],
  ])("refuses %j with exit %i and a sentence", async (args, code, says) => {
    const ended = await problems(...args);
    expect({ ...ended, stderr: "" }).toEqual({ code, stdout: "", stderr: "" });
    expect(ended.stderr).toMatch(says);
    expect(ended.stderr.trimEnd().split("\n")).toHaveLength(1);
  });

  it("refuses wishes beside a set, and the second of two operands", async () => {
    const path = at("set.yaml");
    await problems("--number", "1", "-o", path);
    expect((await problems(path, "--seed", "3")).stderr).toMatch(
      /--seed has no place here: .* says that itself/,
    );
    expect((await problems(path, path)).stderr).toMatch(/is one operand too many/);
  });

  it("puts another like a problem in its place, and keeps the author's comments", async () => {
    const path = at("set.yaml");
    await problems("--number", "3", "-o", path);
    const text = `# For Tuesday.\n${readFileSync(path, "utf8")}`;
    writeFileSync(path, text);
    const ended = await problems(path, "--another", "2", "--seed", "9", "-o", at("next.yaml"));
    expect(ended.code).toBe(0);
    const [before, after] = [codesIn(text), codesIn(readFileSync(at("next.yaml"), "utf8"))];
    expect([after[0], after[2]]).toEqual([before[0], before[2]]);
    expect(after[1]).not.toBe(before[1]);
    // The same form and mode: the code begins with them.
    expect(after[1]?.slice(0, 1)).toBe(before[1]?.slice(0, 1));
    expect(readFileSync(at("next.yaml"), "utf8")).toMatch(/^# For Tuesday\.\n/);
    expect((await problems(path, "--another", "4")).stderr).toMatch(
      /--another takes numbers from 1 to 3, but got "4"/,
    );
  });

  it("writes a QTI package as an archive or a folder, the same files in both, pictures among them", async () => {
    const wishes = ["--number", "3", "--seed", "5"];
    expect((await problems(...wishes, "--qti", at("q.zip"))).code).toBe(0);
    expect((await problems(...wishes, "--qti", at("q"))).code).toBe(0);
    const zip = unzipSync(readFileSync(at("q.zip")));
    const names = readdirSync(at("q"), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(at("q").length + 1));
    expect(Object.keys(zip).sort()).toEqual(names.sort());
    for (const name of names) expect(Buffer.from(zip[name] ?? [])).toEqual(readFileSync(join(at("q"), name)));
    const manifest = readFileSync(join(at("q"), "imsmanifest.xml"), "utf8");
    const pictures = names.filter((name) => name.startsWith("pictures/"));
    expect(pictures.length).toBeGreaterThanOrEqual(3);
    for (const picture of pictures) expect(manifest).toContain(`<file href="${picture}"/>`);
  });

  it("never writes a package over what is there", async () => {
    writeFileSync(at("q"), "mine");
    const ended = await problems("--number", "1", "--qti", at("q"));
    expect(ended.code).toBe(1);
    expect(ended.stderr).toMatch(/is there already; name a folder that is not, or a file that ends in \.zip/);
    expect(readFileSync(at("q"), "utf8")).toBe("mine");
    expect(readdirSync(folder)).toEqual(["q"]);
  });
});

const pagesOf = (pdf: Buffer) =>
  Number(
    /\/Type\/Pages[^>]*\/Count (\d+)|\/Count (\d+)[^>]*\/Type\/Pages/.exec(flat(pdf))?.slice(1).find(Boolean),
  );
const flat = (pdf: Buffer) =>
  pdf
    .toString("latin1")
    .replace(/\s*\n\s*/g, " ")
    .replace(/ ?\/ ?/g, "/");

describe("needlework sheet", () => {
  it.each([
    ["a4", "595.27"],
    ["letter", "612"],
  ])(
    "writes two problems to a page on %s, tagged for every reader, and the key apart",
    async (paper, widthPt) => {
      const wishes = ["--number", "5", "--seed", "7", "--title", "Lesson three", "--paper", paper];
      const ended = await sheet(...wishes, "-o", at("s.pdf"), "--key", at("k.pdf"));
      expect({ code: ended.code, stdout: ended.stdout }).toEqual({ code: 0, stdout: "" });
      const [learners, key] = [readFileSync(at("s.pdf")), readFileSync(at("k.pdf"))];
      expect(pagesOf(learners)).toBe(3);
      expect(flat(learners)).toContain(`[0 0 ${widthPt}`);
      for (const pdf of [learners, key]) {
        expect(flat(pdf)).toMatch(/pdfuaid:part[^\d]*1/);
        expect(flat(pdf)).toMatch(/\/MarkInfo ?<<[^>]*\/Marked true/);
        expect(flat(pdf)).toContain("B612-Regular");
        expect(flat(pdf)).toMatch(/\/Lang ?\(en(-US)?\)/);
      }
      expect(flat(learners)).toContain("Lesson three");
      expect(flat(learners)).not.toContain("Key: ");
      expect(flat(key)).toContain("Key: Lesson three");
    },
  );

  it("is the same file whenever it is made", async () => {
    const wishes = ["--number", "2", "--seed", "7"];
    await sheet(...wishes, "-o", at("one.pdf"));
    await sheet(...wishes, "-o", at("two.pdf"));
    expect(readFileSync(at("one.pdf")).equals(readFileSync(at("two.pdf")))).toBe(true);
  });

  it("takes any words of the author's for words", async () => {
    const title = '#panic() $x$ *a* _b_ \\ "q" <t> @ref = [1]';
    const ended = await sheet("--number", "1", "--title", title, "--note", "#v(1cm) `x`", "-o", at("s.pdf"));
    expect(ended).toMatchObject({ code: 0 });
  });

  it.each([
    [[], /say where the sheet goes: -o SHEET\.pdf/],
    [["-o", "a.pdf", "--key", "a.pdf"], /sheet and key are two files/],
    [["-o", "a.pdf", "--paper", "a5"], /--paper must be a4 or letter, but got "a5" \(did you mean a4\?\)/],
  ])("refuses %j", async (args, says) => {
    const ended = await sheet(...args);
    expect(ended.code).toBe(2);
    expect(ended.stderr).toMatch(says);
  });

  it("writes nothing over the set it is made from", async () => {
    const path = at("set.yaml");
    await problems("--number", "1", "-o", path);
    const before = readFileSync(path, "utf8");
    expect((await sheet(path, "-o", path)).code).toBe(2);
    expect(readFileSync(path, "utf8")).toBe(before);
  });
});
