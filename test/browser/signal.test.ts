/** The signal's pictures in the real Chromium: chosen by mouse, key and finger, in step with the scene, silent about what is covered. */

import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { objections } from "./axe.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { PHONE } from "./browser.ts";
import { contextsOpened, giveEar, sourcesSounding } from "./listen.ts";

const bench = benchUnderTest();

const POLL = { timeout: 10_000 };
const TOUCH = { viewport: PHONE, hasTouch: true, isMobile: true };

const onBench = bench.visit;

const view = (page: Page): Locator => page.locator('[data-view="signal"]');
const tab = (page: Page, name: string): Locator =>
  page.getByRole("group", { name: "Picture of the signal" }).getByRole("button", { name });
const picture = (page: Page, name: string): Locator => page.locator(`[data-picture="${name}"]`);
const said = (page: Page, name: string): Promise<string | null> =>
  picture(page, name).locator("desc").textContent();
const enlarge = (page: Page): Promise<void> =>
  page.getByRole("button", { name: "Enlarge the signal" }).click();
const hands = (page: Page): Locator => page.getByRole("group", { name: "The lighthouse's time" });
const beamDeg = async (page: Page): Promise<number> =>
  Number(await page.locator("[data-beam]").getAttribute("data-beam"));

describe("the pictures of the signal", () => {
  it("are chosen one at a time, by mouse and by key, and the choice is kept", () =>
    onBench(async (page) => {
      await tab(page, "Composite").click();
      await picture(page, "composite").waitFor();
      await tab(page, "Spectrum").press("Enter");
      await picture(page, "spectrum").waitFor();
      expect(await said(page, "spectrum")).toMatch(/^The spectrum of TXJ: a line at 30 hertz, 30 percent/);
      expect(await tab(page, "Spectrum").getAttribute("aria-pressed")).toBe("true");
      expect(await picture(page, "composite").count()).toBe(0);
      await page.reload();
      await picture(page, "spectrum").waitFor();
    }));

  it("stand all together where there is room, and are found without fault, light and dark", async () => {
    for (const colorScheme of ["light", "dark"] as const)
      await onBench(
        async (page) => {
          await enlarge(page);
          for (const name of ["composite", "spectrum", "rose", "lighthouse"])
            await picture(page, name).waitFor();
          expect(await page.locator('[data-peak="variable"]').count()).toBe(1);
          await page.waitForTimeout(300);
          expect(await objections(page)).toEqual([]);
        },
        { colorScheme },
      );
  });

  it("follow the course and the aircraft", () =>
    onBench(async (page) => {
      await tab(page, "Angle").click();
      await picture(page, "rose").waitFor();
      expect(await said(page, "rose")).toMatch(
        /lags the reference by 246 degrees, 22\.8 .* runs 070 and 250: the needle is 2 dots left, TO/,
      );
      await page.getByRole("spinbutton", { name: "NAV1 course", exact: true }).fill("066");
      await expect
        .poll(() => said(page, "rose"), POLL)
        .toMatch(/runs 066 and 246: the needle is centred, TO/);
      await page.getByRole("button", { name: /^Aircraft/ }).press("Shift+ArrowDown");
      await expect.poll(() => said(page, "rose"), POLL).not.toMatch(/by 246 degrees/);
    }));

  it("light themselves and the reasons that speak of them when pointed at", () =>
    onBench(async (page) => {
      await tab(page, "Angle").click();
      await picture(page, "rose").locator('[data-part="radial"] text').first().hover();
      await expect.poll(() => page.locator('.chain [data-lit="true"]').count(), POLL).toBeGreaterThan(0);
      expect(await picture(page, "rose").locator('[data-lit="yes"]').count()).toBeGreaterThan(0);
    }));
});

