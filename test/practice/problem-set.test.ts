/** Problem sets: made from wishes, written, read with every fault in its place, and carried by a link. */

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  anotherLike,
  areAlike,
  buildSet,
  codesOf,
  editProblemSet,
  FORMS,
  firedSlips,
  makeProblem,
  modesOf,
  openProblem,
  type ProblemSet,
  practiceWorld,
  problemSetFromLink,
  problemSetJsonSchema,
  problemSetToLink,
  readProblemSet,
  slipOf,
  type Wishes,
  writeProblemSet,
} from "../../src/practice/index.ts";
import { faultLine, type LinkWorld, type Open, openNothing } from "../../src/scene/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";
import { openFrom } from "../scene-files.ts";

const ISLES: LinkWorld = {
  name: "the Ostrelle Isles",
  stations: PRACTICE_ISLES.stations,
  land: PRACTICE_ISLES.land,
};
const WISHES: Wishes = { skills: [], slips: [], count: 12, seed: 7, mode: "choose" };

function built(wishes: Partial<Wishes> = {}, world = PRACTICE_ISLES): ProblemSet {
  const made = buildSet(world, { ...WISHES, ...wishes });
  if (made.kind === "none") throw new Error(made.says);
  return made.set;
}

const read = (text: string, open: Open = openNothing) =>
  readProblemSet(text, { path: "set.yaml", open, isles: ISLES });

function readBack(text: string, open?: Open): ProblemSet {
  const result = read(text, open);
  if (!result.ok) throw new Error(result.faults.map(faultLine).join("\n"));
  return result.set;
}

