/** A scene's link gives back the very same scene; a broken one gives sentences and nothing else. */

import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { describe, expect, it, test } from "vitest";
import { Chart, fitView, THEMES } from "../src/draw/index.ts";
import { magneticDeg, stationDeg, trueDeg, turnBetween } from "../src/earth/index.ts";
import type { SignalConditions } from "../src/panel/index.ts";
import type { Station } from "../src/radio/index.ts";
import { reasonsFor } from "../src/reason/index.ts";
import {
  isSceneLink,
  type LinkWorld,
  LONGEST_LINK,
  readLand,
  readScene,
  readStations,
  resolveScene,
  type Scene,
  type SceneLinkRead,
  sceneFromLink,
  sceneToLink,
} from "../src/scene/index.ts";
import { sealLink } from "../src/scene/scene-link-envelope.ts";
import { sceneArbitrary } from "./scene-arbitraries.ts";
import { openFrom, tableText } from "./scene-files.ts";

const DEMO = new URL("../demo/", import.meta.url);
const demoText = (path: string): string => readFileSync(new URL(path, DEMO), "utf8");
const openDemo = (path: string) => ({
  path: path.replace("../", ""),
  text: demoText(path.replace("../", "")),
});

const STATIONS = readStations(demoText("ostrelle.stations.yaml"), {
  path: "ostrelle.stations.yaml",
  open: openDemo,
  date: "2026-07-01",
});
const LAND = readLand(demoText("ostrelle.land.yaml"), { path: "ostrelle.land.yaml" });
const WORLD: LinkWorld = {
  name: "the Ostrelle Isles",
  stations: STATIONS.ok ? STATIONS.stations : [],
  land: LAND.ok ? LAND.land : null,
};
const NO_WORLD: LinkWorld = { name: "nowhere", stations: [], land: null };
const KEYS = readdirSync(new URL("scenes/", DEMO)).sort();

function demoScene(key: string): Scene {
  const read = readScene(demoText(`scenes/${key}`), { path: key, open: openDemo });
  if (!read.ok) throw new Error(`${key} cannot be read`);
  return read.scene;
}
const FIRST = demoScene(KEYS[0]!);

const back = (link: string, world = WORLD): SceneLinkRead => sceneFromLink(link, { world });
const through = (scene: Scene, world = WORLD): Scene => {
  const read = back(sceneToLink(scene, { world }), world);
  if (!read.ok) throw new Error(read.faults.join("\n"));
  expect(read.notes).toEqual([]);
  return read.scene;
};
const faultsOf = (read: SceneLinkRead): readonly string[] => (read.ok ? [] : read.faults);

