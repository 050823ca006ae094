/** Identify in the real Chromium: what it plays is measured, what it shows and says is read. */

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import axe from "axe-core";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { benchUnderTest, type Visit } from "./bench-under-test.ts";
import { PHONE, pageFolder, serveBench } from "./browser.ts";
import {
  contextsOpened,
  giveEar,
  heardFor,
  heardLive,
  RENDER_HZ,
  readMorse,
  rms,
  sourcesSounding,
  strokesHeard,
  toneHz,
} from "./listen.ts";

const bench = benchUnderTest();

const POLL = { timeout: 10_000 };
/** A dot at 7 words a minute of 50 units: 60 s / 350. */
const DOT_S = 60 / 350;

/** On the bench with an ear on it. */
const listening = (use: (page: Page) => Promise<void>, { early, ...visit }: Visit = {}): Promise<void> =>
  bench.visit(use, {
    early: async (page) => {
      await giveEar(page);
      await early?.(page);
    },
    ...visit,
  });

const receiver = (page: Page, name: string): Locator =>
  page.getByRole("article", { name: `${name} receiver` });
const identify = (page: Page, name: string): Locator =>
  page.getByRole("button", { name: `Identify ${name}` });
const said = (page: Page, name: string): Promise<string | null> =>
  receiver(page, name).locator(".identify [role=status]").textContent();
const caption = (page: Page, name: string): Locator => receiver(page, name).locator(".ident-keying .note");
const picture = (page: Page, name: string): Locator => receiver(page, name).locator(".ident-keying svg");
const letters = (page: Page, name: string): Promise<string[]> =>
  picture(page, name).locator("text").allTextContents();

async function press(page: Page, name: string): Promise<void> {
  await identify(page, name).click();
  await expect.poll(() => sourcesSounding(page), POLL).toBeGreaterThan(0);
}

const STATIONS = readFileSync(
  fileURLToPath(new URL("../../demo/ostrelle.stations.yaml", import.meta.url)),
  "utf8",
);
const sceneOf = (lines: string): string => `scene: 1
title: My own
date: 2026-07-01
aircraft: { at: 10°18.8′S 002°03.7′E, heading: 090, altitude: 3500, tas: 100 }
${lines}`;

/** The bench started with a scene of one's own, beside the demo's station file. */
async function withOwn(lines: string, use: (page: Page) => Promise<void>): Promise<void> {
  const own = await serveBench(pageFolder(), {
    path: "/own/own.yaml",
    readText: (path) => ({ path, text: path.endsWith("own.yaml") ? sceneOf(lines) : STATIONS }),
    today: () => "2026-07-01",
  });
  try {
    await listening(use, { address: own.address });
  } finally {
    await own.close();
  }
}

const twoReceivers = (more: string): string => `stations: my.stations.yaml
receivers:
  - { name: NAV1, tune: TXJ, course: 070 }
  - { name: NAV2, tune: HJL, course: 098 }
${more}`;