describe("a set from wishes", () => {
  it("is the same again from the same seed, and another from another", () => {
    expect(codesOf(built())).toEqual(codesOf(built()));
    expect(codesOf(built({ seed: 8 }))).not.toEqual(codesOf(built()));
  });

  it("has as many problems as asked for, no two alike", () => {
    const { problems } = built({ count: 40 });
    expect(problems).toHaveLength(40);
    for (const [at, problem] of problems.entries())
      for (const other of problems.slice(0, at)) expect(areAlike(problem, other)).toBe(false);
  });

  it("goes through the forms in turn, never one twice running", () => {
    const { problems } = built({ count: 2 * FORMS.length });
    const counts = FORMS.map(({ id }) => problems.filter(({ form }) => form.id === id).length);
    expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
    for (const [at, { form }] of problems.entries())
      if (FORMS.length > 1) expect(form.id).not.toBe(problems[at - 1]?.form.id);
  });

  it("keeps to the skills asked for, each problem one that a slip of them would get wrong", () => {
    const { problems } = built({ skills: ["centre-and-read"], count: 15 });
    for (const problem of problems) {
      expect(problem.form.skills).toContain("centre-and-read");
      expect(firedSlips(problem).some((slip) => slipOf(slip).skills.includes("centre-and-read"))).toBe(true);
    }
  });

  it("tells the slips asked for, each about as often, and apart", () => {
    const slips = ["selector-is-radial", "radial-reads-inbound"] as const;
    const { problems } = built({ skills: ["centre-and-read"], slips, count: 16 });
    const tell = (slip: (typeof slips)[number]) => problems.filter((each) => firedSlips(each).includes(slip));
    for (const problem of problems)
      expect(firedSlips(problem).some((slip) => slip === slips[0] || slip === slips[1])).toBe(true);
    for (const slip of slips) expect(tell(slip).length).toBeGreaterThanOrEqual(8);
    const apart = problems.filter(({ slipAnswers }) => {
      const [one, other] = slips.map((slip) => slipAnswers.find((told) => told.slip === slip)?.answer);
      return JSON.stringify(one) !== JSON.stringify(other);
    });
    expect(apart.length).toBeGreaterThan(10);
  });

  it("tells a slip asked for alone with every problem", () => {
    const { problems } = built({ skills: ["centre-and-read"], slips: ["needle-is-aircraft"], count: 12 });
    for (const problem of problems) expect(firedSlips(problem)).toContain("needle-is-aircraft");
  });

  it("takes for alike what has the same task, or answers too near at one station", () => {
    const radials = Array.from({ length: 150 }, (_, seed) => {
      const made = makeProblem(PRACTICE_ISLES, "read-radial", "tell", seed);
      if (made.kind === "none") throw new Error(made.says);
      return made.problem;
    });
    let near = 0;
    for (const [at, one] of radials.entries())
      for (const other of radials.slice(0, at)) {
        const [a, b] = [one.truth, other.truth].map((truth) => (truth.kind === "direction" ? truth.deg : 0));
        const apartDeg = Math.abs((((((a ?? 0) - (b ?? 0)) % 360) + 540) % 360) - 180);
        const same = one.case.scene.ask === other.case.scene.ask;
        if (same && apartDeg < 2) near += 1;
        if (apartDeg > 4 || !same) expect(areAlike(one, other)).toBe(false);
        if (same && apartDeg < 2) expect(areAlike(one, other)).toBe(true);
      }
    expect(near).toBeGreaterThan(2);
  });

  it("is set to tell where that is asked for", () => {
    const tellable = FORMS.filter(({ modes }) => (modes as readonly string[]).includes("tell"));
    for (const { mode, form } of built({ mode: "tell", count: 20 }).problems)
      expect(mode === "tell" || !tellable.some(({ id }) => id === form.id)).toBe(true);
    expect(modesOf(built({ skills: ["centre-and-read"], mode: "tell" }))).toEqual(["tell"]);
  });

  it("says what could not be had", () => {
    const made = buildSet(PRACTICE_ISLES, {
      ...WISHES,
      skills: ["centre-and-read", "racetrack"],
      slips: ["selector-is-radial", "vot-reciprocal"],
    });
    expect(made.kind === "set" && made.notes).toEqual([
      "No problem of these tells “A test signal reads 180 FROM”: it shows in problems of other skills.".replace(
        "A test signal reads 180 FROM",
        slipOf("vot-reciprocal").name,
      ),
      "No problem practises “The holding pattern” with what else is asked for.",
    ]);
    expect(() => built({ count: 0 })).toThrow(RangeError);
    expect(() => built({ seed: -1 })).toThrow(RangeError);
  });
});

describe("another like this", () => {
  it("has the same form, mode and fired slips, and is not alike", () => {
    for (const like of built({ count: 2 * FORMS.length }).problems) {
      const other = anotherLike(PRACTICE_ISLES, like, { seed: 3 });
      if (other === null) continue;
      expect(other.form.id).toBe(like.form.id);
      expect(other.mode).toBe(like.mode);
      expect(firedSlips(other)).toEqual(firedSlips(like));
      expect(areAlike(other, like)).toBe(false);
    }
  });

  it("is found for the forms whose answers are measured", () => {
    for (const like of built({ skills: ["centre-and-read", "in-or-out-course"], count: 12 }).problems)
      if (like.truth.kind === "direction")
        expect(anotherLike(PRACTICE_ISLES, like, { seed: 11 })).not.toBeNull();
  });
});