describe("the link of a scene", () => {
  it.each(KEYS)(
    "gives back the demo's %s, in under 1,500 characters that every program leaves alone",
    (key) => {
      const scene = demoScene(key);
      const link = sceneToLink(scene, { world: WORLD });
      expect(link).toMatch(/^s1\.[A-Za-z0-9_-]+\.[a-z0-9]{7}$/);
      expect(link.length).toBeLessThan(1500);
      const again = through(scene);
      expect(again).toEqual(scene);
      expect(resolveScene(again)).toEqual(resolveScene(scene));
    },
  );

  it("carries a land and stations of its own whole, where the other end has neither", () => {
    const link = sceneToLink(FIRST, { world: NO_WORLD });
    expect(link.length).toBeLessThan(LONGEST_LINK);
    expect(through(FIRST, NO_WORLD)).toEqual(FIRST);
  });

  it("over all of the demo's stations gives the very list of them, so that nothing about it is worked out anew", () => {
    expect(through(FIRST).stations).toBe(WORLD.stations);
    expect(through(FIRST).land).toBe(WORLD.land);
  });

  it("carries texts that a reader of files would stumble over", () => {
    const odd = {
      ...FIRST,
      title: "[".repeat(60),
      ask: "{ a: [b # c\u007f\u0085\u2028\ufeff\u0000",
      about: "\ud800 'x' \"y\"",
    };
    expect(through(odd)).toEqual(odd);
  });

  it("of a scene without a signal of its own is the link that it was before scenes had one", () => {
    const [, body = ""] = sceneToLink(FIRST, { world: WORLD }).split(".");
    const list: unknown[] = JSON.parse(Buffer.from(body, "base64url").toString());
    expect(list).toHaveLength(12);
    expect(back(sealLink(JSON.stringify(list)))).toMatchObject({ ok: true, scene: { signal: null } });
  });

  it("with a reflector of a VOR comes back though the DME that is tuned shares its ident and is read first", () => {
    const [vor] = FIRST.stations.filter(({ kind }) => kind === "VOR-DME");
    const dme: Station = {
      ...vor!,
      name: "Beside it",
      kind: "DME",
      frequencyMhz: 116.3,
      dmeChannel: "110X",
      vorClass: null,
    };
    const reflectors = [{ ident: vor!.ident, position: { latDeg: -10, lonDeg: 2 }, amplitude: 0.1 }];
    const signal: SignalConditions = { kind: "conventional", noiseDb: null, reflectors, propeller: null };
    const receivers = [{ ...FIRST.receivers[0]!, frequencyMhz: 116.3 }];
    for (const stations of [
      [dme, vor!],
      [vor!, dme],
    ]) {
      const scene: Scene = { ...FIRST, stations, receivers, signal };
      expect(back(sceneToLink(scene, { world: NO_WORLD }), NO_WORLD)).toMatchObject({
        ok: true,
        scene: { stations, receivers, signal },
      });
    }
  });

  it("with a reflector of a station that it has not is refused in a sentence", () => {
    const position = { latDeg: -10, lonDeg: 2 };
    const reflectors = [{ ident: "QQQ", position, amplitude: 0.1 }];
    const signal: SignalConditions = { kind: "doppler", noiseDb: 25, reflectors, propeller: null };
    const [fault] = faultsOf(back(sceneToLink({ ...FIRST, signal }, { world: WORLD })));
    expect(fault).toMatch(/^reflector station QQQ is no station of this scene; its stations are/);
  });

  it("carries the piece of the chart that was shown", () => {
    const view = { centre: { latDeg: -10.12345678901234, lonDeg: 2 }, widthNm: 63.25 };
    const read = back(sceneToLink(FIRST, { world: WORLD, view }));
    expect(read.ok && read.view).toEqual(view);
    const without = back(sceneToLink(FIRST, { world: WORLD }));
    expect(without.ok && without.view).toBeNull();
  });

  it.each([
    ["as a whole address", (link: string) => `http://127.0.0.1:4173/?a=b#${link}`],
    ["after its mark", (link: string) => `#${link}`],
    ["at the end of a sentence", (link: string) => `(see #${link}).`],
    ["broken over lines by a mail", (link: string) => `  #${link.replace(/.{70}/g, "$&\r\n")}\n`],
  ])("is read %s", (_, wrapped) => {
    const link = sceneToLink(FIRST, { world: WORLD });
    const read = back(wrapped(link));
    expect(faultsOf(read)).toEqual([]);
    expect(read.ok && read.scene).toEqual(FIRST);
  });

  it("is told from other marks in an address, whatever its version", () => {
    for (const link of ["#s1.a", "s2.x", "http://localhost/#s1.abc"]) expect(isSceneLink(link)).toBe(true);
    for (const other of ["", "#", "#scene=12-in-the-cone", "#a.s1.b", "scene: 1"])
      expect(isSceneLink(other)).toBe(false);
  });
});

/** A double as a link carries it. */
const carried = (value: number): number => (Math.abs(value) < 1e-6 ? Number(value.toFixed(30)) + 0 : value);
const withCarried = <T>(data: T): T =>
  JSON.parse(JSON.stringify(data), (_, value) => (typeof value === "number" ? carried(value) : value));

