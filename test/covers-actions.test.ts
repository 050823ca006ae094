import { describe, expect, it } from "vitest";
import { parseCover } from "../src/scene/index.ts";
import { actOnCovers, LONGEST_ASK } from "../src/web/covers/cover-actions.ts";
import { coverGroups, coverWords, isInSight } from "../src/web/covers/cover-words.ts";
import { act } from "../src/web/state/actions.ts";
import { onRadial, situationOf, TXJ } from "./isles.ts";

const SCENE = situationOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 }).scene;
const put = (cover: string, scene = SCENE) => actOnCovers(scene, { kind: "put-cover", cover });

describe("covers by hand", () => {
  it("are put once, lifted one by one or all together, and change nothing else", () => {
    const both = put("aircraft", put("NAV1.needle"));
    expect(both).toEqual({ ...SCENE, covers: ["NAV1.needle", "aircraft"] });
    expect(put("aircraft", both)).toBe(both);
    expect(actOnCovers(both, { kind: "lift-cover", cover: "NAV1.needle" }).covers).toEqual(["aircraft"]);
    expect(actOnCovers(both, { kind: "lift-cover", cover: "chart" })).toBe(both);
    expect(actOnCovers(both, { kind: "lift-covers" }).covers).toEqual([]);
    expect(actOnCovers(SCENE, { kind: "lift-covers" })).toBe(SCENE);
    expect(SCENE.covers).toEqual([]);
  });

  it("are refused where the scene has no such thing", () => {
    for (const cover of ["NAV2", "NAV2.needle", "NAV1.knob", "needle", "", "NAV1.needle.x"])
      expect(put(cover)).toBe(SCENE);
  });

  it("come through the bench's one path", () => {
    expect(act(SCENE, { kind: "put-cover", cover: "heading" }).covers).toEqual(["heading"]);
    expect(act(put("heading"), { kind: "lift-cover", cover: "heading" }).covers).toEqual([]);
    expect(act(SCENE, { kind: "set-ask", ask: " Where are you? " }).ask).toBe("Where are you?");
  });

  it("a question is no longer than a file lets it be, and the same question changes nothing", () => {
    const asked = actOnCovers(SCENE, { kind: "set-ask", ask: "x".repeat(LONGEST_ASK + 5) });
    expect(asked.ask.length).toBe(LONGEST_ASK);
    expect(actOnCovers(asked, { kind: "set-ask", ask: asked.ask })).toBe(asked);
  });
});

describe("the list of what can be covered", () => {
  it("names each thing once, in words, and all of it can be put", () => {
    const coverables = coverGroups(SCENE).flatMap((group) => group.coverables);
    expect(new Set(coverables.map(({ cover }) => cover)).size).toBe(coverables.length);
    for (const { cover, long } of coverables) {
      expect(put(cover).covers).toEqual([cover]);
      expect(long).toBe(coverWords(cover));
      expect(parseCover(cover)).not.toBeNull();
    }
    expect(coverables.map(({ cover }) => cover)).toContain("NAV1.flag");
  });

  it("offers no flag of a magnetic indicator, but lets one that is covered be lifted", () => {
    const rmi = { ...SCENE, receivers: SCENE.receivers.map((each) => ({ ...each, face: "rmi" as const })) };
    const covers = (scene: typeof SCENE) =>
      coverGroups(scene).flatMap(({ coverables }) => coverables.map(({ cover }) => cover));
    expect(covers(rmi)).not.toContain("NAV1.flag");
    expect(covers({ ...rmi, covers: ["NAV1.flag"] })).toContain("NAV1.flag");
  });
});

it("a thing is in sight when neither it nor what it is a part of is covered", () => {
  expect(isInSight([], "NAV1.needle")).toBe(true);
  for (const cover of ["NAV1.needle", "NAV1", "panel"]) expect(isInSight([cover], "NAV1.needle")).toBe(false);
  for (const cover of ["NAV2", "NAV1.flag", "chart"]) expect(isInSight([cover], "NAV1.needle")).toBe(true);
  for (const cover of ["aircraft", "chart"]) expect(isInSight([cover], "aircraft")).toBe(false);
  expect(isInSight(["panel"], "heading")).toBe(true);
  expect(isInSight(["heading"], "heading")).toBe(false);
  expect(isInSight(["aircraft"], "chart")).toBe(true);
});
