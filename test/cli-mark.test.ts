/** Marking on the command line: what is printed, and what is refused in a sentence. */

import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildSet, type ProblemSet } from "../src/practice/index.ts";
import { needlework, needleworkHere } from "./cli.ts";
import { pdfPages } from "./pdf-words.ts";
import { classAnswers } from "./practice/class-answers.ts";
import { PRACTICE_ISLES } from "./practice-world.ts";

const folder = mkdtempSync(join(tmpdir(), "needlework-"));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string) => join(folder, name);
const mark = (...args: string[]) => needleworkHere(["mark", ...args]);

const SET = at("set.yaml");
const ANSWERS = at("answers.csv");
const set: ProblemSet = (() => {
  const built = buildSet(PRACTICE_ISLES, {
    skills: ["centre-and-read", "to-from-halves", "side-of-line"],
    slips: [],
    count: 12,
    seed: 5,
    mode: "choose",
  });
  if (built.kind === "none") throw new Error(built.says);
  return built.set;
})();
const CLASS = classAnswers(set, [
  { name: "Ana", holds: ["selector-is-radial"] },
  { name: "Bo", holds: ["selector-is-radial"] },
  { name: "Dag", holds: [] },
]);

beforeAll(() => {
  const codes = set.problems.map(({ code }) => `  - ${code}`);
  writeFileSync(SET, ["problems: 1", "title: Reading", "date: 2026-07-01", "list:", ...codes, ""].join("\n"));
  writeFileSync(ANSWERS, CLASS);
});

describe("needlework mark", () => {
  it("says what to reteach first, and what each learner does next", async () => {
    const { code, stdout, stderr } = await mark(SET, ANSWERS);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toMatch(/^Reading: 3 learners, 12 problems, 36 answers\n/);
    expect(stdout).toContain("“The number I dialled is my radial”: likely 2, maybe 0 of 3");
    expect(stdout).toMatch(/^ {2}Dag +12 of 12\n +next: All right: go on to “/m);
    expect(stdout).not.toContain("Not marked");
  });

  it("prints the same as JSON, every answer among it", async () => {
    const report = JSON.parse((await mark(SET, ANSWERS, "--json")).stdout);
    expect(report).toMatchObject({ title: "Reading", learnerCount: 3, problems: 12, answers: 36 });
    expect(report.slips[0]).toMatchObject({ id: "selector-is-radial", likely: ["Ana", "Bo"], maybe: [] });
    expect(report.marked.map(({ answers }: { answers: unknown[] }) => answers.length)).toEqual([12, 12, 12]);
  });

  it("takes codes for the set, and answers from stdin", async () => {
    const [first] = set.problems;
    const { code, stdout } = await needlework(["mark", first?.code ?? "", "-"], { input: "Ana,1,?\n" });
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Problems: 1 learner, 1 problem, 1 answer\n/);
  });

  it("lists rows that cannot be marked, and marks the others", async () => {
    const path = at("some.csv");
    writeFileSync(path, "Ana,1,?\nAna,1,A\nBo,99,A\n,1,A\n");
    const { code, stdout } = await mark(SET, path);
    expect(code).toBe(0);
    expect(stdout).toContain("Not marked\n  line 2: Ana: a second answer to problem 1");
    expect(stdout).toContain("line 3: Bo: the set has no problem 99; it has 1 to 12\n  line 4: no learner");
  });

  it("gives one learner his own answers and nothing of anybody else", async () => {
    const [one, report] = [at("ana.pdf"), at("ana-all.csv")];
    writeFileSync(report, `${CLASS}\r\nBo,99,A\r\n`);
    const text = await mark(SET, report, "--learner", "ana");
    expect(text.code).toBe(0);
    expect(text.stdout).toMatch(/^Ana: Reading, \d+½? of 12\nnext: The selector is a question/);
    const json = await mark(SET, report, "--learner", "ana", "--json");
    expect(JSON.parse(json.stdout)).toMatchObject({ learner: "Ana", of: 12, unanswered: [] });
    expect((await mark(SET, report, "--learner", "ana", "-o", one)).stderr).toBe(`${one} written, for Ana\n`);
    const pdf = readFileSync(one);
    const words = pdfPages(pdf).join(" ");
    expect(words).toMatch(/^Ana Reading · .* Marks \d+½? of 12 Next The selector is a question/);
    for (const all of [text.stdout, json.stdout, words, pdf.toString("latin1")])
      expect(all).not.toMatch(/\b(Bo|Dag)\b|likely|maybe/);
    const ended = await mark(SET, report, "--learner", "Anna");
    expect(ended).toMatchObject({ code: 2, stdout: "" });
    expect(ended.stderr).toContain("no learner is called Anna (did you mean Ana?)");
  });

  it("holds the pile against an earlier one, and says so of ideas that both tell", async () => {
    const [earlier, now, report] = [at("earlier.json"), at("now.csv"), at("now.pdf")];
    writeFileSync(earlier, (await mark(SET, ANSWERS, "--json")).stdout);
    writeFileSync(
      now,
      classAnswers(set, [
        { name: "Ana", holds: [] },
        { name: "Bo", holds: [] },
      ]),
    );
    const { stdout } = await mark(SET, now, "--before", earlier);
    const words = "“The number I dialled is my radial”: likely 2 of 3, now 0 of 2";
    expect(stdout).toContain(`Last lesson      ${words}\n`);
    expect((await mark(SET, now, "--before", earlier, "-o", report)).code).toBe(0);
    expect(pdfPages(readFileSync(report))[0]).toContain(`Did the last lesson work? ${words}`);
    expect((await mark(SET, now)).stdout).not.toContain("Last lesson");
    const ended = await mark(SET, now, "--before", now);
    expect(ended).toMatchObject({ code: 1, stderr: expect.stringContaining("this is no report of a pile") });
  });

  it.each([
    [[SET], 2, /missing|ANSWERS/],
    [["a.csv", "b.yaml"], 2, /a\.csv stands where the problem set belongs: first the set, then the answers/],
    [["-", "-"], 2, /only one of set and answers can come from stdin/],
    [[SET, at("none.csv")], 1, /none\.csv: no such file or folder/],
    [["demo/ostrelle.stations.yaml", ANSWERS], 1, /is no problem set: it has no problems/],
    [
      [SET, at("empty.csv")],
      1,
      /empty\.csv:1:1 the file is empty; a table begins with a row that names its columns/,
    ],
    [[SET, at("header.csv")], 1, /header\.csv: it holds no answers; write learner, problem, answer in each/],
    [[SET, at("other.csv")], 1, /other\.csv:1: no row of 2 could be marked; the first, what: /],
    [[SET, SET], 1, /set\.yaml:1: no row of \d+ could be marked/],
  ])("refuses %j with exit %i and a sentence", async (args, code, says) => {
    writeFileSync(at("empty.csv"), "\n\n");
    writeFileSync(at("header.csv"), "learner,problem,answer\n");
    writeFileSync(at("other.csv"), "what,is,this\nno,one,knows\n");
    const ended = await mark(...args);
    expect({ ...ended, stderr: "" }).toEqual({ code, stdout: "", stderr: "" });
    expect(ended.stderr).toMatch(says);
    expect(ended.stderr.trimEnd().split("\n")).toHaveLength(1);
  });
});