describe("the file", () => {
  it("reads back as the same set, and writes itself the same", () => {
    const set = built({ title: "Reading: the panel", note: "Bring a pencil.\nAnd a rubber." });
    const text = writeProblemSet(set, { isles: ISLES });
    const back = readBack(text);
    expect({ ...back, problems: codesOf(back) }).toEqual({
      ...set,
      world: back.world,
      problems: codesOf(set),
    });
    expect(back.problems.map(({ truth }) => truth)).toEqual(set.problems.map(({ truth }) => truth));
    expect(writeProblemSet(back, { isles: ISLES })).toBe(text);
    expect(text).not.toContain("stations:");
  });

  it("names stations of one's own by their path, or holds them", () => {
    const stations = PRACTICE_ISLES.stations.slice(0, 3);
    const world = practiceWorld({ name: "three", date: "2026-07-01", stations, land: null });
    const set = built({ count: 4 }, world);
    const inside = writeProblemSet(set, { isles: ISLES });
    expect(codesOf(readBack(inside))).toEqual(codesOf(set));
    expect(readBack(inside).world.land).toBeNull();
    const named = writeProblemSet(set, { isles: ISLES, stations: "three.yaml" });
    expect(named).toContain("stations: three.yaml\n");
    const list = inside.slice(inside.indexOf("stations:\n") + "stations:\n".length, inside.indexOf("list:"));
    expect(codesOf(readBack(named, openFrom({ "three.yaml": `stations: 1\nlist:\n${list}` })))).toEqual(
      codesOf(set),
    );
  });

  const [first = "", second = ""] = codesOf(built({ count: 2 }));
  const good = `problems: 1\ntitle: Two\ndate: 2026-07-01\nlist:\n  - ${first}\n  - ${second}\n`;
  const miscopied = `${first.slice(0, -1)}${first.endsWith("7") ? "8" : "7"}`;

  it.each([
    ["nothing", good, "", "set.yaml:1:1 the file is empty; a problem set begins with problems: 1"],
    [
      "a scene",
      "problems: 1",
      "scene: 1",
      "set.yaml:1:1 this is a scene file; a problem set begins with problems: 1",
    ],
    [
      "a version to come",
      "problems: 1",
      "problems: 2",
      "set.yaml:1:11 problems 2 is not a known version; write problems: 1",
    ],
    [
      "no date",
      "date: 2026-07-01\n",
      "",
      "set.yaml:1:1 the file has no date; a date is year-month-day, such as 2026-06-01",
    ],
    [
      "a day that is none",
      "2026-07-01",
      "2026-02-30",
      "set.yaml:3:7 date 2026-02-30 is not in the calendar; write a day that exists, such as 2026-06-01",
    ],
    ["a key misspelt", "title:", "titel:", "set.yaml:2:1 unknown key `titel`; did you mean `title`?"],
    [
      "a code cut short",
      first,
      first.slice(0, 9),
      `set.yaml:5:5 code ${first.slice(0, 9)} is not understood; a problem's code has nine letters and digits, such as 4K7-Q2M-9XD`,
    ],
    [
      "a code miscopied",
      first,
      miscopied,
      `set.yaml:5:5 “${miscopied}” is no problem's code: a letter or digit was miscopied`,
    ],
    [
      "a code twice",
      second,
      first,
      `set.yaml:6:5 ${first} stands on line 5 already; put another problem in its place or take it out`,
    ],
    [
      "another date",
      "2026-07-01",
      "2026-07-02",
      `set.yaml:5:5 ${first} was made on other stations, another land or another date than the Ostrelle Isles on 2026-07-02; give those it was made on`,
    ],
    [
      "no list",
      `list:\n  - ${first}\n  - ${second}\n`,
      "",
      "set.yaml:1:1 the file has no list; write list: and under it the problems' codes, each after a dash, such as - 4K7-Q2M-9XD",
    ],
    [
      "an empty list",
      `list:\n  - ${first}\n  - ${second}\n`,
      "list: []\n",
      "set.yaml:4:7 list has 0 problems; a set has 1 to 200",
    ],
    [
      "one code for a list",
      `list:\n  - ${first}\n  - ${second}\n`,
      `list: ${first}\n`,
      "set.yaml:4:7 list is not a list; write each problem's code under it, after a dash, such as - 4K7-Q2M-9XD",
    ],
    [
      "stations that are not there",
      "list:",
      "stations: none.yaml\nlist:",
      "set.yaml:4:11 stations none.yaml cannot be opened: no other file can be opened from here; write its path from the folder of this file",
    ],
    [
      "stations without a VOR",
      "list:",
      "stations: []\nlist:",
      "set.yaml:4:11 this set has no VOR on the air: problems need at least one",
    ],
  ])("with %s is at fault there", (_, from, to, fault) => {
    expect(good).toContain(from);
    const result = read(good.replace(from, to));
    expect(result.ok ? [] : result.faults.map(faultLine)).toEqual([fault]);
  });

  it("is told every fault at once", () => {
    const bad = good
      .replace("title:", "titel:")
      .replace("2026-07-01", "someday")
      .replace(second, "111-111-112");
    const result = read(bad);
    expect(result.ok ? [] : result.faults.map(({ line }) => line)).toEqual([2, 3, 6]);
  });

  it("takes codes as people type them", () => {
    const typed = good.replace(first, first.toLowerCase().replaceAll("-", " "));
    expect(codesOf(readBack(typed))).toEqual([first, second]);
  });

  it("finds a code that these stations cannot serve unfit", () => {
    expect(openProblem(PRACTICE_ISLES, first).kind).toBe("problem");
    // As where another world's mark is the same by chance.
    expect(openProblem({ ...PRACTICE_ISLES, beacons: [], beaconsWithDme: [] }, first)).toMatchObject({
      kind: "fault",
      code: "unfit-stations",
    });
  });
});

