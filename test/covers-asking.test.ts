/** Guesses stand beside the history of the scene: nothing that happens to the scene loses one or makes a right one wrong. */

import { beforeEach, describe, expect, it } from "vitest";
import { magneticDeg, stationDeg } from "../src/earth/index.ts";
import { type Asking, askingOf } from "../src/web/covers/asking.ts";
import { coverOfStrip } from "../src/web/covers/coverables-on-page.ts";
import { comparisonOf } from "../src/web/covers/outcome.tsx";
import { readAnswer } from "../src/web/covers/read-answer.ts";
import { type Bench, createBench } from "../src/web/state/bench.ts";
import { onRadial, situationOf, TXJ } from "./isles.ts";

const SCENE = situationOf({
  at: onRadial(TXJ, 246, 18),
  courseDeg: 70,
  headingDeg: 90,
  covers: ["NAV1.needle"],
}).scene;

let bench: Bench;
let asking: Asking;
beforeEach(() => {
  bench = createBench({ name: "a", origin: "file" }, SCENE);
  asking = askingOf(bench);
});
const left = (dots: number) => ({ kind: "needle", dots: -dots }) as const;
const answers = () => asking.asked.value?.given.map(({ answer }) => answer);

describe("guesses", () => {
  it("are kept through undo and redo of everything around them", () => {
    bench.act({ kind: "set-heading", heading: magneticDeg(120) });
    asking.give("NAV1.needle", left(1));
    bench.undo();
    asking.give("NAV1.needle", left(2));
    bench.redo();
    bench.undo();
    expect(answers()).toEqual([left(1), left(2)]);
    expect(bench.canUndo.value).toBe(false);
  });

  it("come to light when the cover is lifted, and are hidden again when that is taken back", () => {
    asking.give("NAV1.needle", left(3));
    expect(asking.asked.value?.lifted).toBe(false);
    expect(asking.revealed.value).toEqual([]);
    bench.act({ kind: "lift-cover", cover: "NAV1.needle" });
    expect(asking.asked.value?.lifted).toBe(true);
    expect(asking.revealed.value).toEqual(["NAV1.needle"]);
    bench.undo();
    expect(asking.asked.value?.lifted).toBe(false);
    expect(answers()).toEqual([left(3)]);
  });

  it("stay hidden while the part lies under a larger cover", () => {
    bench.act({ kind: "put-cover", cover: "panel" });
    asking.give("NAV1.needle", left(2));
    bench.act({ kind: "lift-cover", cover: "NAV1.needle" });
    expect(asking.revealed.value).toEqual([]);
    expect(asking.questions.value.map(({ cover }) => cover)).toEqual(["panel"]);
    bench.act({ kind: "lift-cover", cover: "panel" });
    expect(asking.revealed.value).toEqual(["NAV1.needle"]);
  });

  it("are judged by the situation they were made in", () => {
    asking.give("NAV1.needle", left(2));
    bench.act({ kind: "set-course", receiver: "NAV1", course: stationDeg(66) });
    asking.give("NAV1.needle", left(2));
    bench.act({ kind: "lift-covers" });
    const sentences = asking.asked.value?.given.map((each) => comparisonOf("NAV1.needle", each, []).sentence);
    expect(sentences).toEqual(["Right: 2 dots left.", "It is centred; you were 2 dots off."]);
  });

  it("belong to the scene they were made in, and come back with it", () => {
    asking.give("NAV1.needle", left(2));
    bench.open({ name: "b", origin: "file" }, { ...SCENE, covers: ["heading"] });
    expect(asking.questions.value.map(({ cover, given }) => [cover, given.length])).toEqual([["heading", 0]]);
    bench.undo();
    expect(answers()).toEqual([left(2)]);
  });

  it("may be another, and may be put away", () => {
    asking.draft("NAV1.needle", left(1));
    asking.give("NAV1.needle", left(1));
    expect(asking.asked.value).toMatchObject({ guessing: false, draft: null });
    asking.again("NAV1.needle");
    expect(asking.asked.value?.guessing).toBe(true);
    asking.give("NAV1.needle", { kind: "not-yet" });
    expect(answers()).toEqual([left(1), { kind: "not-yet" }]);
    bench.act({ kind: "lift-covers" });
    asking.putAway("NAV1.needle");
    expect(asking.asked.value).toBeNull();
  });

  it("are asked for under any of several covers", () => {
    bench.act({ kind: "put-cover", cover: "aircraft" });
    expect(asking.asked.value?.cover).toBe("NAV1.needle");
    asking.ask("aircraft");
    expect(asking.asked.value?.cover).toBe("aircraft");
    bench.act({ kind: "lift-cover", cover: "aircraft" });
    expect(asking.asked.value?.cover).toBe("NAV1.needle");
  });

  it("are the same for every part of the page that asks", () => {
    expect(askingOf(bench)).toBe(asking);
  });
});

describe("what is written for a guess", () => {
  const read = (kind: Parameters<typeof readAnswer>[0], text: string) =>
    readAnswer(kind, text, SCENE, "course");

  it("a place by radial and distance or by coordinates, a direction in three digits, words as they are", () => {
    expect(read("place", "txj 246/18")).toMatchObject({ kind: "place" });
    expect(read("place", "10°18.8′S 002°03.7′E")).toMatchObject({ kind: "place" });
    expect(read("direction", "070")).toEqual({ kind: "direction", deg: 70 });
    expect(read("direction", "0")).toEqual({ kind: "direction", deg: 360 });
    expect(read("words", "  abeam it ")).toEqual({ kind: "words", text: "abeam it" });
  });

  it("is explained where it is none", () => {
    expect(read("place", "QQQ 246/18")).toMatch(
      /no station of this scene has the ident QQQ.*write ident radial\/NM/,
    );
    expect(read("direction", "400")).toMatch(/not a course: three digits, 001 to 360/);
    for (const kind of ["place", "direction", "words", "needle", "flag"] as const)
      expect(read(kind, "")).toEqual(expect.stringMatching(/\w/));
  });
});

it("a strip stands for the cover that laid it there", () => {
  expect(coverOfStrip("needle", "NAV1", ["NAV1.needle"])).toBe("NAV1.needle");
  expect(coverOfStrip("TO/FROM", "NAV1", ["NAV1"])).toBe("NAV1");
  expect(coverOfStrip("DME", "NAV2", ["panel", "NAV1.dme"])).toBe("panel");
  expect(coverOfStrip("NAV1", "NAV1", ["NAV1"])).toBe("NAV1");
  expect(coverOfStrip("heading", null, ["heading"])).toBe("heading");
  expect(coverOfStrip("heading", "NAV2", ["heading"])).toBe("heading");
  expect(coverOfStrip("NAV2 course", null, ["aircraft", "NAV2.ident"])).toBe("NAV2.ident");
  expect(coverOfStrip("chart", null, ["chart"])).toBe("chart");
  expect(coverOfStrip("steps 7 to 10", null, ["NAV1.needle"])).toBeNull();
});
