import { describe, expect, it } from "vitest";
import { PRACTICE_ISLES } from "../../../test/practice-world.ts";
import {
  buildSet,
  practiceWorld,
  problemSetToLink,
  type World,
  writeProblemSet,
} from "../../practice/index.ts";
import { linkWorld } from "../link/demo-world.ts";
import { offerOf, offerOfFile, setLinkIn, worldOfLink } from "./offers.ts";

const LINKS = linkWorld(PRACTICE_ISLES);
const open = (text: string) => offerOf(text, PRACTICE_ISLES, LINKS);

function setOn(world: World) {
  const built = buildSet(world, {
    title: "Two",
    note: "For Tuesday.",
    skills: ["side-of-line"],
    slips: [],
    count: 2,
    seed: 3,
    mode: "choose",
  });
  if (built.kind === "none") throw new Error(built.says);
  return built.set;
}

/** Some of the isles, as an instructor's own stations. */
const OWN = practiceWorld({
  name: "my stations",
  date: "2026-05-04",
  stations: PRACTICE_ISLES.stations.slice(0, 4),
  land: null,
});

describe("what is opened", () => {
  it("is a set by its link, alone or in an address, with its title and note", async () => {
    const set = setOn(PRACTICE_ISLES);
    const link = problemSetToLink(set, LINKS);
    for (const text of [link, `#${link}`, `  http://127.0.0.1:8790/#${link}\n`])
      expect(await open(text)).toMatchObject({
        kind: "set",
        plan: { title: "Two", note: "For Tuesday.", codes: set.problems.map(({ code }) => code), link: "" },
      });
    expect(setLinkIn("4K7-Q2M-9XD")).toBeNull();
  });

  it("is a set on stations of its own, which its link brings back", async () => {
    const set = setOn(OWN);
    const offer = await open(problemSetToLink(set, LINKS));
    if (offer.kind === "fault") throw new Error(offer.says.join());
    expect(offer.plan.link).not.toBe("");
    const world = await worldOfLink(offer.plan.link, LINKS);
    expect(world?.mark).toBe(OWN.mark);
    expect(await worldOfLink("p1.spoilt", LINKS)).toBeNull();
  });

  it("is one problem by its code, or by the address that ends in it", async () => {
    const [problem] = setOn(PRACTICE_ISLES).problems;
    for (const text of [problem!.code, problem!.code.toLowerCase(), `http://x/#practice=${problem!.code}`])
      expect(await open(text)).toMatchObject({ kind: "set", plan: { codes: [problem!.code] } });
  });

  it("is refused with a sentence where it is nothing, or was made on other stations", async () => {
    const [foreign] = setOn(OWN).problems;
    for (const text of ["", "hello", "p1.AAAA", foreign!.code]) {
      const offer = await open(text);
      if (offer.kind === "set") throw new Error(`${text} was opened`);
      for (const says of offer.says) expect(says).toMatch(/^[“A-Z0-9].*\.$/s);
    }
  });

  it("is a set by its file, or the file's faults", async () => {
    const set = setOn(PRACTICE_ISLES);
    const text = writeProblemSet(set, { isles: LINKS });
    const offer = await offerOfFile(text, "two.yaml", PRACTICE_ISLES, LINKS);
    expect(offer).toMatchObject({ kind: "set", plan: { title: "Two" } });
    const bad = await offerOfFile("problems: 1\nlist: [ABC]\n", "bad.yaml", PRACTICE_ISLES, LINKS);
    expect(bad.kind === "fault" && bad.says.some((says) => says.includes("bad.yaml:2"))).toBe(true);
  });
});
