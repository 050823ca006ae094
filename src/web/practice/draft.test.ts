import { describe, expect, it } from "vitest";
import { PRACTICE_ISLES } from "../../../test/practice-world.ts";
import { type FormId, type Mode, makeProblem, optionsOf, type Problem } from "../../practice/index.ts";
import {
  letterOf,
  missing,
  moved,
  optionPlaces,
  optionTexts,
  orderOf,
  panelDraft,
  panelOf,
  partsOf,
  stepped,
  steppedDirection,
} from "./draft.ts";

function problemOf(form: FormId, mode: Mode): Problem {
  const made = makeProblem(PRACTICE_ISLES, form, mode, 3);
  if (made.kind === "none") throw new Error(made.says);
  return made.problem;
}

describe("a direction that is stepped", () => {
  it.each([
    ["", 1, "360"],
    ["360", 1, "001"],
    ["001", -1, "360"],
    ["5", 10, "015"],
    ["355", 10, "005"],
    ["eh", 10, "360"],
  ])("goes from %j by %d to %s", (typed, by, to) => {
    expect(steppedDirection(typed, by)).toBe(to);
  });
});

describe("a number that is stepped", () => {
  it.each([
    ["", 1, "10"],
    ["2.4", 0.1, "2.5"],
    ["0.1", -0.1, "0"],
    ["0", -1, "0"],
    ["0.3", -0.1, "0.2"],
  ])("goes from %j by %d to %s", (typed, by, to) => {
    expect(stepped(typed, by, 10)).toBe(to);
  });
});

describe("a panel that is put together", () => {
  it("comes back from its text, chosen or not", () => {
    for (const flag of ["TO", "FROM", "OFF", null] as const)
      for (const needle of ["full left", "centred", null] as const)
        expect(panelOf(panelDraft({ flag, needle }))).toEqual({ flag, needle });
    expect(panelOf("")).toEqual({ flag: null, needle: null });
  });
  it("says which half is missing", () => {
    const problem = problemOf("needle-forecast", "tell");
    expect(missing(problem, null, "")).toBe("Choose what the flag shows.");
    expect(missing(problem, null, panelDraft({ flag: "TO", needle: null }))).toBe(
      "Choose where the needle stands.",
    );
    expect(missing(problem, null, panelDraft({ flag: "TO", needle: "centred" }))).toBeNull();
  });
});

describe("an order", () => {
  it("moves one thing up or down, and no further than the end", () => {
    expect(moved(["A", "B", "C"], "B", -1)).toEqual(["B", "A", "C"]);
    expect(moved(["A", "B", "C"], "B", 1)).toEqual(["A", "C", "B"]);
    expect(moved(["A", "B", "C"], "A", -1)).toEqual(["A", "B", "C"]);
    expect(moved(["A", "B", "C"], "C", 1)).toEqual(["A", "B", "C"]);
  });
  it("is as listed until it has been made", () => {
    expect(orderOf("", ["A", "B"])).toEqual(["A", "B"]);
    expect(orderOf("BA", ["A", "B"])).toEqual(["B", "A"]);
    expect(orderOf("BB", ["A", "B"])).toEqual(["A", "B"]);
  });
});

describe("a draft", () => {
  it("is taken apart into as many parts as are wanted", () => {
    expect(partsOf("140/18", "/", 2)).toEqual(["140", "18"]);
    expect(partsOf("", "/", 2)).toEqual(["", ""]);
    expect(partsOf("1; ;3", ";", 3)).toEqual(["1", "", "3"]);
  });
  it("says what is missing, and nothing of the answer", () => {
    const tell = problemOf("read-radial", "tell");
    expect(missing(tell, null, "")).toMatch(/^Nothing is written; write a direction in three digits/);
    expect(missing(tell, null, "999")).toMatch(/cannot be read/);
    expect(missing(tell, null, "090")).toBeNull();
    const choose = problemOf("read-radial", "choose");
    expect(missing(choose, optionsOf(choose), "")).toBe("Choose one of the answers.");
    expect(missing(choose, optionsOf(choose), "A")).toBeNull();
    const wind = problemOf("wind-from-drift", "tell");
    expect(missing(wind, null, "/")).toBe("Say where the wind is from.");
    expect(missing(wind, null, "140/")).toBe("Say how strong the wind is.");
  });
});

describe("options", () => {
  it("are shown in words, each with its letter, and none says which is right", () => {
    const problem = problemOf("read-radial", "choose");
    const texts = optionTexts(problem, optionsOf(problem));
    expect(texts.map(({ text }) => text)).toEqual([...texts.map(({ text }) => text)].sort());
    expect(texts.map(({ key }) => key)).toEqual(texts.map((_, at) => at));
    expect(letterOf(1)).toBe("B");
    expect(optionPlaces(problem, optionsOf(problem))).toEqual([]);
  });
});
