/** A scene's link in the real Chromium: the address keeps it, Copy link gives it, and a broken one never loses the present scene. */

import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { magneticDeg, stationDeg } from "../../src/earth/index.ts";
import { type Scene, sceneFromLink, sceneToLink } from "../../src/scene/index.ts";
import { linkWorld } from "../../src/web/link/demo-world.ts";
import { act, type SceneAction } from "../../src/web/state/actions.ts";
import { benchUnderTest, type Visit } from "./bench-under-test.ts";
import { demoScene, facesOf, facesOn } from "./demo-in-node.ts";

const FIRST = demoScene("01-which-way-to-the-course");
const WORLD = linkWorld(FIRST);

const bench = benchUnderTest();

interface Visited {
  readonly page: Page;
  /** Every address that was asked of any server. */
  readonly requests: readonly string[];
}

const onBench = (mark: string, use: (visited: Visited) => Promise<void>, visit: Visit = {}): Promise<void> =>
  bench.visit(
    (page) => {
      const requests: string[] = [];
      page.on("request", (request) => requests.push(`${request.url()} ${request.postData() ?? ""}`));
      return use({ page, requests });
    },
    { path: mark, ...visit },
  );

const after = (scene: Scene, ...actions: SceneAction[]): Scene => actions.reduce(act, scene);
const linkOf = (scene: Scene): string => sceneToLink(scene, { world: WORLD });
const expectFaces = (page: Page, scene: Scene): Promise<void> =>
  expect.poll(() => facesOn(page), { timeout: 5000 }).toEqual(facesOf(scene));