describe("the report as a PDF", () => {
  const flat = (pdf: Buffer) => pdf.toString("latin1").replace(/\s+/g, " ");

  it.each([
    ["a4", "595.2756"],
    ["letter", "612"],
  ])("has the class on its first page, then learners, then questions, on %s", async (paper, widthPt) => {
    const path = at(`${paper}.pdf`);
    const ended = await mark(SET, ANSWERS, "-o", path, "--paper", paper);
    expect(ended).toEqual({ code: 0, stdout: "", stderr: `${path} written: 3 learners, 36 answers\n` });
    const pdf = readFileSync(path);
    expect(flat(pdf)).toMatch(/\/Marked true/);
    expect(flat(pdf)).toMatch(/pdfuaid:part[^\d]*1/);
    expect(flat(pdf)).toContain(`[0 0 ${widthPt}`);
    const [first = "", second = "", ...rest] = pdfPages(pdf);
    for (const words of [
      "Marked: Reading",
      "Reteach first “The number I dialled is my radial” likely 2, maybe 0 of 3",
      "Twist the selector: the aircraft on the chart must not move.",
      "Who is just guessing? Nobody",
      "Who is stuck? Nobody",
      "Is the class ready to go on?",
      "Is a question bad? None stands out",
      "Ana, Bo",
    ])
      expect(first).toContain(words);
    expect(second).toMatch(/Learners .*Ana .*Bo .*Dag 12 of 12 nothing stands out/);
    expect(rest.join(" ")).toMatch(/Questions .*Which radial\?/);
    expect(rest.join(" ")).toContain("2 × “");
  });

  it("lists rows that were not marked, and tells them too", async () => {
    const [answers, report] = [at("more.csv"), at("more.pdf")];
    writeFileSync(answers, `${CLASS}\r\nBo,99,A\r\n`);
    const { code, stderr } = await mark(SET, answers, "-o", report);
    expect(code).toBe(0);
    expect(stderr).toContain(`${answers}:38 not marked: Bo: the set has no problem 99`);
    expect(pdfPages(readFileSync(report)).join(" ")).toMatch(
      /Not marked Line Why 38 Bo: the set has no problem/,
    );
  });

  it("leaves out what fewer than three have answered", async () => {
    const [answers, report] = [at("two.csv"), at("two.pdf")];
    writeFileSync(answers, CLASS.split("\r\n").slice(0, 25).join("\n"));
    await mark(SET, answers, "-o", report);
    const questions = pdfPages(readFileSync(report)).slice(2).join(" ");
    expect(questions).toContain("fewer than three");
    expect((await mark(SET, answers)).stdout).not.toContain("fewer than three");
  });

  it("takes any words for words", async () => {
    const answers = at("odd.csv");
    writeFileSync(answers, '"#panic() $x$ *a* <t> @ref [1]",1,?\n');
    expect(await mark(SET, answers, "-o", at("odd.pdf"))).toMatchObject({ code: 0 });
    expect(pdfPages(readFileSync(at("odd.pdf")))[1]).toContain("#panic() $x$ *a* <t> @ref [1]");
  });

  it("is written over nothing that it is made from", async () => {
    expect((await mark(SET, ANSWERS, "-o", ANSWERS)).code).toBe(2);
    expect(readFileSync(ANSWERS, "utf8")).toBe(CLASS);
    expect((await mark(SET, ANSWERS, "-o", at("x.pdf"), "--json")).code).toBe(2);
    expect(existsSync(at("x.pdf"))).toBe(false);
  });
});
