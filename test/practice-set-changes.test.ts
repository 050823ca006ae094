/** The instructor's desk: wishes read, changes to a set, each with its way back, kept in the browser. */

import { describe, expect, it } from "vitest";
import {
  buildSet,
  firedSlips,
  type ProblemSet,
  problemSetFromLink,
  problemSetToLink,
} from "../src/practice/index.ts";
import { moved, replaced, withCode, without } from "../src/web/practice-sets/set-changes.ts";
import { createSetDesk, SETS_KEY } from "../src/web/practice-sets/set-desk.ts";
import { FIRST_WISHES, readWishForm, toggled, wishesOf } from "../src/web/practice-sets/wishes.ts";
import { HJL, situationOf, TXJ } from "./isles.ts";
import { PRACTICE_ISLES } from "./practice-world.ts";

const LINKS = { name: PRACTICE_ISLES.name, stations: PRACTICE_ISLES.stations, land: PRACTICE_ISLES.land };

const built = (count: number, seed = 5): ProblemSet => {
  const made = buildSet(PRACTICE_ISLES, {
    skills: ["centre-and-read", "in-or-out-course"],
    slips: [],
    count,
    seed,
    mode: "choose",
  });
  if (made.kind === "none") throw new Error(made.says);
  return made.set;
};
const codes = ({ problems }: ProblemSet) => problems.map(({ code }) => code);

describe("wishes", () => {
  it("are read, and what cannot be read is said", () => {
    expect(wishesOf({ ...FIRST_WISHES, title: " Spokes ", count: "4", seed: "9" })).toMatchObject({
      title: "Spokes",
      count: 4,
      seed: 9,
    });
    expect(wishesOf(FIRST_WISHES)).toMatchObject({ title: "Problems", count: 10 });
    for (const count of ["0", "201", "", "ten", "1.5"])
      expect(wishesOf({ ...FIRST_WISHES, count })).toContain("write 1 to 200");
    for (const seed of ["-1", "x", "4294967296"])
      expect(wishesOf({ ...FIRST_WISHES, seed })).toContain("no seed");
  });

  it("kept by another edition are read as far as they go", () => {
    expect(
      readWishForm({ title: "Mine", skills: ["side-of-line", "levitation"], mode: "sing", count: 3 }),
    ).toEqual({
      ...FIRST_WISHES,
      title: "Mine",
      skills: ["side-of-line"],
    });
    expect(readWishForm(null)).toEqual(FIRST_WISHES);
  });

  it("are ticked and unticked", () => {
    expect(toggled(toggled([1, 2], 3), 2)).toEqual([1, 3]);
  });
});

describe("a set", () => {
  const set = built(5);

  it("loses a problem, but never its last", () => {
    const less = without(set, 1);
    expect(typeof less !== "string" && codes(less)).toEqual(codes(set).filter((_, at) => at !== 1));
    expect(without(built(1), 0)).toContain("at least one");
  });

  it("has its problems moved, and kept at the edges", () => {
    const [a, b, ...rest] = codes(set);
    expect(codes(moved(set, 1, -1))).toEqual([b, a, ...rest]);
    expect(moved(set, 0, -1)).toBe(set);
    expect(moved(set, 4, 1)).toBe(set);
  });

  it("has another like it in a problem's place", () => {
    const other = replaced(set, 2, 77);
    if (typeof other === "string") throw new Error(other);
    const [was, is] = [set.problems[2], other.problems[2]];
    if (was === undefined || is === undefined) throw new Error("no third problem");
    expect(is.code).not.toBe(was.code);
    expect(is.form.id).toBe(was.form.id);
    expect(firedSlips(is)).toEqual(firedSlips(was));
  });

  it("takes a problem by its code, once, and says what is wrong with a code", () => {
    const code = codes(built(1, 99))[0] ?? "";
    const more = withCode(set, code.toLowerCase());
    if (typeof more === "string") throw new Error(more);
    expect(codes(more)).toEqual([...codes(set), code]);
    expect(withCode(more, code)).toBe(`${code} is in the set already, as number 6.`);
    expect(withCode(set, "4K7-Q2M")).toContain("has nine letters and digits");
  });
});

describe("the desk", () => {
  const desk = (kept = new Map<string, string>()) =>
    createSetDesk({
      isles: PRACTICE_ISLES,
      links: LINKS,
      benchScene: () => situationOf({ at: TXJ.position, stations: [HJL, TXJ] }).scene,
      toLink: (set) => problemSetToLink(set, LINKS),
      fromLink: (link) => {
        const read = problemSetFromLink(link, LINKS);
        return read.ok ? read.set : null;
      },
      store: { getItem: (key) => kept.get(key) ?? null, setItem: (key, text) => void kept.set(key, text) },
      seed: () => 4,
    });

  it("makes a set of its wishes, takes every change back and does it again", () => {
    const at = desk();
    at.wish({ count: "3", skills: ["side-of-line"] });
    at.make();
    const first = at.set.value;
    expect(first?.problems.length).toBe(3);
    at.another(0);
    at.remove(1);
    const last = at.set.value;
    expect(last?.problems.length).toBe(2);
    at.undo();
    at.undo();
    expect(at.set.value).toBe(first);
    expect(at.canUndo.value).toBe(true);
    at.redo();
    at.redo();
    expect(at.set.value).toBe(last);
    expect(at.canRedo.value).toBe(false);
    at.undo();
    at.undo();
    at.undo();
    expect(at.set.value).toBe(null);
  });

  it("says what cannot be made, and leaves the set as it is", () => {
    const at = desk();
    at.make();
    const before = at.set.value;
    at.wish({ count: "many" });
    at.make();
    expect(at.notes.value).toEqual([expect.stringContaining("“many” is no number of problems")]);
    expect(at.set.value).toBe(before);
  });

  it("finds wishes and set again after the page was closed", () => {
    const kept = new Map<string, string>();
    const before = desk(kept);
    before.wish({ title: "Tuesday", count: "4" });
    before.make();
    before.remove(3);
    const after = desk(kept);
    expect(after.wishes.value.title).toBe("Tuesday");
    expect(after.set.value?.problems.map(({ code }) => code)).toEqual(
      before.set.value?.problems.map(({ code }) => code),
    );
    kept.set(SETS_KEY, "{spoilt");
    expect(desk(kept).set.value).toBe(null);
  });

  it("sets problems on the stations of the bench", () => {
    const at = desk();
    at.standOn("bench");
    at.wish({ count: "2", skills: ["centre-and-read"] });
    at.make();
    expect(at.set.value?.world.stations.map(({ ident }) => ident)).toEqual(["HJL", "TXJ"]);
  });

  it("follows a problem that is moved, and looks at one that is added", () => {
    const at = desk();
    at.wish({ count: "4" });
    at.make();
    at.look(2);
    at.move(2, 1);
    expect(at.at.value).toBe(3);
    at.add(codes(built(1, 123))[0] ?? "");
    expect(at.at.value).toBe(4);
    at.remove(4);
    expect(at.at.value).toBe(3);
  });
});
