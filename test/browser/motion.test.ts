/** Time on the bench in the real Chromium, used as a person would; what it shows is compared with the engine run here in Node. */

import axe from "axe-core";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { timeWords } from "../../src/draw/index.ts";
import { magneticDeg } from "../../src/earth/index.ts";
import { type Flight, flyOn, levelFlight } from "../../src/flight/index.ts";
import { resolveScene, type Scene } from "../../src/scene/index.ts";
import { benchUnderTest, type Visit } from "./bench-under-test.ts";
import { PHONE } from "./browser.ts";
import { demoScene, facesOf, facesOn } from "./demo-in-node.ts";

/** Toward Tamsel in a wind, DME and TO. */
const FIRST = demoScene("01-which-way-to-the-course");
/** Near overhead Skarrow, in the cone. */
const CONE = demoScene("12-in-the-cone");

const bench = benchUnderTest();

/** On a scene of the demo. */
const onBench = (key: string, use: (page: Page) => Promise<void>, visit: Visit = {}): Promise<void> =>
  bench.visit(use, { path: `#scene=${key}`, ...visit });

const button = (page: Page, name: string): Locator => page.getByRole("button", { name, exact: true });
const slider = (page: Page): Locator => page.getByRole("slider", { name: "Time of the flight" });
const speed = (page: Page): Locator => page.getByRole("combobox", { name: "Speed" });
const timeOn = (page: Page): Promise<string | null> => slider(page).getAttribute("aria-valuetext");
const pointOn = (page: Page): Promise<string | null> =>
  page.locator('[data-part="trail"] path').last().getAttribute("d");
const undo = (page: Page): Locator => button(page, "Undo");

const at = (scene: Scene, seconds: number, told: Partial<Flight> = {}): Scene => ({
  ...scene,
  aircraft: flyOn({ ...levelFlight(scene.aircraft), ...told }, scene, seconds).aircraft,
});
const expectFaces = (page: Page, scene: Scene): Promise<void> =>
  expect.poll(() => facesOn(page), { timeout: 5000 }).toEqual(facesOf(scene));
const dmeOn = async (page: Page): Promise<number> =>
  Number(/DME (\d+\.\d)/.exec((await facesOn(page))[0] ?? "")?.[1] ?? Number.NaN);

/** Plays until so many whole seconds of flight have gone by, and pauses. Gives the seconds flown. */
async function flyUntil(page: Page, seconds: number): Promise<number> {
  await button(page, "Play").click();
  await expect
    .poll(async () => Number(await slider(page).getAttribute("max")), { timeout: 60_000 })
    .toBeGreaterThanOrEqual(seconds);
  await button(page, "Pause").click();
  return Number(await slider(page).inputValue());
}

describe("play", () => {
  it("lets the DME count down as the engine flies it, until pause", () =>
    onBench("01", async (page) => {
      const before = await dmeOn(page);
      await speed(page).selectOption("20");
      const flown = await flyUntil(page, 60);
      // Reduced motion goes by whole seconds, so the time on the page is the flight's own.
      expect(await timeOn(page)).toBe(timeWords(flown));
      await expectFaces(page, at(FIRST, flown));
      expect(await dmeOn(page)).toBeLessThan(before - 1);
      await page.waitForTimeout(1300);
      await expectFaces(page, at(FIRST, flown));
    }));

  it("moves between the seconds too, but where reduced motion is wished", async () => {
    const moments = async (page: Page) => {
      await button(page, "Play").click();
      const seen = new Set<string | null>();
      const until = Date.now() + 2600;
      while (Date.now() < until)
        seen.add(
          await page
            .locator('[data-part="trail"] path')
            .last()
            .getAttribute("d")
            .catch(() => null),
        );
      await button(page, "Pause").click();
      return seen.size;
    };
    await onBench("01", async (page) => expect(await moments(page)).toBeGreaterThan(10), {
      reducedMotion: "no-preference",
    });
    await onBench("01", async (page) => expect(await moments(page)).toBeLessThan(5));
  });

  it("pauses when the page is hidden", () =>
    onBench("01", async (page) => {
      await button(page, "Play").click();
      await page.evaluate(() => {
        Object.defineProperty(document, "hidden", { value: true, configurable: true });
        document.dispatchEvent(new Event("visibilitychange"));
      });
      await button(page, "Play").waitFor();
    }));

  it("goes through the cone and out of it, and shows station passage as it is", () =>
    onBench("12", async (page) => {
      expect((await facesOn(page))[0]).toMatch(/OFF\. Needle parked/);
      await speed(page).selectOption("20");
      const flown = await flyUntil(page, 200);
      expect(facesOf(at(CONE, flown))[0]).toMatch(/FROM/);
      await expectFaces(page, at(CONE, flown));
    }));
});