describe("the sound", () => {
  it("is the station's ident at 1020 Hz, three times, and once its DME's at 1350 Hz", () =>
    listening(async (page) => {
      await press(page, "NAV1");
      const samples = await heardFor(page, 47);
      const strokes = strokesHeard(samples);
      expect(readMorse(strokes, DOT_S)).toBe("TXJ TXJ TXJ TXJ TXJ");
      const perIdent = 9;
      expect(strokes).toHaveLength(5 * perIdent);
      strokes.forEach((stroke, index) => {
        const turn = Math.floor(index / perIdent);
        const expectedHz = turn === 3 ? 1350 : 1020;
        expect(Math.abs(stroke.toneHz - expectedHz), `stroke ${index}: ${stroke.toneHz} Hz`).toBeLessThan(1);
      });
      // T -, X -..-, J .---: starts and lengths in dots, counted by hand from ITU-R M.1677-1.
      const starts = [0, 6, 10, 12, 14, 20, 22, 26, 30];
      const lengths = [3, 3, 1, 1, 3, 1, 3, 3, 3];
      strokes.forEach((stroke, index) => {
        const [turn, place] = [Math.floor(index / perIdent), index % perIdent];
        expect(Math.abs(stroke.startS - (10 * turn + starts[place]! * DOT_S))).toBeLessThan(0.008);
        expect(Math.abs(stroke.durationS - lengths[place]! * DOT_S)).toBeLessThan(0.012);
      });
    }));

  it("leaves for the loudspeaker, and ends at the second press", () =>
    listening(async (page) => {
      await press(page, "NAV1");
      // T begins with a dash of half a second; any dash of the ident will do.
      await expect
        .poll(async () => {
          const { samples, rateHz } = await heardLive(page);
          return rms(samples) > 0.1 ? Math.round(toneHz(samples, rateHz)) : 0;
        }, POLL)
        .toBe(1020);
      await identify(page, "NAV1").click();
      expect(await identify(page, "NAV1").getAttribute("aria-pressed")).toBe("false");
      expect(await sourcesSounding(page)).toBe(0);
      await expect.poll(async () => rms((await heardLive(page)).samples), POLL).toBeLessThan(1e-3);
      expect(await picture(page, "NAV1").count()).toBe(0);
    }));

  it("comes only with the press: before it no context is opened and no code for it loaded", () =>
    listening(async (page) => {
      const loaded = () =>
        page.evaluate(() => performance.getEntriesByType("resource").map((entry) => entry.name));
      expect((await loaded()).filter((name) => /speaker/.test(name))).toEqual([]);
      expect(await contextsOpened(page)).toBe(0);
      await press(page, "NAV1");
      expect((await loaded()).filter((name) => /speaker.*\.js$/.test(name))).toHaveLength(1);
      expect(await contextsOpened(page)).toBe(1);
      // And the same context serves every later press.
      await identify(page, "NAV1").click();
      await press(page, "NAV2");
      expect(await contextsOpened(page)).toBe(1);
    }));

  it("is of one receiver at a time", () =>
    listening(async (page) => {
      await press(page, "NAV1");
      await identify(page, "NAV2").click();
      expect(await identify(page, "NAV1").getAttribute("aria-pressed")).toBe("false");
      expect(await identify(page, "NAV2").getAttribute("aria-pressed")).toBe("true");
      const strokes = strokesHeard(await heardFor(page, 9));
      expect(readMorse(strokes, DOT_S)).toBe("HJL");
      expect(await picture(page, "NAV1").count()).toBe(0);
      expect(await letters(page, "NAV2")).toEqual(["H", "J", "L"]);
    }));

  it("ends when its receiver is tuned, not when the other one is, and with another scene", () =>
    listening(async (page) => {
      await press(page, "NAV1");
      const tune = async (name: string, to: string) => {
        await page.getByRole("textbox", { name: `${name} frequency` }).fill(to);
        await page.getByRole("textbox", { name: `${name} frequency` }).press("Enter");
      };
      await tune("NAV2", "115.60");
      expect(await sourcesSounding(page)).toBeGreaterThan(0);
      await tune("NAV1", "113.90");
      expect(await sourcesSounding(page)).toBe(0);
      expect(await identify(page, "NAV1").getAttribute("aria-pressed")).toBe("false");
      await tune("NAV1", "115.60");
      await press(page, "NAV1");
      // Another scene with the same receiver on the same channel.
      await page.evaluate(() => location.assign("#scene=07-full-scale"));
      await expect.poll(() => page.locator("h1").textContent(), POLL).not.toBe("Which way to the course?");
      expect(await page.getByRole("textbox", { name: "NAV1 frequency" }).inputValue()).toBe("115.60");
      expect(await sourcesSounding(page)).toBe(0);
    }));

  it("follows the aircraft: what is out of reach falls silent while one listens", () =>
    listening(async (page) => {
      await press(page, "NAV1");
      await page.getByRole("spinbutton", { name: "Altitude" }).fill("0");
      await page.getByRole("spinbutton", { name: "Altitude" }).press("Enter");
      await expect.poll(() => said(page, "NAV1"), POLL).toBe("Identify NAV1: silence, no ident.");
      expect(await identify(page, "NAV1").getAttribute("aria-pressed")).toBe("true");
      expect(rms(await heardFor(page, 6))).toBeLessThan(0.02);
      await page.getByRole("button", { name: "Undo" }).click();
      await expect.poll(() => said(page, "NAV1"), POLL).toBe("Identify NAV1: T, X, J.");
      expect(readMorse(strokesHeard(await heardFor(page, 9)), DOT_S)).toBe("TXJ");
    }));

  it("has a volume, set by keys and remembered", () =>
    listening(async (page) => {
      await press(page, "NAV1");
      const loud = rms(await heardFor(page, 1));
      const volume = page.getByRole("slider", { name: "Ident volume" });
      expect(await volume.inputValue()).toBe("60");
      await volume.focus();
      for (let step = 0; step < 6; step++) await page.keyboard.press("ArrowLeft");
      expect(await volume.inputValue()).toBe("30");
      // Half the slider is a quarter of the level.
      await expect.poll(async () => rms(await heardFor(page, 1)) / loud, POLL).toBeCloseTo(0.25, 2);
      await page.reload();
      await press(page, "NAV1");
      expect(await volume.inputValue()).toBe("30");
      expect(rms(await heardFor(page, 1)) / loud).toBeCloseTo(0.25, 2);
    }));
});