describe("any scene", () => {
  const calmWinds = sceneArbitrary.map((scene) => ({
    ...scene,
    wind: { from: trueDeg(Math.round(scene.wind.from)), speedKt: Math.round(scene.wind.speedKt * 10) / 10 },
  }));

  it("comes back as the very same", () => {
    fc.assert(
      fc.property(calmWinds, (scene) => {
        expect(withCarried(through(scene, NO_WORLD))).toEqual(withCarried(scene));
      }),
      { numRuns: 300 },
    );
  });

  it("comes back with its wind to four decimals, however many it had", () => {
    fc.assert(
      fc.property(sceneArbitrary, (scene) => {
        const { wind } = through(scene, NO_WORLD);
        expect(Math.abs(wind.speedKt - scene.wind.speedKt)).toBeLessThanOrEqual(0.00005);
        expect(Math.abs(turnBetween(wind.from, scene.wind.from))).toBeLessThanOrEqual(0.00005);
      }),
      { numRuns: 60 },
    );
  });

  it("over some of the demo's stations comes back with the demo's own objects, and the others written out", () => {
    const some = fc.subarray([...WORLD.stations], { minLength: 1 });
    const silenced = fc.array(fc.nat(7), { maxLength: 3 });
    fc.assert(
      fc.property(calmWinds, some, silenced, fc.boolean(), (scene, stations, off, overIsles) => {
        const mixed: Scene = {
          ...scene,
          stations: stations.map((each, index) =>
            off.includes(index) ? { ...each, status: "silent" as const } : each,
          ),
          land: overIsles ? WORLD.land : scene.land,
          // The stations that its reflectors are of are not among these.
          signal: scene.signal && { ...scene.signal, reflectors: [] },
        };
        const again = through(mixed);
        expect(withCarried(again)).toEqual(withCarried(mixed));
        again.stations.forEach((station, index) => {
          expect(WORLD.stations.includes(station)).toBe(
            WORLD.stations.includes(mixed.stations[index] as Station),
          );
        });
        if (overIsles) expect(again.land).toBe(WORLD.land);
      }),
      { numRuns: 60 },
    );
  });

  it("over a table with one ident many times comes back with each of them, in order", () => {
    const rows = [1, 2, 3].flatMap((id) => [
      `${id},AAA,One ${id},VOR-DME,113900,10.${id},20.5,100,113900,086X,,,,-1.25`,
      `${id + 10},B${id},Two ${id},DME,108100,10.${id},20.25,100,108100,018X,,,,`,
    ]);
    const read = readScene(
      "scene: 1\ndate: 2026-06-01\nstations: t.csv\naircraft: { at: [10, 20], altitude: 4000 }\nreceivers: [{ tune: 108.10 }]\n",
      { path: "s.yaml", open: openFrom({ "t.csv": tableText(...rows) }) },
    );
    if (!read.ok) throw new Error(read.faults[0]?.message);
    expect(read.scene.stations.map(({ ident }) => ident)).toEqual(["AAA", "B1", "AAA", "B2", "AAA", "B3"]);
    expect(through(read.scene)).toEqual(read.scene);
    // The station of the localizer channel that is tuned may be one of several of its ident.
    const tunedLater: Scene = {
      ...read.scene,
      stations: read.scene.stations.map((station) => ({ ...station, ident: "AAA" })),
    };
    expect(through(tunedLater)).toEqual(tunedLater);
  });
});

describe("a link of another edition", () => {
  it("opens, and says that the islands or the stations have changed", () => {
    const moved: LinkWorld = {
      ...WORLD,
      stations: WORLD.stations.map((station) => ({ ...station, elevationFt: station.elevationFt + 1 })),
    };
    const redrawn: LinkWorld = { ...WORLD, land: { ...WORLD.land!, islands: [] } };
    const link = sceneToLink(FIRST, { world: WORLD });
    const notes = (world: LinkWorld) => {
      const read = back(link, world);
      return read.ok ? read.notes : read.faults;
    };
    expect(notes(moved)).toEqual([
      "stations of the Ostrelle Isles changed since this link was made, so it may not show what its author saw",
    ]);
    expect(notes(redrawn)).toEqual([
      "the land of the Ostrelle Isles changed since this link was made, so it may not show what its author saw",
    ]);
  });

  it("names what this bench does not have", () => {
    const link = sceneToLink({ ...FIRST, stations: FIRST.stations.slice(0, 4) }, { world: WORLD });
    expect(faultsOf(back(link, NO_WORLD))).toEqual([
      "the link draws on the Ostrelle Isles, which this bench does not have; ask for the scene's file",
      ...["HJL", "PJH", "BJQ", "TXJ"].map(
        (ident) => `the link names the station ${ident} of nowhere, which has none of that ident`,
      ),
    ]);
  });
});

