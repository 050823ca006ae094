/**
 * The sheet that has the signal measured, in the real Chromium, used as an instructor would: turned on, spoilt, taken back, kept. What the
 * faces show is compared with the engine run here in Node, which demodulates the same samples.
 */

import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { readScene, resolveScene, type Scene, sceneFromLink } from "../../src/scene/index.ts";
import { linkWorld } from "../../src/web/link/demo-world.ts";
import { act, type SceneAction } from "../../src/web/state/actions.ts";
import { PLAIN_SIGNAL } from "../../src/web/state/signal-actions.ts";
import { objections } from "./axe.ts";
import { benchUnderTest, type Visit } from "./bench-under-test.ts";
import { LAPTOP, PHONE } from "./browser.ts";
import { demoScene, facesOf, facesOn } from "./demo-in-node.ts";

const FIRST = demoScene("01-which-way-to-the-course");
/** The reflector as a scene file has it: TXJ 300/2. */
const HANGAR = demoScene("28-an-echo-from-a-hangar").signal!.reflectors[0]!;

const bench = benchUnderTest();
const onBench = (use: (page: Page) => Promise<void>, visit: Visit = {}): Promise<void> =>
  bench.visit(use, { path: "#scene=01", ...visit });

/** Longer than any motion of the page, on a machine that is busy with other things. */
const POLL = { timeout: 15_000 };
/** A browser without file pickers of its own saves as a download. */
const DOWNLOADS = { before: () => void Reflect.deleteProperty(window, "showSaveFilePicker") };
const TOUCH = { viewport: PHONE, hasTouch: true, isMobile: true };

const changedBy = (...actions: SceneAction[]): Scene => actions.reduce(act, FIRST);
const expectFaces = (page: Page, scene: Scene): Promise<void> =>
  expect.poll(() => facesOn(page), POLL).toEqual(facesOf(scene));
const radialOf = (scene: Scene): number => resolveScene(scene).receivers[0]?.radial ?? Number.NaN;

const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole("button", { name, exact: typeof name === "string" });
const sheet = (page: Page): Locator => page.locator("#tool-sheet");
const opener = (page: Page): Locator => page.locator("#tool-signal");
const kind = (page: Page, name: string): Locator =>
  page.getByRole("group", { name: "Measured", exact: true }).getByRole("button", { name, exact: true });
const standsAt = (page: Page): Locator => page.getByRole("textbox", { name: "Stands at" });
const amplitude = (page: Page): Locator => page.getByRole("textbox", { name: "Amplitude" });
const focused = (element: Locator): Promise<boolean> => element.evaluate((each) => each.matches(":focus"));
const expectFocus = (element: Locator): Promise<void> => expect.poll(() => focused(element), POLL).toBe(true);
const onChart = (page: Page): Locator => page.locator(".chart-ground > svg [data-reflector]");

const ON: SceneAction = { kind: "set-signal", signal: PLAIN_SIGNAL };
const QUIET: SceneAction = { kind: "set-noise", noiseDb: null };
const ADDED: SceneAction = { kind: "add-reflector", reflector: { ...HANGAR, amplitude: 0.5 } };

/** Everything on the sheet is as large as a finger. */
async function expectFingerSizes(page: Page): Promise<void> {
  for (const control of await sheet(page).locator("button, select, input, label.signal-tick").all()) {
    // A box to tick is as large as its words.
    if (await control.evaluate((each) => each.matches("label input"))) continue;
    const box = (await control.boundingBox())!;
    expect(box.height, await control.evaluate((each) => each.outerHTML)).toBeGreaterThanOrEqual(44);
    expect(box.width).toBeGreaterThanOrEqual(44);
  }
}

async function addHangar(page: Page): Promise<void> {
  await button(page, "New reflector").click();
  await standsAt(page).fill("txj 300/2");
  await amplitude(page).fill("0.5");
  await button(page, "Add the reflector").click();
}

