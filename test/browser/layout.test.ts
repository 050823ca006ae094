/** The four views on the table in the real Chromium: enlarged, put away, projected, and on a phone; by mouse, by keys, by touch. */

import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { wavesSentence } from "../../src/draw/index.ts";
import { stationDeg } from "../../src/earth/index.ts";
import { resolveScene, type Scene, TRAINING_CAUTION, VIEWS, type View } from "../../src/scene/index.ts";
import { act } from "../../src/web/state/actions.ts";
import { objections } from "./axe.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { DESKTOP, LAPTOP, PHONE } from "./browser.ts";
import { demoScene } from "./demo-in-node.ts";

const FIRST = demoScene("01-which-way-to-the-course");
const POLL = { timeout: 10_000 };

const bench = benchUnderTest();

const onBench = bench.visit;

const sheet = (page: Page, view: View): Locator => page.locator(`.view[data-view="${view}"]`);
const seen = async (page: Page): Promise<View[]> => {
  const shown = await Promise.all(VIEWS.map((view) => sheet(page, view).isVisible()));
  return VIEWS.filter((_, index) => shown[index]);
};
const expectSeen = (page: Page, ...views: View[]): Promise<void> =>
  expect.poll(() => seen(page), POLL).toEqual(views);
const press = (page: Page, name: string): Promise<void> =>
  page.getByRole("button", { name, exact: true }).click();
const areaOf = async (what: Locator): Promise<number> => {
  const box = (await what.boundingBox())!;
  return box.width * box.height;
};
const inView = (page: Page): Promise<string | null | undefined> =>
  page.evaluate(() => document.activeElement?.closest(".view")?.getAttribute("data-view"));

describe("a view", () => {
  it.each(VIEWS)("fills the table, shrinks back, is put away and comes back, by mouse: %s", (view) =>
    onBench(async (page) => {
      await expectSeen(page, ...VIEWS);
      const before = await areaOf(sheet(page, view));
      await sheet(page, view).hover({ position: { x: 60, y: 8 } });
      await press(page, `Enlarge the ${view}`);
      await expectSeen(page, view);
      expect(await areaOf(sheet(page, view))).toBeGreaterThan(before * 1.3);
      await press(page, `Shrink the ${view}`);
      await expectSeen(page, ...VIEWS);
      await press(page, `Put away the ${view}`);
      await expectSeen(page, ...VIEWS.filter((each) => each !== view));
      const tabs = page.getByRole("group", { name: "Views put away" });
      await tabs.getByRole("button").click();
      await expectSeen(page, ...VIEWS);
      expect(await tabs.count()).toBe(0);
    }),
  );

  it("gives its room to the others, and the last one stays", () =>
    onBench(async (page) => {
      const chart = await areaOf(sheet(page, "chart"));
      await press(page, "Put away the signal");
      expect(await areaOf(sheet(page, "chart"))).toBeGreaterThan(chart * 1.2);
      await press(page, "Put away the chart");
      const [panel, reasons] = [
        (await sheet(page, "panel").boundingBox())!,
        (await sheet(page, "reasons").boundingBox())!,
      ];
      expect(panel.y).toBe(reasons.y);
      expect(reasons.x).toBeGreaterThan(panel.x + panel.width);
      await press(page, "Put away the panel");
      await expectSeen(page, "reasons");
      expect(await page.getByRole("button", { name: /^Put away/ }).count()).toBe(0);
    }));

  it("is chosen, enlarged and put away by keys alone, and the next Tab goes on inside it", () =>
    onBench(async (page) => {
      for (const [index, view] of VIEWS.entries()) {
        await page.keyboard.press(`${index + 1}`);
        await expect.poll(() => inView(page), POLL).toBe(view);
        await page.keyboard.press("e");
        await expectSeen(page, view);
        await page.keyboard.press("Escape");
        await expectSeen(page, ...VIEWS);
      }
      await page.keyboard.press("Tab");
      expect(await inView(page)).toBe("reasons");
      await page.keyboard.press("Shift+Digit2");
      await expectSeen(page, "chart", "signal", "reasons");
      await page.keyboard.press("Shift+Digit3");
      await page.keyboard.press("1");
      await page.keyboard.press("E");
      await expectSeen(page, "chart");
      // While one fills the table the next one takes its place.
      await page.keyboard.press("2");
      await expectSeen(page, "panel");
      await page.keyboard.press("e");
      await expectSeen(page, "chart", "panel", "reasons");
    }));

  it("leaves the keys alone while a number is typed, and where they are switched off", () =>
    onBench(async (page) => {
      const course = page.getByRole("spinbutton", { name: "NAV1 course", exact: true });
      await course.focus();
      await page.keyboard.type("123");
      expect(await course.inputValue()).toBe("123");
      await expectSeen(page, ...VIEWS);
      await page.getByRole("button", { name: "NAV1", exact: true }).focus();
      await page.keyboard.press("?");
      const help = page.getByRole("dialog", { name: "Help" });
      await help.getByRole("checkbox", { name: /^Keys pressed alone/ }).uncheck();
      await page.keyboard.press("Escape");
      await help.waitFor({ state: "detached" });
      await page.keyboard.press("Shift+Digit2");
      await page.keyboard.press("e");
      await expectSeen(page, ...VIEWS);
      await page.reload();
      await page.locator(".chart-ground > svg").waitFor();
      await page.keyboard.press("e");
      await expectSeen(page, ...VIEWS);
    }));
});