const markOn = (page: Page): string => new URL(page.url()).hash;
/** The scene in the address, once it has settled there. */
async function sceneInAddress(page: Page): Promise<Scene> {
  await expect.poll(() => markOn(page), { timeout: 4000 }).toMatch(/^#s1\./);
  await page.waitForTimeout(700);
  const read = sceneFromLink(page.url(), { world: WORLD });
  if (!read.ok) throw new Error(read.faults.join("; "));
  return read.scene;
}
const heading = (page: Page) => page.getByRole("spinbutton", { name: "Heading", exact: true });
const course = (page: Page) => page.getByRole("spinbutton", { name: "NAV1 course", exact: true });
const notice = (page: Page) => page.getByRole("alert");

const TURNED = after(
  FIRST,
  { kind: "set-heading", heading: magneticDeg(200) },
  { kind: "set-course", receiver: "NAV1", course: stationDeg(65) },
);

describe("the address", () => {
  it("names a scene of the demo, and holds it whole once it is changed; a reload finds it again", () =>
    onBench("#scene=01", async ({ page, requests }) => {
      await expect.poll(() => markOn(page)).toBe("#scene=01-which-way-to-the-course");
      await heading(page).fill("200");
      await course(page).fill("065");
      expect(await sceneInAddress(page)).toEqual(TURNED);
      await page.reload();
      await expectFaces(page, TURNED);
      expect(await page.locator("h1").textContent()).toBe(FIRST.title);
      expect(requests.filter((request) => request.includes("s1."))).toEqual([]);
    }));

  it("comes back to the name when the change is taken back", () =>
    onBench("#scene=01", async ({ page }) => {
      await heading(page).fill("200");
      await sceneInAddress(page);
      await page.getByRole("button", { name: "Undo" }).click();
      await expect.poll(() => markOn(page)).toBe("#scene=01-which-way-to-the-course");
    }));

  it("does not flood the browser while a flight goes on", () =>
    onBench(
      "#scene=01",
      async ({ page }) => {
        await page.evaluate(() => {
          const write = history.replaceState.bind(history);
          Object.assign(window, { writes: 0 });
          history.replaceState = (...args) => {
            (window as unknown as { writes: number }).writes += 1;
            write(...args);
          };
        });
        await page.getByRole("button", { name: "Play" }).click();
        await page.waitForTimeout(3000);
        await page.getByRole("button", { name: "Pause" }).click();
        const writes = await page.evaluate(() => (window as unknown as { writes: number }).writes);
        expect(writes).toBeGreaterThan(2);
        expect(writes).toBeLessThan(9);
      },
      { reducedMotion: "no-preference" },
    ));
});

describe("a link", () => {
  it("opens the whole scene, covers and question and all, on another bench", () => {
    const covered: Scene = { ...TURNED, covers: ["NAV1.needle", "aircraft"], ask: "Where are you now?" };
    return onBench(`#${linkOf(covered)}`, async ({ page }) => {
      await expectFaces(page, covered);
      expect(await page.getByText("Where are you now?").isVisible()).toBe(true);
      expect(await page.getByRole("button", { name: /^Aircraft/ }).count()).toBe(0);
    });
  });

  it("opens on its piece of the chart", async () => {
    const view = { centre: { latDeg: -10.5, lonDeg: 1.5 }, widthNm: 20 };
    await onBench(`#${sceneToLink(FIRST, { world: WORLD, view })}`, async ({ page }) => {
      await expectFaces(page, FIRST);
      // Haldrey is in sight twenty miles across; the aircraft, forty miles east, is not.
      const ground = (await page.locator(".chart-ground").boundingBox())!;
      const dart = (await page.getByRole("button", { name: /^Aircraft/ }).boundingBox())!;
      expect(dart.x).toBeGreaterThan(ground.x + ground.width);
    });
  });

  it("put into the address of an open bench takes the place of the present scene, which can be taken back", () =>
    onBench("#scene=12", async ({ page }) => {
      const before = await facesOn(page);
      await page.evaluate((mark) => {
        location.hash = mark;
      }, linkOf(TURNED));
      await expectFaces(page, TURNED);
      await page.getByRole("button", { name: "Undo" }).click();
      await expect.poll(() => facesOn(page)).toEqual(before);
    }));

  it.each([
    ["cut short", linkOf(TURNED).slice(0, -60), /cut short on its way here; copy the whole of it again/],
    ["changed on the way", linkOf(TURNED).replace(/\.(..)/, ".xy"), /changed on its way here; copy it again/],
    ["of a later version", linkOf(TURNED).replace("s1.", "s2."), /version 2, and this bench reads version 1/],
  ])("that is %s is explained in one sentence, and the present scene stays", (_, link, sentence) =>
    onBench("#scene=12", async ({ page }) => {
      const before = await facesOn(page);
      await page.evaluate((mark) => {
        location.hash = mark;
      }, link);
      await notice(page).waitFor();
      expect(await notice(page).getByRole("listitem").allTextContents()).toEqual([
        expect.stringMatching(sentence),
      ]);
      expect(await facesOn(page)).toEqual(before);
      await notice(page).getByRole("button", { name: "Close" }).click();
      await heading(page).fill("200");
      await expect.poll(() => facesOn(page)).toEqual(before);
      expect((await sceneInAddress(page)).title).toBe("Overhead, let it settle");
    }),
  );

  it("that is broken from the start is explained over the demo's first scene", () =>
    onBench(`#${linkOf(TURNED).slice(0, 200)}`, async ({ page }) => {
      expect(await notice(page).textContent()).toMatch(/cut short on its way here/);
      await expectFaces(page, FIRST);
    }));
});

describe("Copy link", () => {
  const copy = async (page: Page) => {
    await page.getByRole("button", { name: "Share" }).click();
    await page.getByRole("button", { name: "Copy link" }).click();
  };

  it("puts an address on the clipboard that opens the same scene elsewhere", async () => {
    let address = "";
    await onBench(
      "#scene=01",
      async ({ page, requests }) => {
        await heading(page).fill("200");
        await course(page).fill("065");
        await copy(page);
        await page.getByRole("button", { name: "Copied" }).waitFor();
        address = await page.evaluate(() => navigator.clipboard.readText());
        expect(requests.filter((request) => request.includes("s1."))).toEqual([]);
      },
      { permissions: ["clipboard-read", "clipboard-write"] },
    );
    expect(address).toBe(`${bench.address()}/#${linkOf(TURNED)}`);
    await onBench(new URL(address).hash, async ({ page }) => expectFaces(page, TURNED));
  });

  it("shows the address, marked whole, where the browser gives no clipboard", () =>
    onBench("#scene=01", async ({ page }) => {
      await page.evaluate(() => {
        Object.defineProperty(navigator, "clipboard", { value: undefined });
      });
      await copy(page);
      const field = page.getByRole("textbox", { name: /Copy it here/ });
      expect(await field.inputValue()).toBe(`${bench.address()}/#${linkOf(FIRST)}`);
      const marked = await field.evaluate(
        (input: HTMLInputElement) => (input.selectionEnd ?? 0) - (input.selectionStart ?? 0),
      );
      expect(marked).toBeGreaterThan(500);
      await page.keyboard.press("Escape");
      expect(await field.count()).toBe(0);
    }));
});