describe("the measured signal", () => {
  it("is turned on, and an echo moves the needle as the demodulated radial has it; taken back step by step", () =>
    onBench(async (page) => {
      const [plain, quiet, bent] = [changedBy(ON), changedBy(ON, QUIET), changedBy(ON, QUIET, ADDED)];
      // Else nothing below would show.
      expect(Math.abs(radialOf(bent) - radialOf(FIRST))).toBeGreaterThan(3);
      expect(facesOf(bent)).not.toEqual(facesOf(FIRST));
      await opener(page).click();
      expect(await opener(page).textContent()).toBe("Measured: off");
      await kind(page, "Conventional").click();
      await expectFaces(page, plain);
      expect(await opener(page).textContent()).toBe("Measured: conventional");
      await page.getByRole("checkbox", { name: "Noise" }).uncheck();
      await expectFaces(page, quiet);
      await addHangar(page);
      await expectFaces(page, bent);
      await expect.poll(() => onChart(page).count(), POLL).toBe(1);
      await kind(page, "Doppler").click();
      const doppler: SceneAction = { kind: "set-signal-kind", signalKind: "doppler" };
      await expectFaces(page, changedBy(ON, QUIET, ADDED, doppler));
      for (const scene of [bent, quiet, plain, FIRST]) {
        await button(page, "Undo").click();
        await expectFaces(page, scene);
      }
      expect(await onChart(page).count()).toBe(0);
      for (const scene of [plain, quiet, bent]) {
        await button(page, "Redo").click();
        await expectFaces(page, scene);
      }
      await sheet(page).getByText("TXJ 300/2").waitFor();
    }));

  it("comes back as it was when it is turned off and on again", () =>
    onBench(async (page) => {
      await opener(page).click();
      await kind(page, "Conventional").click();
      await page.getByRole("checkbox", { name: "Noise" }).uncheck();
      await addHangar(page);
      await kind(page, "Off").click();
      await expectFaces(page, FIRST);
      await kind(page, "Conventional").click();
      await expectFaces(page, changedBy(ON, QUIET, ADDED));
    }));

  it("has reflectors that are changed, made stronger and taken away", () =>
    onBench(async (page) => {
      await opener(page).click();
      await kind(page, "Conventional").click();
      await page.getByRole("checkbox", { name: "Noise" }).uncheck();
      await addHangar(page);
      const stepper = page.getByRole("spinbutton", { name: "TXJ 300/2 amplitude" });
      await stepper.press("ArrowUp");
      await expect.poll(() => stepper.inputValue(), POLL).toBe("0.55");
      await stepper.fill("1,5");
      await stepper.press("Enter");
      await sheet(page)
        .getByText("“1,5” will not do: an amplitude is 0 to 0.9 of the direct signal, such as 0.1")
        .waitFor();
      await button(page, "Change TXJ 300/2").click();
      expect(await standsAt(page).inputValue()).toBe("TXJ 300/2");
      expect(await page.getByRole("combobox", { name: "Throws back" }).inputValue()).toBe("TXJ");
      await amplitude(page).fill(".3");
      await button(page, "Save").click();
      // The place was not retyped, so it is the very same.
      const weaker = { ...HANGAR, amplitude: 0.3 };
      await expectFaces(page, changedBy(ON, QUIET, { kind: "add-reflector", reflector: weaker }));
      await button(page, "Change TXJ 300/2").click();
      await standsAt(page).fill("TXJ 120/1.5");
      await button(page, "Save").click();
      await button(page, "Remove TXJ 120/1.5").click();
      await expectFaces(page, changedBy(ON, QUIET));
      await expectFocus(button(page, "New reflector"));
    }));

  it("refuses a wrong place or strength in one sentence each, and changes nothing", () =>
    onBench(async (page) => {
      await opener(page).click();
      await kind(page, "Conventional").click();
      await button(page, "New reflector").click();
      const faults: [string, string][] = [
        [
          "",
          "Where it stands is missing; write a station's radial and miles such as TXJ 300/2, or latitude and longitude.",
        ],
        ["TXJ 400/2", 'The radial in "TXJ 400/2" is 400; it must be 001 to 360.'],
        ["TXY 300/2", "No station of this scene has the ident TXY; did you mean TXJ?"],
        ["TXJ 300/400", "400 NM is too far; a position is at most 300 NM from its station."],
      ];
      for (const [text, sentence] of faults) {
        await standsAt(page).fill(text);
        await standsAt(page).press("Enter");
        await expect.poll(() => page.locator("#reflector-at-fault").textContent(), POLL).toBe(sentence);
        await expectFocus(standsAt(page));
        expect(await standsAt(page).getAttribute("aria-invalid")).toBe("true");
      }
      await standsAt(page).fill("TXJ 300/2");
      await amplitude(page).fill("half");
      await amplitude(page).press("Enter");
      await expect
        .poll(() => page.locator("#reflector-amplitude-fault").textContent(), POLL)
        .toBe("“half” will not do: an amplitude is 0 to 0.9 of the direct signal, such as 0.1.");
      await expectFaces(page, changedBy(ON));
      await button(page, "Cancel").click();
      expect(await onChart(page).count()).toBe(0);
    }));

  it("takes a reflector's place from a press on the chart, and its station from the place that is typed", () =>
    onBench(async (page) => {
      await opener(page).click();
      await kind(page, "Conventional").click();
      await button(page, "New reflector").click();
      await standsAt(page).fill("HJL 100/3");
      expect(await page.getByRole("combobox", { name: "Throws back" }).inputValue()).toBe("HJL");
      await page.getByRole("combobox", { name: "Throws back" }).selectOption("TXJ");
      await button(page, "Pick on the chart").click();
      const chart = (await page.locator(".chart-ground").boundingBox())!;
      await page.mouse.click(chart.x + chart.width * 0.7, chart.y + chart.height * 0.6);
      await expect.poll(() => standsAt(page).inputValue(), POLL).toMatch(/^TXJ \d{3}\/\d+(\.\d)?$/);
      await expectFaces(page, changedBy(ON));
      await page.keyboard.press("Enter");
      await expect.poll(() => onChart(page).count(), POLL).toBe(1);
    }));

  it("is set by keyboard alone, from S to Escape", () =>
    onBench(async (page) => {
      const keys = page.keyboard;
      await page.getByRole("button", { name: /^Aircraft/ }).focus();
      await keys.press("s");
      await expectFocus(kind(page, "Off"));
      await keys.press("Tab");
      await keys.press("Enter");
      await expectFaces(page, changedBy(ON));
      await keys.press("Tab");
      await keys.press("Tab");
      await expectFocus(page.getByRole("checkbox", { name: "Noise" }));
      await keys.press("Space");
      await expectFaces(page, changedBy(ON, QUIET));
      await keys.press("Tab");
      await expectFocus(page.getByRole("checkbox", { name: "Propeller" }));
      await keys.press("Space");
      const speed = page.getByRole("spinbutton", { name: "Propeller speed" });
      await speed.focus();
      await keys.press("Shift+ArrowUp");
      await keys.press("ArrowDown");
      const propeller = { speedRpm: 1900, blades: 2 };
      await expectFaces(page, changedBy(ON, QUIET, { kind: "set-propeller", propeller }));
      await sheet(page).getByText("63.3 blades pass in a second.").waitFor();
      await keys.press("Enter");
      expect(await speed.inputValue()).toBe("1900");
      await button(page, "New reflector").focus();
      await keys.press("Enter");
      await expectFocus(standsAt(page));
      // A letter that is typed is no key of the table.
      await keys.type("s");
      await keys.press("Backspace");
      await keys.type("txj 300/2");
      await keys.press("Tab");
      await keys.press("Tab");
      await keys.press("Tab");
      await expectFocus(amplitude(page));
      await keys.press("Control+a");
      await keys.type("0.5");
      await keys.press("Enter");
      await expectFaces(page, changedBy(ON, QUIET, { kind: "set-propeller", propeller }, ADDED));
      await expectFocus(button(page, "New reflector"));
      await keys.press("Escape");
      await expect.poll(() => sheet(page).count(), POLL).toBe(0);
      await expectFocus(opener(page));
      await keys.press("s");
      await sheet(page).waitFor();
      await keys.press("s");
      await expect.poll(() => sheet(page).count(), POLL).toBe(0);
    }));
});

