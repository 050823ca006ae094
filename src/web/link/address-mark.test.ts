import { describe, expect, it } from "vitest";
import type { Scene } from "../../scene/index.ts";
import type { Opened } from "../state/bench.ts";
import { askedBy, markFor } from "./address-mark.ts";

describe("an address", () => {
  it.each([
    ["", { kind: "nothing" }],
    ["#", { kind: "nothing" }],
    ["#top", { kind: "nothing" }],
    ["#scene=12-in-the-cone", { kind: "demo", key: "12-in-the-cone" }],
    ["#s1.abc.0123456", { kind: "link", text: "#s1.abc.0123456" }],
    ["#s9.abc", { kind: "link", text: "#s9.abc" }],
  ])("that ends in %j asks for it", (hash, asked) => {
    expect(askedBy(hash)).toEqual(asked);
  });
});

describe("the mark", () => {
  const scene = (title: string) => ({ title }) as Scene;
  const [first, other, changed] = [scene("first"), scene("other"), scene("changed")];
  const opened = (asOpened: Scene, now: Scene, origin: Opened["origin"] = "demo"): Opened => ({
    name: asOpened.title,
    origin,
    asOpened,
    scene: now,
  });
  const mark = (of: Opened, hash = "", home = first) => markFor(of, { home, hash, link: () => "s1.link" });

  it("names a scene of the demo, and writes out whatever was changed", () => {
    expect(mark(opened(other, other))).toBe("#scene=other");
    expect(mark(opened(other, changed))).toBe("#s1.link");
    expect(mark(opened(first, changed))).toBe("#s1.link");
  });

  it("leaves the address bare for what a bare address opens, until another scene has been there", () => {
    expect(mark(opened(first, first))).toBe("");
    expect(mark(opened(first, first), "#scene=other")).toBe("#scene=first");
    expect(mark(opened(first, first, "file"), "#s1.link")).toBe("");
  });

  it("writes out a file of a person's own, which no name finds again", () => {
    expect(mark(opened(other, other, "file"))).toBe("#s1.link");
  });

  it("is empty for a scene that no link can hold", () => {
    const given = { home: first, hash: "#s1.old", link: () => null };
    expect(markFor(opened(other, changed), given)).toBe("");
  });
});