describe("the flight", () => {
  it("is one entry to take back, and comes again", () =>
    onBench("01", async (page) => {
      await speed(page).selectOption("20");
      const flown = await flyUntil(page, 40);
      await undo(page).click();
      await expectFaces(page, FIRST);
      expect(await timeOn(page)).toBe("0 s");
      expect(await undo(page).isDisabled()).toBe(true);
      await button(page, "Redo").click();
      await expectFaces(page, at(FIRST, flown));
      expect(await timeOn(page)).toBe(timeWords(flown));
    }));

  it("is scrubbed back and forth, and playing on from there drops what came later", () =>
    onBench("01", async (page) => {
      await speed(page).selectOption("20");
      const flown = await flyUntil(page, 60);
      await slider(page).fill("20");
      await expectFaces(page, at(FIRST, 20));
      expect(await timeOn(page)).toBe("20 s");
      expect(await page.locator(".motion-time").textContent()).toBe(`20 s of ${timeWords(flown)}`);
      await slider(page).press("ArrowRight");
      await expectFaces(page, at(FIRST, 21));
      await slider(page).press("End");
      await expectFaces(page, at(FIRST, flown));
      await slider(page).fill("20");
      await button(page, "Step on by 10 s").click();
      await expectFaces(page, at(FIRST, 30));
      await undo(page).click();
      await expectFaces(page, at(FIRST, flown));
      await slider(page).fill("20");
      await speed(page).selectOption("5");
      await button(page, "Play").click();
      await expect.poll(() => timeOn(page), { timeout: 5000 }).toBe("25 s");
      await button(page, "Pause").click();
      expect(Number(await slider(page).getAttribute("max"))).toBeLessThan(flown);
    }));

  it("goes by steps of one and of ten seconds", () =>
    onBench("01", async (page) => {
      await button(page, "Step on by 10 s").click();
      await button(page, "Step on by 1 s").click();
      expect(await timeOn(page)).toBe("11 s");
      await expectFaces(page, at(FIRST, 11));
    }));

  it("turns and climbs as it is told, at standard rate", () =>
    onBench("01", async (page) => {
      await button(page, "More of the flight").click();
      await page.getByRole("spinbutton", { name: "Turn to heading" }).fill("120");
      expect(await page.locator(".motion-order").first().textContent()).toBe("right, 10 s at 3° a second");
      const climb = page.getByRole("spinbutton", { name: "Climb or descend to altitude" });
      await climb.fill("3600");
      await climb.press("Enter");
      await button(page, "Step on by 10 s").click();
      await button(page, "Step on by 10 s").click();
      expect(await page.getByRole("spinbutton", { name: "Heading", exact: true }).inputValue()).toBe("120");
      expect(await page.getByRole("spinbutton", { name: "Altitude", exact: true }).inputValue()).toBe(
        "3,600",
      );
      await expectFaces(page, at(FIRST, 20, { turningTo: magneticDeg(120), climbingToFt: 3600 }));
      expect(await page.locator(".motion-order").first().textContent()).toBe("holding its heading");
    }));

  it("draws its trail, through the place of every minute, and hides it with the aircraft", async () => {
    await onBench("01", async (page) => {
      expect(await page.locator('[data-part="trail"]').count()).toBe(0);
      for (let step = 0; step < 13; step++) await button(page, "Step on by 10 s").click();
      expect(await page.locator('[data-part="trail"] circle').count()).toBeGreaterThanOrEqual(1);
      expect(await pointOn(page)).toMatch(/^M[\d.]+ [\d.]+L/);
    });
    await onBench("22", async (page) => {
      for (let step = 0; step < 7; step++) await button(page, "Step on by 10 s").click();
      expect(await page.locator('[data-part="trail"]').count()).toBe(0);
    });
  });

  it("shows what the needle has shown, and is gone back in by pointing there", () =>
    onBench("12", async (page) => {
      await button(page, "More of the flight").click();
      await speed(page).selectOption("20");
      const flown = await flyUntil(page, 160);
      const plot = page.locator(".motion-history svg");
      const from = resolveScene(at(CONE, flown)).receivers[0]!;
      expect(await plot.locator("desc").textContent()).toContain(`NAV1 over ${timeWords(flown)}.`);
      expect(await plot.locator("desc").textContent()).toMatch(new RegExp(`Flag OFF, ${from.flag} at`));
      expect(await plot.locator("[data-line=needle]").count()).toBe(1);
      const now = (await plot.locator("[data-part=now]").boundingBox())!;
      const box = (await plot.boundingBox())!;
      const axis = (await plot.locator("[data-axis=time] line").first().boundingBox())!;
      await page.mouse.click((axis.x + now.x) / 2, box.y + box.height / 2);
      await expect
        .poll(async () => Math.abs(Number(await slider(page).inputValue()) - flown / 2))
        .toBeLessThan(flown / 20);
      const scrubbed = await page.locator(".motion-time").textContent();
      expect(scrubbed).toMatch(new RegExp(` of ${timeWords(flown)}$`));
    }));

  it("stays on the chart: the sheet goes on when the aircraft comes to its edge", () =>
    onBench("12", async (page) => {
      await speed(page).selectOption("20");
      await flyUntil(page, 620);
      const ground = (await page.locator(".chart-ground").boundingBox())!;
      const dart = (await page.getByRole("button", { name: /^Aircraft/ }).boundingBox())!;
      expect(dart.x).toBeGreaterThan(ground.x);
      expect(dart.x + dart.width).toBeLessThan(ground.x + ground.width);
      expect(dart.y + dart.height).toBeLessThan(ground.y + ground.height);
    }));
});