describe("what else may be heard", () => {
  it("nothing where nobody sends: a faint hiss, and words for it", () =>
    listening(async (page) => {
      await page.getByRole("textbox", { name: "NAV1 frequency" }).fill("117.95");
      await page.getByRole("textbox", { name: "NAV1 frequency" }).press("Enter");
      await press(page, "NAV1");
      const level = rms(await heardFor(page, 5));
      expect(level).toBeGreaterThan(0.0005);
      expect(level).toBeLessThan(0.01);
      expect(await said(page, "NAV1")).toBe("Identify NAV1: silence, no ident.");
      expect(await caption(page, "NAV1").textContent()).toBe("silence: no ident");
      expect(await picture(page, "NAV1").count()).toBe(0);
    }));

  it("T-E-S-T from a station on test", () =>
    listening(
      async (page) => {
        await press(page, "NAV1");
        expect(readMorse(strokesHeard(await heardFor(page, 15)), DOT_S)).toBe("TEST TEST");
        expect(await said(page, "NAV1")).toMatch(/^Identify NAV1: T, E, S, T\. .*do not use/);
        expect(await letters(page, "NAV1")).toEqual(["T", "E", "S", "T"]);
      },
      { path: "#scene=18-on-test" },
    ));

  it("the DME alone, higher and once in 40 seconds, the first at once", () =>
    listening(
      async (page) => {
        await press(page, "NAV1");
        const strokes = strokesHeard(await heardFor(page, 48));
        expect(readMorse(strokes, DOT_S)).toBe("BJQ BJQ");
        for (const stroke of strokes) expect(Math.abs(stroke.toneHz - 1350)).toBeLessThan(1);
        expect(strokes[0]!.startS).toBeLessThan(0.01);
        expect(strokes[12]!.startS).toBeCloseTo(40, 2);
        expect(await said(page, "NAV1")).toMatch(
          /^Identify NAV1: B, J, Q, on the higher tone of a DME, 1350 hertz/,
        );
        expect(await caption(page, "NAV1").textContent()).toMatch(/^DME alone, next in \d+ s/);
      },
      { path: "#scene=19-a-bearing-without-a-name" },
    ));

  it("a row of even dots from a test signal", () =>
    listening(
      async (page) => {
        await press(page, "NAV1");
        const strokes = strokesHeard(await heardFor(page, 7));
        expect(strokes.length).toBeGreaterThan(18);
        for (const [index, stroke] of strokes.slice(0, -1).entries()) {
          expect(Math.abs(stroke.durationS - DOT_S)).toBeLessThan(0.012);
          expect(Math.abs(stroke.startS - index * 2 * DOT_S)).toBeLessThan(0.008);
        }
        expect(await said(page, "NAV1")).toBe("Identify NAV1: a row of dots, the test signal.");
        expect(await letters(page, "NAV1")).toEqual([]);
      },
      { path: "#scene=23-proving-the-receiver" },
    ));

  it("two stations at once, each with its own tone and time", () => {
    const station = (ident: string, at: string) =>
      `  - { ident: ${ident}, kind: VOR, frequency: 115.60, at: ${at}, elevation: 20, declination: 9W }\n`;
    return withOwn(
      `stations:
${station("TXJ", "10°09.0′S 002°19.0′E")}${station("HJL", "10°20.0′S 001°27.0′E")}receivers:
  - { name: NAV1, tune: 115.60, course: 070 }
`,
      async (page) => {
        await press(page, "NAV1");
        expect(await said(page, "NAV1")).toBe("Identify NAV1: two idents at once, T, X, J and H, J, L.");
        expect(await picture(page, "NAV1").count()).toBe(2);
        expect(await letters(page, "NAV1")).toEqual(["T", "X", "J", "H", "J", "L"]);
        const samples = await heardFor(page, 9);
        const level = (fromS: number, toS: number, hz: number) =>
          toneLevel(samples.subarray(fromS * RENDER_HZ, toS * RENDER_HZ), hz);
        // T alone for its first half second; then, from 1.3 s, H's first dot beside X's first dash.
        expect(level(0.05, 0.45, 1020)).toBeGreaterThan(0.1);
        expect(level(0.05, 0.45, 1035)).toBeLessThan(0.02);
        expect(level(1.31, 1.46, 1020)).toBeGreaterThan(0.1);
        const whole = [1020, 1035].map((hz) => level(0, 9, hz));
        expect(whole[0]).toBeGreaterThan(0.03);
        expect(whole[1]).toBeGreaterThan(0.03);
      },
    );
  });
});