describe("where the sheet lies", () => {
  it("on the chart, or on the signal where that fills the table; never while projecting", () =>
    onBench(async (page) => {
      await page.keyboard.press("s");
      await page.locator('[data-view="chart"] #tool-sheet').waitFor();
      await button(page, "Enlarge the signal").click();
      await page.locator('[data-view="signal"] #tool-sheet').waitFor();
      await kind(page, "Conventional").click();
      await button(page, "New reflector").click();
      await standsAt(page).waitFor();
      expect(await button(page, "Pick on the chart").count()).toBe(0);
      await page.keyboard.press("Escape");
      await button(page, "Project").click();
      await page.keyboard.press("s");
      await page.waitForTimeout(300);
      expect(await sheet(page).count()).toBe(0);
    }));

  it("and gives the focus back to where it came from while its own button is out of sight", () =>
    onBench(
      async (page) => {
        const dart = page.getByRole("button", { name: /^Aircraft/ });
        await dart.focus();
        await page.keyboard.press("s");
        await expectFocus(kind(page, "Off"));
        await page.keyboard.press("Escape");
        await expectFocus(dart);
      },
      { viewport: LAPTOP },
    ));

  it("in reach of a finger on a tablet", () =>
    onBench(
      async (page) => {
        await page.keyboard.press("s");
        await kind(page, "Conventional").tap();
        await addHangar(page);
        await page.getByRole("checkbox", { name: "Propeller" }).tap();
        await expectFingerSizes(page);
      },
      { ...TOUCH, viewport: LAPTOP },
    ));

  it("among the tools of a phone, in reach of a finger", () =>
    onBench(async (page) => {
      await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: "Signal" }).tap();
      await button(page, "Measured: off").tap();
      await kind(page, "Conventional").tap();
      await page.getByRole("checkbox", { name: "Noise" }).tap();
      await page.getByRole("checkbox", { name: "Propeller" }).tap();
      await page.getByRole("checkbox", { name: "Propeller" }).tap();
      await button(page, "New reflector").tap();
      await standsAt(page).fill("TXJ 300/2");
      await amplitude(page).fill("0.5");
      await expectFingerSizes(page);
      await button(page, "Add the reflector").tap();
      await expect.poll(() => onChart(page).count(), POLL).toBe(1);
      await page.getByRole("checkbox", { name: "Propeller" }).tap();
      await expectFingerSizes(page);
      await page.getByRole("checkbox", { name: "Propeller" }).tap();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        PHONE.width,
      );
      await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: "Panel" }).tap();
      await expectFaces(page, changedBy(ON, QUIET, ADDED));
    }, TOUCH));
});