describe("the lighthouse", () => {
  const open = async (page: Page): Promise<void> => {
    await tab(page, "Lighthouse").click();
    await picture(page, "lighthouse").waitFor();
  };

  it("turns once in the seconds chosen: 060 two seconds after the flash", () =>
    onBench(
      async (page) => {
        await page.clock.install();
        await open(page);
        expect(await page.locator("[data-flash]").count()).toBe(1);
        // From here the page's time goes on only when told to, however busy the machine is.
        await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 5000);
        await hands(page).getByRole("button", { name: "Play" }).click();
        await page.clock.runFor(2020);
        await hands(page).getByRole("button", { name: "Pause" }).click();
        const at = await beamDeg(page);
        expect(at).toBeGreaterThan(57);
        expect(at).toBeLessThan(63);
        expect(await page.locator("[data-flash]").count()).toBe(0);
        await page.clock.runFor(3000);
        expect(await beamDeg(page)).toBe(at);
      },
      { reducedMotion: "no-preference" },
    ));

  it("goes second by second where reduced motion is wished", () =>
    onBench(async (page) => {
      await page.clock.install();
      await open(page);
      await hands(page).getByRole("button", { name: "Play" }).click();
      const seen = new Set<number>();
      for (let step = 0; step < 12; step++) {
        await page.clock.runFor(250);
        seen.add(await beamDeg(page));
      }
      for (const deg of seen) expect(deg % 30).toBe(0);
      expect(seen.size).toBeGreaterThanOrEqual(3);
    }));

  it("is stepped, scrubbed and slowed by keys", () =>
    onBench(async (page) => {
      await open(page);
      await hands(page).getByRole("button", { name: "Step on" }).press("Enter");
      await hands(page).getByRole("button", { name: "Step on" }).press("Enter");
      expect(await beamDeg(page)).toBe(60);
      await hands(page).getByRole("button", { name: "Step back" }).press("Enter");
      expect(await beamDeg(page)).toBe(30);
      const scrub = hands(page).getByRole("slider", { name: "Time since the flash" });
      await scrub.fill("6");
      expect(await beamDeg(page)).toBe(180);
      expect(await scrub.getAttribute("aria-valuetext")).toBe("6.00 seconds");
      await hands(page).getByRole("combobox", { name: "Seconds for a turn" }).selectOption("30");
      expect(await beamDeg(page)).toBe(180);
      expect(await said(page, "lighthouse")).toMatch(
        /turns once in 30 seconds\. It sweeps you 20\.5\d seconds after the flash/,
      );
      expect(await view(page).textContent()).toContain("not true north");
    }));

  it("is worked with a finger on a phone, and found without fault", () =>
    onBench(async (page) => {
      await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: "Signal" }).tap();
      await tab(page, "Lighthouse").tap();
      await hands(page).getByRole("button", { name: "Step on" }).tap();
      expect(await beamDeg(page)).toBe(30);
      const note = (await page.getByText("This is a picture.").boundingBox())!;
      expect(note.height).toBeGreaterThan(12);
      expect(note.y + note.height).toBeLessThan(PHONE.height);
      const sheet = (await picture(page, "lighthouse").boundingBox())!;
      for (const text of await picture(page, "lighthouse").locator("text").all()) {
        const box = (await text.boundingBox())!;
        expect(box.y + box.height, (await text.textContent()) ?? "").toBeLessThanOrEqual(
          sheet.y + sheet.height,
        );
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        PHONE.width,
      );
      expect(await objections(page)).toEqual([]);
    }, TOUCH));
});

describe("what is heard of the signal", () => {
  it("sounds on request, and ends at a second press, under a cover, and put away", async () => {
    const context = await bench.browser().newContext({
      viewport: { width: 1440, height: 900 },
      reducedMotion: "reduce",
    });
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await giveEar(page);
    try {
      await page.goto(`${bench.address()}/`);
      await tab(page, "Hear").click();
      const tones = page.getByRole("button", { name: "30 Hz × 16" });
      await tones.waitFor();
      expect(await contextsOpened(page)).toBe(0);
      const begun = async (): Promise<void> => {
        await tones.click();
        await expect.poll(() => sourcesSounding(page), POLL).toBe(1);
      };
      await begun();
      expect(await view(page).textContent()).toContain("480 Hz");
      await page.getByRole("button", { name: "9960 Hz ÷ 16" }).click();
      await expect.poll(() => view(page).textContent(), POLL).toContain("622.5 Hz");
      await page.getByRole("button", { name: "9960 Hz ÷ 16" }).click();
      await expect.poll(() => sourcesSounding(page), POLL).toBe(0);
      await begun();
      await page.getByRole("button", { name: "Put away the signal" }).click();
      await expect.poll(() => sourcesSounding(page), POLL).toBe(0);
      await page.keyboard.press("3");
      await begun();
      await page.keyboard.press("c");
      await page.getByRole("checkbox", { name: "the signal", exact: true }).check();
      await expect.poll(() => sourcesSounding(page), POLL).toBe(0);
      expect(await tones.count()).toBe(0);
    } finally {
      await context.close();
    }
  });
});