/** Amplitude of one frequency, by the discrete Fourier sum. */
function toneLevel(samples: Float32Array, hz: number): number {
  let [re, im] = [0, 0];
  samples.forEach((sample, index) => {
    re += sample * Math.cos((2 * Math.PI * hz * index) / RENDER_HZ);
    im += sample * Math.sin((2 * Math.PI * hz * index) / RENDER_HZ);
  });
  return (2 * Math.hypot(re, im)) / samples.length;
}

describe("the keying", () => {
  it("shows the code with its letters, and a light that keeps time with the sound", () =>
    listening(
      async (page) => {
        await press(page, "NAV1");
        expect(await said(page, "NAV1")).toBe("Identify NAV1: T, X, J.");
        expect(await letters(page, "NAV1")).toEqual(["T", "X", "J"]);
        expect(await picture(page, "NAV1").locator("[data-part=stroke]").count()).toBe(9);
        // Read in one frame: where the light stands, and how long the bars are.
        const read = () =>
          picture(page, "NAV1").evaluate((svg) => {
            const light = svg.querySelector("[data-part=light]");
            const bars = [...svg.querySelectorAll("[data-part=stroke] > rect:first-child")];
            const edge = (bar: Element | undefined, end: number) =>
              Number(bar?.getAttribute("x")) + end * Number(bar?.getAttribute("width"));
            return {
              atMs: performance.now(),
              x: light === null ? null : Number(light.getAttribute("x")) + 1.5,
              left: edge(bars[0], 0) - 0.5,
              right: edge(bars.at(-1), 1) + 0.5,
            };
          });
        // Caught early in an ident, so that its end is far enough.
        await expect
          .poll(async () => (await read()).x ?? Infinity, { ...POLL, interval: 20 })
          .toBeLessThan(60);
        const one = await read();
        await page.waitForTimeout(1500);
        const two = await read();
        // 33 dots from T's dash to J's last, by hand.
        const perSecondPx = (one.right - one.left) / (33 * DOT_S);
        const movedS = (two.x! - one.x!) / perSecondPx;
        expect(Math.abs(movedS - (two.atMs - one.atMs) / 1000)).toBeLessThan(0.1);
      },
      { reducedMotion: "no-preference" },
    ));

  it("stands still where reduced motion is wished, and names the letter", () =>
    listening(async (page) => {
      await press(page, "NAV1");
      const named: string[] = [];
      await expect
        .poll(
          async () => {
            const now = /now (\w)$/.exec((await caption(page, "NAV1").textContent()) ?? "")?.[1];
            if (now !== undefined && named.at(-1) !== now) named.push(now);
            expect(await picture(page, "NAV1").locator("[data-part=light]").count()).toBe(0);
            return named.join("");
          },
          { timeout: 25_000, interval: 60 },
        )
        .toContain("TXJ");
    }));

  it("is shown without a sound where the browser has none", () =>
    listening(
      async (page) => {
        await identify(page, "NAV1").click();
        expect(await said(page, "NAV1")).toBe("Identify NAV1: T, X, J.");
        expect(await letters(page, "NAV1")).toEqual(["T", "X", "J"]);
        expect(await receiver(page, "NAV1").locator(".ident-keying").textContent()).toMatch(/makes no sound/);
        await expect
          .poll(() => picture(page, "NAV1").locator("[data-letter=now]").textContent(), POLL)
          .toBe("X");
      },
      {
        early: (page) =>
          page.addInitScript(() => {
            Reflect.deleteProperty(globalThis, "AudioContext");
          }),
      },
    ));
});