describe("the layout", () => {
  it("is remembered, and survives a spoilt memory", () =>
    onBench(async (page) => {
      await press(page, "Put away the signal");
      await sheet(page, "reasons").hover();
      await press(page, "Enlarge the reasons");
      await page.reload();
      await sheet(page, "reasons").waitFor();
      await expectSeen(page, "reasons");
      await press(page, "Shrink the reasons");
      await expectSeen(page, "chart", "panel", "reasons");
      for (const spoilt of ['{"preset":"prepare","prepare":{"shown":["map"]}}', '{"prep', "7", ""]) {
        await page.evaluate((text) => localStorage.setItem("needlework.layout", text), spoilt);
        await page.reload();
        await page.locator(".chart-ground > svg").waitFor();
        await expectSeen(page, ...VIEWS);
      }
    }));

  it.each([
    ["1440 by 900", DESKTOP],
    ["1920 by 1080", { width: 1920, height: 1080 }],
    ["1024 by 768", LAPTOP],
  ])("leaves nothing outside the window, in any arrangement, at %s", (_, viewport) =>
    onBench(
      async (page) => {
        for (const preset of ["prepare", "project"])
          for (const shown of [
            VIEWS,
            ["chart", "panel"],
            ["panel", "reasons"],
            ["signal", "reasons"],
            ["panel"],
          ]) {
            const layout = { preset, [preset]: { shown, enlarged: null } };
            await page.evaluate(
              (text) => localStorage.setItem("needlework.layout", text),
              JSON.stringify(layout),
            );
            await page.reload();
            await sheet(page, shown[0] as View).waitFor();
            expect(await outside(page), `${preset} ${shown.join()}`).toEqual([]);
          }
      },
      { viewport },
    ),
  );
});

/** What of head, sheets and foot reaches over the window's edge or over one another, in words. */
const outside = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const faults: string[] = [];
    const { scrollWidth, scrollHeight } = document.documentElement;
    if (scrollWidth > innerWidth) faults.push(`the page is ${scrollWidth} wide`);
    if (scrollHeight > innerHeight) faults.push(`the page is ${scrollHeight} high`);
    const parts = [...document.querySelectorAll(".head, .view > .sheet, .foot")].filter((part) =>
      part.checkVisibility(),
    );
    const boxes = parts.map((part) => [part.className, part.getBoundingClientRect()] as const);
    for (const [name, box] of boxes) {
      if (box.right > innerWidth + 1 || box.bottom > innerHeight + 1 || box.left < -1 || box.top < -1)
        faults.push(`${name} is outside`);
      if (box.width < 200 || box.height < 24) faults.push(`${name} is ${box.width} by ${box.height}`);
      for (const [other, its] of boxes)
        if (
          other !== name &&
          box.left < its.right - 1 &&
          its.left < box.right - 1 &&
          box.top < its.bottom - 1 &&
          its.top < box.bottom - 1
        )
          faults.push(`${name} lies over ${other}`);
    }
    // Words that are cut off without being marked so.
    for (const words of document.querySelectorAll(
      ".head-words, .head h1, .foot > p, .row, .stepper-value, .view-head",
    ))
      if (words.checkVisibility() && words.scrollWidth > words.clientWidth + 4)
        faults.push(`cut: ${words.textContent?.slice(0, 40)}`);
    return faults;
  });