it("the document's example is a set, and its every key is told", () => {
  const document = readFileSync("docs/problem-sets.md", "utf8");
  const example = /```yaml\n([\s\S]*?)```/.exec(document)?.[1] ?? "";
  expect(readBack(example).problems).toHaveLength(3);
  const { properties } = problemSetJsonSchema();
  const keys = Object.keys(properties as object);
  expect(keys.filter((key) => !document.includes(`\`${key}\``))).toEqual([]);
  expect(keys).toHaveLength(7);
});

describe("a change to a file that is there", () => {
  const set = built({ count: 4, title: "Four" });
  const [a, b, c, d] = set.problems;
  if (!a || !b || !c || !d) throw new Error("four were asked for");
  const text = [
    "# For Tuesday.",
    "problems: 1   # the first",
    "title: Four",
    "date: 2026-07-01",
    "list:",
    "  # warm up",
    `  - ${a.code}   # easy`,
    "",
    `  - ${b.code.toLowerCase()}`,
    "  # the hard ones",
    `  - ${c.code}  # hard`,
    "note: Mind the flag.",
    "# The end.",
    "",
  ].join("\n");
  const edited = (
    problems: ProblemSet["problems"],
    words: Partial<Pick<ProblemSet, "title" | "note">> = {},
  ) => {
    const result = editProblemSet(
      text,
      { title: "Four", note: "Mind the flag.", problems, ...words },
      { path: "set.yaml" },
    );
    if (!result.ok) throw new Error(result.faults.map(faultLine).join("\n"));
    return result.text;
  };

  it("leaves every character where nothing changed", () => {
    expect(edited([a, b, c])).toBe(text);
  });

  it("takes a problem's comments with it, and adds others with their form behind them", () => {
    expect(edited([c, d, a]).split("\n")).toEqual([
      "# For Tuesday.",
      "problems: 1   # the first",
      "title: Four",
      "date: 2026-07-01",
      "list:",
      "  # the hard ones",
      `  - ${c.code}  # hard`,
      `  - ${d.code}  # ${d.form.title}`,
      "  # warm up",
      `  - ${a.code}   # easy`,
      "note: Mind the flag.",
      "# The end.",
      "",
    ]);
    expect(codesOf(readBack(edited([c, d, a])))).toEqual([c.code, d.code, a.code]);
  });

  it("changes title and note, a list in brackets, and a file without a last line end", () => {
    const words = edited([a, b, c], { title: "Five: or so", note: "" });
    expect(words).toContain('title: "Five: or so"');
    expect(readBack(words)).toMatchObject({ title: "Five: or so", note: "" });
    const flow = `{ problems: 1, date: 2026-07-01, list: [${a.code}, ${b.code}] }`;
    const one = editProblemSet(flow, { title: "T", note: "", problems: [d] }, { path: "set.yaml" });
    expect(one.ok && readBack(one.text)).toMatchObject({ title: "T" });
    expect(one.ok && codesOf(readBack(one.text))).toEqual([d.code]);
    const short = `problems: 1\ndate: 2026-07-01\nlist:\n- ${a.code}`;
    const two = editProblemSet(short, { title: "", note: "", problems: [a, d] }, { path: "set.yaml" });
    expect(two.ok && two.text).toBe(`${short}\n- ${d.code}  # ${d.form.title}\n`);
  });

  it("is refused for a text that cannot be read", () => {
    expect(editProblemSet("scene: 1\n", set, { path: "set.yaml" })).toMatchObject({ ok: false });
    expect(editProblemSet("problems: [\n", set, { path: "set.yaml" })).toMatchObject({ ok: false });
  });
});

