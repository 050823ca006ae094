/** Home in the real Chromium: what a newcomer finds there, and the ways from it to the bench and back. */

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { resolveScene, TRAINING_CAUTION } from "../../src/scene/index.ts";
import { act } from "../../src/web/state/actions.ts";
import { objections } from "./axe.ts";
import { benchUnderTest, type Visit } from "./bench-under-test.ts";
import { LAPTOP, PHONE, pageFolder } from "./browser.ts";
import { demoScene, facesOf, facesOn } from "./demo-in-node.ts";

const FIRST = demoScene("01-which-way-to-the-course");
const OVERHEAD = demoScene("12-in-the-cone");
const POLL = { timeout: 15_000 };
const MOST_SCRIPT_BYTES = 150_000;

const bench = benchUnderTest();

const onPage = (path: string, use: (page: Page) => Promise<void>, visit: Visit = {}): Promise<void> =>
  bench.visit(use, { path, ...(path === "#home" && { ready: ".home" }), ...visit });

const home = (page: Page) => page.getByRole("heading", { name: "Needlework", level: 1 });
const goHome = (page: Page) => page.getByRole("button", { name: "Home", exact: true }).click();
const cards = (page: Page) => page.locator(".scene-card");
const expectFaces = (page: Page, scene: Parameters<typeof facesOf>[0]): Promise<void> =>
  expect.poll(() => facesOn(page), POLL).toEqual(facesOf(scene));