describe("projecting", () => {
  it("shows large type and no tools, the question and not the answer, and ends with Escape", () =>
    onBench(
      async (page) => {
        const sizeOf = (selector: string) =>
          page
            .locator(selector)
            .first()
            .evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
        const before = await sizeOf("h1");
        await page.keyboard.press("p");
        await expectSeen(page, "chart", "panel");
        expect(await page.locator("h1").textContent()).toBe(FIRST.title);
        expect(await page.getByText(FIRST.ask).isVisible()).toBe(true);
        expect(await page.getByText(TRAINING_CAUTION).isVisible()).toBe(true);
        expect(await sizeOf("h1")).toBeGreaterThan(before * 1.8);
        expect(await sizeOf(".receiver .row")).toBeGreaterThanOrEqual(24);
        const smallest = await page
          .locator(".chart-ground > svg text")
          .evaluateAll((all) =>
            Math.min(...all.map((text) => Number.parseFloat(text.getAttribute("font-size")!))),
          );
        expect(smallest).toBeGreaterThanOrEqual(22);
        // What a lesson needs stays at hand: the ident to be heard and the clock.
        expect(await page.getByRole("button", { name: "Identify NAV1" }).isVisible()).toBe(true);
        expect(await page.locator(".clock-buttons button").first().isVisible()).toBe(true);
        const editing = page.locator("button, select, summary").filter({ visible: true });
        const names = await editing.evaluateAll((all) =>
          all
            .filter(
              (each) =>
                each.closest(".foot, .chart-ground, .why, .receiver .row, .identify-button, .clock") === null,
            )
            .map((each) => each.outerHTML.slice(0, 90)),
        );
        expect(names).toEqual([]);
        await page.keyboard.press("Escape");
        await expectSeen(page, ...VIEWS);
        expect(await page.getByRole("button", { name: "Share" }).isVisible()).toBe(true);
      },
      { viewport: { width: 1920, height: 1080 } },
    ));

  it("lets a whole lesson be run: turn the course, bring the reasons, enlarge them, and go back", () =>
    onBench(async (page) => {
      await press(page, "Project");
      const card = page.getByRole("slider", { name: "NAV1 course, by the card" });
      await card.press("Shift+ArrowUp");
      await expect
        .poll(() => page.getByRole("spinbutton", { name: "NAV1 course", exact: true }).inputValue(), POLL)
        .toBe("080");
      const views = page.getByRole("group", { name: "Views", exact: true });
      await views.getByRole("button", { name: "Reasons" }).click();
      await expectSeen(page, "chart", "panel", "reasons");
      await page.locator(".chain button").nth(2).click();
      expect(await page.locator(".chain li[data-lit=true]").count()).toBe(1);
      // The first Escape lets the step go, the next one ends projecting.
      await page.keyboard.press("4");
      await page.keyboard.press("e");
      await expectSeen(page, "reasons");
      await page.keyboard.press("e");
      await views.getByRole("button", { name: "Panel" }).click();
      await expectSeen(page, "chart", "reasons");
      await press(page, "End projecting");
      await expectSeen(page, ...VIEWS);
      await page.reload();
      await page.locator(".chart-ground > svg").waitFor();
      await page.keyboard.press("p");
      await expectSeen(page, "chart", "reasons");
    }));
});

describe("the signal", () => {
  const sentence = (page: Page) => sheet(page, "signal").locator("desc").textContent();
  const expected = (scene: Scene, receiver: string) =>
    wavesSentence(resolveScene(scene).receivers.find(({ settings }) => settings.name === receiver)!);

  it("says what the attended receiver compares, in step with the course and the aircraft", () =>
    onBench(async (page) => {
      expect(await sentence(page)).toBe(expected(FIRST, "NAV1"));
      await page.getByRole("spinbutton", { name: "NAV2 course", exact: true }).fill("180");
      const turned = act(FIRST, { kind: "set-course", receiver: "NAV2", course: stationDeg(180) });
      await expect.poll(() => sentence(page), POLL).toBe(expected(turned, "NAV2"));
      await page.getByRole("button", { name: /^Aircraft/ }).press("Shift+ArrowDown");
      await expect.poll(() => sentence(page), POLL).not.toBe(expected(turned, "NAV2"));
    }));

  it("keeps up with a drag, frame by frame", () =>
    onBench(async (page) => {
      const dart = page.getByRole("button", { name: /^Aircraft/ });
      const box = (await dart.boundingBox())!;
      const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      const seenSteps = new Set<string | null>();
      for (let step = 1; step <= 12; step++) {
        await page.mouse.move(from.x - 9 * step, from.y - 7 * step);
        // A frame for the move, and one for the picture of it.
        await page.evaluate(
          () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
        );
        const [wave, line] = await page.evaluate(() => [
          document.querySelector('[data-view="signal"] [data-peak="variable"]')!.getAttribute("x1"),
          document.querySelector(".chart-ground > svg desc")!.textContent,
        ]);
        const radial = /radial (\d{3})/.exec(line!)?.[1];
        const told = /comes (\d+) degrees/.exec((await sentence(page))!)?.[1];
        if (radial !== undefined) expect(Math.abs(Number(told) - Number(radial))).toBeLessThanOrEqual(1);
        seenSteps.add(wave!);
      }
      await page.mouse.up();
      expect(seenSteps.size).toBeGreaterThanOrEqual(10);
    }));

  it("says so when there is nothing to compare", () =>
    onBench(async (page) => {
      const frequency = page.getByRole("textbox", { name: "NAV1 frequency" });
      await frequency.fill("112.00");
      await frequency.press("Enter");
      await expect
        .poll(() => sheet(page, "signal").textContent(), POLL)
        .toContain("NAV1 measures no bearing");
    }));
});