const LINK = sceneToLink(FIRST, { world: WORLD });
/** The list inside a link, changed, in a link whose letters fit again: what only someone who means harm would make. */
const forged = (change: (parts: unknown[]) => unknown): string => {
  const json = Buffer.from(LINK.split(".")[1]!, "base64url").toString("utf8");
  return sealLink(JSON.stringify(change(JSON.parse(json))));
};
const withPart = (index: number, value: unknown) => forged((parts) => parts.with(index, value));

test.each<[string, string, string]>([
  ["nothing", "", '"" is no scene\'s link; one has #s1. and letters after it'],
  ["another mark", "#scene=3", "scene=3 is no scene's link; one has #s1. and letters after it"],
  [
    "the end missing",
    LINK.slice(0, -30),
    "the link was cut short on its way here; copy the whole of it again",
  ],
  [
    "the last letter missing",
    LINK.slice(0, -1),
    "the link was cut short on its way here; copy the whole of it again",
  ],
  [
    "one letter other",
    LINK.replace(/\.(.)/, "._"),
    "the link was changed on its way here; copy it again from where it was made",
  ],
  [
    "something behind",
    `${LINK}.x`,
    "the link was changed on its way here; copy it again from where it was made",
  ],
  [
    "a later version",
    LINK.replace("s1", "s2"),
    "the link is written in version 2, and this bench reads version 1; open it with the bench it came from",
  ],
  [
    "64 kB and one",
    `#s1.${"A".repeat(LONGEST_LINK - 3)}`,
    "the link is 65537 characters long; a scene's link has at most 65536, so this is something else",
  ],
  [
    "no text",
    `s1.__79.${sealLink("x").slice(-7)}`,
    "the link was changed on its way here; copy it again from where it was made",
  ],
  ["no JSON", sealLink("scene: 1"), "the link holds no scene; make it again"],
  ["no list", sealLink("{}"), "the link holds no scene; make it again"],
  [
    "a heading of 900",
    withPart(6, [-10, 2, 900, 3500, 100]),
    "heading 900 is out of range; a heading is 000 to 360 degrees magnetic, such as 090",
  ],
  [
    "a number beyond all",
    sealLink('[0,"","","2026-07-01",[],0,[-10,2,1e999,3500,100],[0,0],[["NAV1",115.6]]]'),
    "heading Infinity is not a number; a heading is 000 to 360 degrees magnetic, such as 090",
  ],
  ["a wrong channel", withPart(8, [["NAV1", 108.1, 70]]), "NAV1 tune 108.10 is a localizer channel"],
  [
    "five receivers",
    withPart(8, Array(5).fill(["NAV1", 115.6])),
    "5 receivers are given; a scene has one to four",
  ],
  [
    "a cover of nothing",
    withPart(9, ["NAV7.needle"]),
    "cover NAV7.needle names NAV7, which the scene does not have",
  ],
  ["no such day", withPart(3, "2026-02-30"), "date 2026-02-30 is not in the calendar"],
  [
    "a station at the pole",
    withPart(4, [["TXJ", "VOR", 115.6, 89, 2]]),
    "latitude 89°00.0′N is too near a pole for radials",
  ],
  [
    "twenty-one of one ident",
    withPart(4, Array(21).fill(["TXJ", "VOR", 115.6, -10, 2])),
    "the link has more than 20 stations with the ident TXJ",
  ],
  [
    "a view of nowhere",
    withPart(11, [100, 0, 5]),
    "the link's piece of the chart is not a latitude, a longitude and a width in miles; make it again",
  ],
  [
    "depths",
    sealLink(`[0,"","","2026-07-01",[${"[".repeat(9000)}${"]".repeat(9000)}]]`),
    "the link has no aircraft; add aircraft: with at: and altitude: under it",
  ],
])("a link with %s is explained", (_, link, sentence) => {
  const faults = faultsOf(back(link));
  expect(faults[0]).toContain(sentence);
  expect(new Set(faults).size).toBe(faults.length);
});