describe("home", () => {
  it("says what this is, lists the scenes in teaching order with what they show, and the caution", () =>
    onPage("#home", async (page) => {
      expect(await home(page).isVisible()).toBe(true);
      expect(await page.getByText(TRAINING_CAUTION).isVisible()).toBe(true);
      const told = await page.locator(".scene-words").allTextContents();
      expect(told.length).toBeGreaterThanOrEqual(10);
      expect(told[0]).toContain(FIRST.title);
      expect(told[11]).toContain(OVERHEAD.title);
      for (const text of told) expect(text).toMatch(/^\d+ .+[.?!]$/);
      expect(await page.title()).toBe("Needlework");
    }));

  it("draws each scene small once it comes near, with the scene's own aircraft and needle", () =>
    onPage("#home", async (page) => {
      const drawn = page.locator(".thumbnail > svg");
      await expect.poll(() => drawn.count(), POLL).toBeGreaterThan(3);
      const all = await cards(page).count();
      expect(await drawn.count()).toBeLessThan(all);
      await cards(page).last().scrollIntoViewIfNeeded();
      for (let y = 0; y < 6000; y += 500) await page.mouse.wheel(0, -500);
      await expect.poll(() => drawn.count(), POLL).toBe(all);
      const face = cards(page).nth(11).locator(".thumbnail-face desc");
      expect(await face.textContent()).toBe(facesOf(OVERHEAD)[0]);
    }));

  it("opens a scene, by mouse; Back comes home, and forward goes to the scene again", () =>
    onPage("", async (page) => {
      await goHome(page);
      expect(page.url()).toContain("#home");
      await page.getByRole("link", { name: new RegExp(OVERHEAD.title) }).click();
      await expectFaces(page, OVERHEAD);
      expect(page.url()).toContain("#scene=12-in-the-cone");
      await page.reload();
      await expectFaces(page, OVERHEAD);
      await page.goBack();
      await home(page).waitFor();
      await page.goForward();
      await expectFaces(page, OVERHEAD);
      await goHome(page);
      await page.getByRole("link", { name: new RegExp(`^1 ${FIRST.title.replace("?", "\\?")}`) }).click();
      await expectFaces(page, FIRST);
      await page.getByRole("button", { name: "Undo" }).click();
      await expectFaces(page, OVERHEAD);
    }));

  it("goes back to the bench as it was left, by keys alone", () =>
    onPage("", async (page) => {
      const heading = page.getByRole("spinbutton", { name: "Heading" });
      await page.getByRole("slider", { name: "Heading, by the card" }).press("PageUp");
      expect(await heading.inputValue()).toBe("100");
      const turned = act(FIRST, { kind: "turn-heading", byDeg: 10 });
      await page.getByRole("button", { name: "Home", exact: true }).press("Enter");
      // The focus is on the title of the page, and the first stop after it leads back.
      expect(await home(page).evaluate((title) => title === document.activeElement)).toBe(true);
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      await expectFaces(page, turned);
      expect(await heading.inputValue()).toBe("100");
      await goHome(page);
      await page.goBack();
      expect(await heading.inputValue()).toBe("100");
      expect(await page.getByRole("button", { name: "Undo" }).isEnabled()).toBe(true);
    }));

  it("starts a calm scene with nothing tuned, ready for work, that undo takes back", () =>
    onPage("#home", async (page) => {
      await page.getByRole("button", { name: "Start empty" }).click();
      await page.locator(".chart-ground > svg").waitFor();
      expect(await page.locator("h1").textContent()).toBe("A scene of my own");
      expect(await facesOn(page)).toHaveLength(2);
      for (const face of await facesOn(page)) expect(face).toMatch(/OFF/);
      await page.getByRole("combobox", { name: "NAV1 station" }).selectOption("TXJ");
      await expect.poll(async () => (await facesOn(page))[0], POLL).toMatch(/TO|FROM/);
      await page.getByRole("button", { name: "Undo" }).click();
      await page.getByRole("button", { name: "Undo" }).click();
      await expectFaces(page, FIRST);
    }));

  it("takes a dropped file, tells what is wrong with it, and keeps what was worked on", () =>
    onPage("#home", async (page) => {
      const text = readFileSync(
        fileURLToPath(new URL("../../demo/scenes/12-in-the-cone.yaml", import.meta.url)),
        "utf8",
      );
      const drop = async (content: string) => {
        const transfer = await page.evaluateHandle((held) => {
          const made = new DataTransfer();
          made.items.add(new File([held], "mine.yaml", { type: "application/yaml" }));
          return made;
        }, content);
        for (const type of ["dragenter", "dragover", "drop"])
          await page.dispatchEvent("body", type, { dataTransfer: transfer });
      };
      await drop(text.replace(/^aircraft:/m, "aircarft:"));
      await expect
        .poll(() => page.getByRole("alert").textContent(), POLL)
        .toMatch(/mine\.yaml:\d+:\d+ .*aircraft/);
      expect(await home(page).isVisible()).toBe(true);
      await drop(text.replace(OVERHEAD.title, "My own overhead"));
      await expect.poll(() => page.locator("h1").textContent(), POLL).toBe("My own overhead");
      await expectFaces(page, OVERHEAD);
      // What was opened is kept in this browser, and found again.
      await page.waitForTimeout(1500);
      await goHome(page);
      await page
        .getByRole("region", { name: "Recent work" })
        .getByRole("button", { name: /^My own overhead/ })
        .click();
      await expectFaces(page, OVERHEAD);
    }));

  it("is used by touch on a phone, with nothing wider than the screen", () =>
    onPage(
      "#home",
      async (page) => {
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
        const small = await page
          .locator(".home :is(button, a)")
          .evaluateAll(
            (all) =>
              all
                .map((each) => each.getBoundingClientRect())
                .filter(({ width, height }) => width < 44 || height < 44).length,
          );
        expect(small).toBe(0);
        await cards(page).nth(11).scrollIntoViewIfNeeded();
        await cards(page).nth(11).tap();
        await expectFaces(page, OVERHEAD);
        await page.getByRole("button", { name: "Tools", exact: true }).tap();
        await page.getByRole("button", { name: "Home", exact: true }).tap();
        await home(page).waitFor();
      },
      { viewport: PHONE, hasTouch: true, isMobile: true },
    ));

  it.each(["light", "dark"] as const)("has nothing that axe-core objects to (%s)", (colorScheme) =>
    onPage(
      "#home",
      async (page) => {
        await expect.poll(() => page.locator(".thumbnail > svg").count(), POLL).toBeGreaterThan(3);
        expect(await objections(page), "home").toEqual([]);
        await page.getByRole("button", { name: "Help" }).click();
        await page.getByRole("dialog", { name: "Help" }).waitFor();
        expect(await objections(page), "help").toEqual([]);
        await page.keyboard.press("Escape");
        await page.setViewportSize(PHONE);
        expect(await objections(page), "on a phone").toEqual([]);
        await page.setViewportSize(LAPTOP);
        expect(await objections(page), "on a laptop").toEqual([]);
      },
      { colorScheme },
    ),
  );
});

it("the bench stands with at most 150 kB of script, and reads files only when one is opened", async () => {
  const context = await bench.browser().newContext();
  const page = await context.newPage();
  const scripts: string[] = [];
  page.on("response", (response) => {
    if (response.request().resourceType() === "script") scripts.push(response.url());
  });
  await page.goto(bench.address());
  await page.locator(".chart-ground > svg").waitFor();
  const { brotliCompressSync } = await import("node:zlib");
  const sizes = scripts.map(
    (url) => brotliCompressSync(readFileSync(pageFolder() + new URL(url).pathname)).length,
  );
  expect(sizes.length).toBeGreaterThan(0);
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(MOST_SCRIPT_BYTES);
  await context.close();
});

it("an address with #home waits for no scene to be read, and the bench behind it is the demo's first", () =>
  onPage("#home", async (page) => {
    await page.getByRole("button", { name: `Back to “${FIRST.title}”` }).click();
    await expectFaces(page, FIRST);
    expect(await page.locator(".chain").isVisible()).toBe(true);
    expect(resolveScene(FIRST).receivers).toHaveLength(2);
  }));