describe("on a phone", () => {
  const options = { viewport: PHONE, hasTouch: true, isMobile: true };

  it("keeps the chart in sight and one view below it, by touch", () =>
    onBench(async (page) => {
      await expectSeen(page, "chart", "panel");
      const tabs = page.getByRole("navigation", { name: "Views" });
      for (const view of ["signal", "reasons", "panel"] as const) {
        await tabs.getByRole("button", { name: view, exact: false }).tap();
        await expectSeen(page, "chart", view);
        expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(
          PHONE.height,
        );
      }
      await tabs.getByRole("button", { name: "Chart" }).tap();
      await expectSeen(page, "chart");
      await page.getByRole("button", { name: "Nearer" }).tap();
      await tabs.getByRole("button", { name: "Tools" }).tap();
      await page.getByRole("button", { name: "Share", exact: true }).tap();
      await page.getByRole("dialog", { name: /^Share/ }).waitFor();
    }, options));

  it("has targets for a finger in every pane, and nothing wider than the screen", () =>
    onBench(async (page) => {
      for (const pane of ["Chart", "Panel", "Signal", "Reasons", "Tools"]) {
        await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: pane }).tap();
        expect(await page.evaluate(() => document.documentElement.scrollWidth), pane).toBe(PHONE.width);
        const small = await page
          .locator("button, select, input, summary, [role=slider]")
          .evaluateAll((controls) =>
            controls
              .filter((control) => control.checkVisibility())
              .map((control) => ({
                box: control.getBoundingClientRect(),
                text: control.outerHTML.slice(0, 90),
              }))
              .filter(({ box }) => box.width < 44 || box.height < 44)
              .map(({ box, text }) => `${box.width}×${box.height} ${text}`),
          );
        expect(small, pane).toEqual([]);
      }
    }, options));

  it("comes by itself in a narrow window, and goes in a wide one", () =>
    onBench(async (page) => {
      await page.setViewportSize({ width: 690, height: 900 });
      await expectSeen(page, "chart", "panel");
      await page.getByRole("navigation", { name: "Views" }).waitFor();
      await page.setViewportSize(DESKTOP);
      await expectSeen(page, ...VIEWS);
    }));
});

it.each(["light", "dark"] as const)(
  "axe-core objects to nothing, however the views lie (%s)",
  (colorScheme) =>
    onBench(
      async (page) => {
        for (const [index, view] of VIEWS.entries()) {
          await page.keyboard.press(`${index + 1}`);
          await page.keyboard.press("e");
          await expectSeen(page, view);
          expect(await objections(page), `${view} enlarged`).toEqual([]);
          await page.keyboard.press("e");
        }
        await page.keyboard.press("Shift+Digit3");
        expect(await objections(page), "one put away").toEqual([]);
        await page.keyboard.press("p");
        await page.keyboard.press("4");
        await expectSeen(page, "chart", "panel", "reasons");
        expect(await objections(page), "projecting").toEqual([]);
        await page.keyboard.press("Escape");
        await page.keyboard.press("Escape");
        await page.setViewportSize(PHONE);
        for (const pane of ["Chart", "Panel", "Signal", "Reasons", "Tools"]) {
          await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: pane }).click();
          expect(await objections(page), `${pane} on a phone`).toEqual([]);
        }
      },
      { colorScheme },
    ),
);