describe("the link", () => {
  it("gives back the same set, and is short", () => {
    const set = built({ count: 20, title: "Lesson [3] {a}", note: "\u00e9 \u2192" });
    const link = problemSetToLink(set, ISLES);
    expect(link).toMatch(/^p1\.[\w-]+\.[0-9a-z]{7}$/);
    expect(link.length).toBeLessThan(420);
    const back = problemSetFromLink(`https://example.org/bench#${link}`, ISLES);
    if (!back.ok) throw new Error(back.faults.join("\n"));
    expect(codesOf(back.set)).toEqual(codesOf(set));
    expect(back.set).toMatchObject({ title: set.title, note: set.note });
    expect(back.set.world.date).toBe(set.world.date);
    expect(back.set.world.stations).toBe(ISLES.stations);
    expect(back.notes).toEqual([]);
  });

  it("carries stations and land of one's own", () => {
    const stations = PRACTICE_ISLES.stations
      .slice(1)
      .map((station) => ({ ...station, name: `New ${station.name}` }));
    const world = practiceWorld({ name: "mine", date: "2026-05-01", stations, land: PRACTICE_ISLES.land });
    const set = built({ count: 5 }, world);
    const back = problemSetFromLink(problemSetToLink(set, ISLES), ISLES);
    if (!back.ok) throw new Error(back.faults.join("\n"));
    expect(codesOf(back.set)).toEqual(codesOf(set));
    expect(back.set.world.stations).toEqual(stations);
    expect(back.set.world.land).toBe(ISLES.land);
  });

  it.each([
    [
      "cut short",
      (link: string) => link.slice(0, -3),
      "the link was cut short on its way here; copy the whole of it again",
    ],
    [
      "changed",
      (link: string) => link.replace(/^p1\.../, "p1.xy"),
      "the link was changed on its way here; copy it again from where it was made",
    ],
    [
      "a scene's",
      (link: string) => link.replace("p1.", "s1."),
      /is no problem set's link; one has #p1\. and letters after it$/,
    ],
  ])("that was %s is refused in a sentence", (_, change, fault) => {
    const result = problemSetFromLink(change(problemSetToLink(built(), ISLES)), ISLES);
    expect(result.ok ? [] : result.faults).toEqual([
      fault instanceof RegExp ? expect.stringMatching(fault) : fault,
    ]);
  });

  it("says that the isles were redrawn since", () => {
    const link = problemSetToLink(built(), ISLES);
    const moved = ISLES.stations.map((station, at) => (at === 0 ? { ...station, elevationFt: 0 } : station));
    const result = problemSetFromLink(link, { ...ISLES, stations: moved });
    expect(result.ok ? [] : result.faults).toEqual([
      expect.stringMatching(/was made on other stations, another land or another date/),
    ]);
  });
});