describe("by keyboard alone", () => {
  it("space plays and pauses, period and comma step, with Shift by ten", () =>
    onBench("01", async (page) => {
      await page.keyboard.press(".");
      await page.keyboard.press("Shift+>");
      await page.keyboard.press(",");
      expect(await timeOn(page)).toBe("10 s");
      await expectFaces(page, at(FIRST, 10));
      await page.keyboard.press("Shift+<");
      expect(await timeOn(page)).toBe("0 s");
      await page.keyboard.press("Space");
      await button(page, "Pause").waitFor();
      await page.keyboard.press("Space");
      await button(page, "Play").waitFor();
    }));

  it("leaves these keys to what is typed in and to buttons", () =>
    onBench("01", async (page) => {
      await page.getByRole("textbox", { name: "NAV1 frequency" }).focus();
      await page.keyboard.press(".");
      await page.keyboard.press("Escape");
      await undo(page).focus();
      await page.keyboard.press("Space");
      expect(await button(page, "Play").count()).toBe(1);
      expect(await timeOn(page)).toBe("0 s");
    }));

  it("reaches every control of the bar", () =>
    onBench("01", async (page) => {
      await button(page, "More of the flight").click();
      const names: (string | null)[] = [];
      await page.getByRole("spinbutton", { name: "Turn to heading" }).focus();
      for (let press = 0; press < 14; press++) {
        names.push(
          await page.evaluate(() => {
            const { activeElement: on } = document;
            return on?.getAttribute("aria-label") ?? on?.textContent ?? null;
          }),
        );
        await page.keyboard.press("Tab");
      }
      expect(names).toEqual(
        expect.arrayContaining([
          "Climb or descend to altitude",
          "Play",
          "Step on by 1 s",
          "Step on by 10 s",
          "More of the flight",
        ]),
      );
    }));
});

describe("for everyone", () => {
  it.each(["light", "dark"] as const)("the bar has nothing that axe-core objects to (%s)", (colorScheme) =>
    onBench(
      "01",
      async (page) => {
        await button(page, "More of the flight").click();
        for (let step = 0; step < 7; step++) await button(page, "Step on by 10 s").click();
        const violations = await page.evaluate<readonly unknown[]>(
          `${axe.source};axe.run(".motion", { resultTypes: ["violations"] }).then(({ violations }) => violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]))`,
        );
        expect(violations).toEqual([]);
      },
      { colorScheme },
    ),
  );

  it("is played by touch on a phone, with everything large enough for a finger", () =>
    onBench(
      "01",
      async (page) => {
        const pane = (name: string) => page.locator(".phone-tabs button", { hasText: name });
        await pane("Chart").tap();
        await button(page, "More of the flight").tap();
        await button(page, "Step on by 10 s").tap();
        await pane("Panel").tap();
        await expectFaces(page, at(FIRST, 10));
        await pane("Chart").tap();
        await button(page, "Play").tap();
        await expect.poll(() => timeOn(page), { timeout: 5000 }).not.toBe("10 s");
        await button(page, "Pause").tap();
        const small = await page
          .locator(".motion button, .motion select, .motion input")
          .evaluateAll((controls) =>
            controls
              .map((control) => ({
                box: control.getBoundingClientRect(),
                text: control.outerHTML.slice(0, 80),
              }))
              .filter(({ box }) => box.height < 44 && box.width > 0)
              .map(({ box, text }) => `${box.height} ${text}`),
          );
        expect(small.filter((text) => !text.includes("number-input"))).toEqual([]);
      },
      { viewport: PHONE, hasTouch: true, isMobile: true },
    ));
});