describe("what it leaves behind", () => {
  it("is in the link and in the saved file", () =>
    onBench(async (page) => {
      await opener(page).click();
      await kind(page, "Doppler").click();
      await addHangar(page);
      await page.getByRole("checkbox", { name: "Propeller" }).check();
      const expected = {
        kind: "doppler",
        noiseDb: 25,
        reflectors: [{ ...HANGAR, amplitude: 0.5 }],
        propeller: { speedRpm: 1810, blades: 2 },
      };
      const near = (scene: Scene) => {
        const { reflectors = [], ...rest } = scene.signal ?? {};
        return {
          ...rest,
          reflectors: reflectors.map(({ position: { latDeg, lonDeg }, ...others }) => ({
            ...others,
            // A centimetre, as files and links keep it.
            position: { latDeg: latDeg.toFixed(6), lonDeg: lonDeg.toFixed(6) },
          })),
        };
      };
      const wanted = near({ ...FIRST, signal: expected as Scene["signal"] });
      await expect
        .poll(() => {
          const read = sceneFromLink(page.url(), { world: linkWorld(FIRST) });
          return read.ok ? near(read.scene) : null;
        }, POLL)
        .toEqual(wanted);
      const download = page.waitForEvent("download");
      await page.keyboard.press("Control+s");
      const text = readFileSync(await (await download).path(), "utf8");
      const read = readScene(text, {
        path: "saved.yaml",
        open: (path) => ({
          path,
          text: readFileSync(new URL(`../../demo/${path.replace("../", "")}`, import.meta.url), "utf8"),
        }),
      });
      if (!read.ok) throw new Error(read.faults[0]?.message);
      expect(near(read.scene)).toEqual(wanted);
    }, DOWNLOADS));

  it("tells nothing of a covered signal, nor of reflectors beside a covered station", () =>
    onBench(async (page) => {
      await opener(page).click();
      await kind(page, "Doppler").click();
      await addHangar(page);
      await page.keyboard.press("c");
      await page.getByRole("checkbox", { name: "NAV1 frequency" }).check();
      await expect.poll(() => sheet(page).textContent(), POLL).toContain("covered: reflectors");
      expect(await sheet(page).textContent()).not.toContain("TXJ");
      await page.getByRole("checkbox", { name: "the signal", exact: true }).check();
      await expect.poll(() => opener(page).textContent(), POLL).toBe("Measured");
      expect(await sheet(page).textContent()).toContain("covered: signal");
      expect(await kind(page, "Doppler").count()).toBe(0);
      expect(await page.locator("#tool-sheet input").count()).toBe(0);
    }));
});

describe("for everyone", () => {
  it.each([
    ["light", false],
    ["dark", false],
    ["light", true],
    ["dark", true],
  ] as const)("axe-core objects to nothing (%s, phone %s)", (colorScheme, phone) =>
    onBench(
      async (page) => {
        await page.keyboard.press("s");
        await kind(page, "Conventional").waitFor();
        expect(await objections(page), "off").toEqual([]);
        await kind(page, "Conventional").click();
        await addHangar(page);
        await page.getByRole("checkbox", { name: "Propeller" }).check();
        expect(await objections(page), "all on").toEqual([]);
        await button(page, "New reflector").click();
        await button(page, "Add the reflector").click();
        await page.locator("#reflector-at-fault:not(:empty)").waitFor();
        expect(await objections(page), "a place refused").toEqual([]);
      },
      { colorScheme, ...(phone ? TOUCH : {}) },
    ),
  );
});