/** One clear sentence: it begins and ends as our faults do, and is short enough to be read. */
function expectSentences(faults: readonly string[]): void {
  expect(faults.length).toBeGreaterThan(0);
  for (const fault of faults) {
    expect(fault).toMatch(/^\S[^\n\r\p{Cc}]{10,400}[^\s.!]$/u);
    expect(fault).not.toMatch(/undefined (is|has)|\[object|NaN|Error/);
  }
}

describe("five hundred broken links", () => {
  const links = KEYS.map((key) => sceneToLink(demoScene(key), { world: WORLD }));
  const alphabet = fc.constantFrom(..."ABCxyz019_-.#/ %=+é\n\u0000");

  it("changed on the way: each is told in one sentence, for none of them is read as a scene", () => {
    const broken = fc
      .record({
        link: fc.constantFrom(...links),
        at: fc.nat(),
        length: fc.integer({ min: 1, max: 60 }),
        put: fc.string({ unit: alphabet, maxLength: 12 }),
      })
      .map(({ link, at, length, put }) => {
        const start = at % link.length;
        return { link, text: link.slice(0, start) + put + link.slice(start + length) };
      })
      // A space or a mark behind it does a link no harm.
      .filter(
        ({ link, text }) =>
          text.replace(/[\s#]+/g, "").replace(/[^\w-]+$/, "") !== link && !text.includes("#"),
      );
    fc.assert(
      fc.property(broken, ({ text }) => {
        const read = back(text);
        expect(read.ok).toBe(false);
        expectSentences(faultsOf(read));
        expect(faultsOf(read)).toHaveLength(1);
      }),
      { numRuns: 500 },
    );
  });

  it("made to do harm, with letters that fit: each gives a scene that the bench can show, or sentences", () => {
    const value = fc.oneof(
      fc.jsonValue({ maxDepth: 4 }),
      fc.constantFrom<unknown>(
        null,
        true,
        -1,
        0,
        1,
        1e308,
        1e-300,
        "",
        "__proto__",
        "*a",
        "!x",
        "060",
        "- 1",
        [],
        {},
      ),
      fc.string({ maxLength: 300, unit: "binary" }),
    );
    const attack = fc.record({
      link: fc.constantFrom(...links),
      changes: fc.array(fc.record({ path: fc.array(fc.nat(12), { minLength: 1, maxLength: 4 }), value }), {
        minLength: 1,
        maxLength: 3,
      }),
    });
    let refused = 0;
    fc.assert(
      fc.property(attack, ({ link, changes }) => {
        const parts = JSON.parse(Buffer.from(link.split(".")[1]!, "base64url").toString("utf8"));
        const changed = changes.reduce((whole, change) => put(whole, change.path, change.value), parts);
        const read = back(sealLink(JSON.stringify(changed)));
        if (read.ok) expect(() => shown(read.scene)).not.toThrow();
        else {
          refused += 1;
          expectSentences(read.faults);
        }
      }),
      { numRuns: 500 },
    );
    // Else the attacks would not be any.
    expect(refused).toBeGreaterThan(150);
  });
});

/** All that the bench makes of a scene. */
function shown(scene: Scene): void {
  const situation = resolveScene(scene);
  reasonsFor(situation);
  const view = fitView(situation, 800, 600);
  renderToString(
    h(Chart, { situation, view, widthPx: 800, heightPx: 600, theme: THEMES.light, idPrefix: "c" }),
  );
}

/** The list with something else at a place inside it; where the way ends early, there. */
function put(whole: unknown, [index = 0, ...rest]: readonly number[], value: unknown): unknown {
  if (!Array.isArray(whole) || whole.length === 0) return value;
  const at = index % whole.length;
  return whole.with(at, rest.length === 0 ? value : put(whole[at], rest, value));
}

test("the scene on the bench after a turn of the course has another link", () => {
  const turned: Scene = {
    ...FIRST,
    aircraft: { ...FIRST.aircraft, heading: magneticDeg(123.4567890123) },
    receivers: FIRST.receivers.map((receiver) => ({ ...receiver, course: stationDeg(71) })),
  };
  expect(sceneToLink(turned, { world: WORLD })).not.toBe(LINK);
  expect(through(turned)).toEqual(turned);
});