describe("covers", () => {
  it.each(["NAV1.ident", "NAV1"])("of %s leave no sound, no code and no name", (cover) =>
    withOwn(twoReceivers(`cover: [${cover}]\n`), async (page) => {
      const column = receiver(page, "NAV1");
      await expect.poll(() => column.textContent(), POLL).toMatch(/covered/);
      expect(await identify(page, "NAV1").count()).toBe(0);
      expect(await column.locator("[role=status]").allTextContents()).not.toContainEqual(
        expect.stringMatching(/Identify/),
      );
      if (cover === "NAV1.ident")
        expect(await column.locator(".identify").textContent()).toBe("covered: ident");
      // No word, label or description of the column tells the letters.
      expect(await column.innerHTML()).not.toMatch(/TXJ|T, X|>[TXJ]</);
      expect(await contextsOpened(page)).toBe(0);
      // The other receiver is free, and what is covered stays so.
      await press(page, "NAV2");
      expect(await said(page, "NAV2")).toBe("Identify NAV2: H, J, L.");
      expect(await column.innerHTML()).not.toMatch(/TXJ|T, X|>[TXJ]</);
    }),
  );

  it("of the frequency leave the sound, and the reading of it to the listener", () =>
    withOwn(twoReceivers("cover: [NAV1.frequency]\n"), async (page) => {
      await press(page, "NAV1");
      expect(readMorse(strokesHeard(await heardFor(page, 9)), DOT_S)).toBe("TXJ");
      expect(await said(page, "NAV1")).toBe("Identify NAV1: 3 letters in code.");
      expect(await picture(page, "NAV1").locator("[data-part=stroke]").count()).toBe(9);
      expect(await letters(page, "NAV1")).toEqual([]);
      await expect
        .poll(() => caption(page, "NAV1").textContent(), POLL)
        .toBe("1020 Hz, every 10 s, now letter 2 of 3");
      const html = await receiver(page, "NAV1").locator(".identify").innerHTML();
      expect(html).not.toMatch(/TXJ|T, X, J|115|>[TXJ]</);
    }));

  it("do not tell what a code means that is to be read", () =>
    withOwn(
      `stations:
  - { ident: TXJ, kind: VOR, frequency: 115.60, at: 10°09.0′S 002°19.0′E, elevation: 20, declination: 9W, status: test }
receivers:
  - { name: NAV1, tune: 115.60, course: 070 }
cover: [NAV1.frequency]
`,
      async (page) => {
        await press(page, "NAV1");
        expect(await receiver(page, "NAV1").locator(".identify").innerHTML()).not.toMatch(
          /TXJ|TEST|T, E|on test|use/,
        );
      },
    ));

  it("put on while one listens end the sound", () =>
    listening(async (page) => {
      await press(page, "NAV1");
      await page.getByRole("button", { name: "Cover", exact: true }).click();
      await page.getByRole("checkbox", { name: /NAV1.*ident/i }).check();
      const row = receiver(page, "NAV1").locator(".identify");
      await expect.poll(() => row.textContent(), POLL).toBe("covered: ident");
      expect(await sourcesSounding(page)).toBe(0);
      expect(await row.innerHTML()).not.toMatch(/TXJ|T, X|>[TXJ]</);
    }));
});

describe("for everyone", () => {
  it("works by keyboard alone", () =>
    listening(async (page) => {
      await identify(page, "NAV1").focus();
      await page.keyboard.press("Enter");
      await expect.poll(() => sourcesSounding(page), POLL).toBeGreaterThan(0);
      await page.keyboard.press("Space");
      expect(await sourcesSounding(page)).toBe(0);
    }));

  it("works by a finger, and fits the phone", () =>
    listening(
      async (page) => {
        await identify(page, "NAV1").tap();
        await expect.poll(() => sourcesSounding(page), POLL).toBeGreaterThan(0);
        const volume = page.getByRole("slider", { name: "Ident volume" });
        for (const control of [identify(page, "NAV1"), volume])
          expect((await control.boundingBox())!.height).toBeGreaterThanOrEqual(44);
        const column = (await receiver(page, "NAV1").boundingBox())!;
        const shown = (await picture(page, "NAV1").boundingBox())!;
        expect(shown.x + shown.width).toBeLessThanOrEqual(column.x + column.width);
        // Nothing lies over it, nor does the edge of what scrolls cut it off.
        await expect
          .poll(
            () =>
              picture(page, "NAV1").evaluate((svg) => {
                const box = svg.getBoundingClientRect();
                return [box.top + 2, box.bottom - 2].every((y) =>
                  svg.contains(document.elementFromPoint(box.left + box.width / 2, y)),
                );
              }),
            POLL,
          )
          .toBe(true);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
          PHONE.width,
        );
      },
      { viewport: PHONE, hasTouch: true, isMobile: true },
    ));

  it.each(["light", "dark"] as const)(
    "has nothing that axe-core objects to while it sounds (%s)",
    (colorScheme) =>
      listening(
        async (page) => {
          await press(page, "NAV1");
          const violations = await page.evaluate<string[]>(
            // Evaluated by the debugger, which the content security policy of the page does not bind.
            `${axe.source};axe.run({ resultTypes: ["violations"] }).then((found) => found.violations.map((each) => each.id + ": " + each.nodes.map((node) => node.html).join(" | ")))`,
          );
          expect(violations).toEqual([]);
        },
        { colorScheme },
      ),
  );
});
