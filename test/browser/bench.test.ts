/** The bench in the real Chromium, used as a person would. What it shows is compared with the engine run here in Node. */

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import axe from "axe-core";
import type { Locator, Page } from "playwright-core";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { Chart, type Lit, THEMES } from "../../src/draw/index.ts";
import { direct, magneticDeg, stationDeg, trueDeg, wrap180 } from "../../src/earth/index.ts";
import { reasonsFor } from "../../src/reason/index.ts";
import { decodeText, resolveScene, type Scene, TRAINING_CAUTION } from "../../src/scene/index.ts";
import { act, type SceneAction } from "../../src/web/state/actions.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { LAPTOP, PHONE, pageFolder, serveBench } from "./browser.ts";
import { type ChartOnPage, chartOn, demoScene, facesOf, facesOn } from "./demo-in-node.ts";

const FIRST = demoScene("01-which-way-to-the-course");
const afterActions = (scene: Scene, ...actions: SceneAction[]): Scene => actions.reduce(act, scene);

const bench = benchUnderTest();

const onBench = bench.visit;

/** Longer than any motion of the page, on a machine that is busy with other things. */
const POLL = { timeout: 10_000 };

const outerHtml = (what: Locator): Promise<string> => what.evaluate((element) => element.outerHTML);

/** Where two texts part, with a little of each; "none" when they are the same. */
function difference(one: string, other: string): string {
  if (one === other) return "none";
  let at = 0;
  while (one[at] === other[at]) at++;
  const from = Math.max(0, at - 60);
  return `at ${at}: ${one.slice(from, at + 60)} | ${other.slice(from, at + 60)}`;
}

/** Waits until the page's faces say what the engine says of the scene. */
const expectFaces = (page: Page, scene: Scene): Promise<void> =>
  expect.poll(() => facesOn(page), POLL).toEqual(facesOf(scene));

const course = (page: Page, receiver: string): Locator =>
  page.getByRole("spinbutton", { name: `${receiver} course`, exact: true });
const courseCard = (page: Page, receiver: string): Locator =>
  page.getByRole("slider", { name: `${receiver} course, by the card` });
const frequency = (page: Page, receiver: string): Locator =>
  page.getByRole("textbox", { name: `${receiver} frequency` });
const dart = (page: Page): Locator => page.getByRole("button", { name: /^Aircraft/ });

/** Drags an element by so many pixels, in steps and gripped beside its middle, as a hand does. */
async function dragBy(page: Page, what: Locator, byX: number, byY: number): Promise<void> {
  const box = (await what.boundingBox())!;
  const from = { x: box.x + box.width / 2 + 9, y: box.y + box.height / 2 - 7 };
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let step = 1; step <= 6; step++)
    await page.mouse.move(from.x + (byX * step) / 6, from.y + (byY * step) / 6);
  await page.mouse.up();
}

/** Where the aircraft gets to when its place on the paper is dragged by so many pixels. */
function draggedPlace({ projection }: ChartOnPage, scene: Scene, byX: number, byY: number) {
  const from = projection.toPaper(scene.aircraft.position);
  return projection.toWorld(from.x + byX, from.y + byY);
}

describe("the page", () => {
  it("shows the demo's first scene as the engine reads it", () =>
    onBench(async (page) => {
      expect(await page.locator("h1").textContent()).toBe(FIRST.title);
      await expectFaces(page, FIRST);
      const expected = reasonsFor(resolveScene(FIRST)).filter((reason) => reason.receiver === "NAV1");
      expect(await page.locator(".chain .sentence").allTextContents()).toEqual(
        expected.map((reason) => reason.sentence),
      );
      await page.getByRole("button", { name: "NAV2", exact: true }).click();
      const other = reasonsFor(resolveScene(FIRST)).filter((reason) => reason.receiver === "NAV2");
      expect(await page.locator(".chain strong").allTextContents()).toEqual(other.map(({ title }) => title));
      expect(await page.getByText(TRAINING_CAUTION).isVisible()).toBe(true);
    }));

  it.each([
    ["light", null],
    ["dark", null],
    ["light", "to-from"],
  ] as const)("draws the chart of figure, byte for byte (%s, step %s)", (theme, rule) =>
    onBench(
      async (page) => {
        const situation = resolveScene(FIRST);
        const chart = await chartOn(page, situation);
        let lit: Lit | null = null;
        if (rule !== null) {
          const reason = reasonsFor(situation).find((each) => each.rule === rule)!;
          lit = { receiver: reason.receiver, parts: reason.parts };
          await page.locator(".chain button", { hasText: reason.sentence }).hover();
        }
        const drawn = renderToString(
          h(Chart, {
            situation,
            view: chart.view,
            widthPx: chart.widthPx,
            heightPx: chart.heightPx,
            theme: THEMES[theme],
            idPrefix: "chart",
            lit,
            receiver: "NAV1",
          }),
        );
        const picture = page.locator(".chart-ground > svg");
        // Node's text goes through the same parser and writer as the page's elements.
        const rewritten = await page.evaluate((text) => {
          const holder = document.createElement("div");
          holder.innerHTML = text;
          return holder.innerHTML;
        }, drawn);
        await expect.poll(async () => difference(await outerHtml(picture), rewritten), POLL).toBe("none");
      },
      { colorScheme: theme },
    ),
  );

  it("keeps its drawing in step with figure after a drag has settled", () =>
    onBench(async (page) => {
      const chart = await chartOn(page, resolveScene(FIRST));
      await dragBy(page, dart(page), 90, -120);
      const scene = afterActions(FIRST, { kind: "move-aircraft", to: draggedPlace(chart, FIRST, 90, -120) });
      const drawn = renderToString(
        h(Chart, {
          situation: resolveScene(scene),
          view: chart.view,
          widthPx: chart.widthPx,
          heightPx: chart.heightPx,
          theme: THEMES.light,
          idPrefix: "chart",
          receiver: "NAV1",
        }),
      );
      // An element that is kept while its attributes change may list them in another order.
      const inOrder = (text: string) =>
        page.evaluate((markup) => {
          const holder = document.createElement("div");
          holder.innerHTML = markup;
          for (const element of holder.querySelectorAll("*")) {
            const attributes = [...element.attributes].sort((a, b) => (a.name < b.name ? -1 : 1));
            for (const { name } of attributes) element.removeAttribute(name);
            for (const { name, value } of attributes) element.setAttribute(name, value);
          }
          return holder.innerHTML;
        }, text);
      const expected = await inOrder(drawn);
      const picture = page.locator(".chart-ground > svg");
      await expect
        .poll(async () => difference(await inOrder(await outerHtml(picture)), expected), POLL)
        .toBe("none");
    }));

  it("opens on the scene that the bench was started with, and explains one that is at fault", async () => {
    const folder = mkdtempSync(join(tmpdir(), "needlework-bench-"));
    const path = join(folder, "mine.yaml");
    const text = readFileSync(
      fileURLToPath(new URL("../../demo/scenes/01-which-way-to-the-course.yaml", import.meta.url)),
      "utf8",
    );
    const demo = fileURLToPath(new URL("../../demo", import.meta.url));
    const mine = text.replaceAll("../ostrelle", `${demo}/ostrelle`).replace("heading: 090", "heading: 200");
    const own = await serveBench(pageFolder(), {
      path,
      readText: (file) => {
        const decoded = decodeText(readFileSync(file), file);
        return decoded.ok ? { path: file, text: decoded.text } : { fault: decoded.fault };
      },
      today: () => "2026-07-01",
    });
    try {
      writeFileSync(path, mine);
      await onBench((page) => expectFaces(page, afterActions(FIRST, heading(200))), { address: own.address });
      writeFileSync(path, mine.replace("tune: 115.60", "tune: 108.10"));
      await onBench(
        async (page) => {
          const notice = page.getByRole("alert");
          expect(await notice.textContent()).toMatch(/mine\.yaml:\d+:\d+ .*108\.10 is a localizer channel/);
          await expectFaces(page, FIRST);
        },
        { address: own.address },
      );
    } finally {
      await own.close();
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

const heading = (deg: number): SceneAction => ({ kind: "set-heading", heading: magneticDeg(deg) });
const setCourse = (receiver: string, deg: number): SceneAction => ({
  kind: "set-course",
  receiver,
  course: stationDeg(deg),
});
const tune = (receiver: string, frequencyMhz: number): SceneAction => ({
  kind: "tune-receiver",
  receiver,
  frequencyMhz,
});

describe("the aircraft", () => {
  it("is dragged, and both receivers answer as the engine computes it there", () =>
    onBench(async (page) => {
      const chart = await chartOn(page, resolveScene(FIRST));
      await dragBy(page, dart(page), -160, 70);
      const moved = afterActions(FIRST, { kind: "move-aircraft", to: draggedPlace(chart, FIRST, -160, 70) });
      expect(facesOf(moved)).not.toEqual(facesOf(FIRST));
      await expectFaces(page, moved);
    }));

  it("is moved by arrow keys, half a mile each, five with Shift", () =>
    onBench(async (page) => {
      await dart(page).focus();
      await page.keyboard.press("ArrowUp");
      await page.keyboard.press("Shift+ArrowRight");
      const north = direct(FIRST.aircraft.position, trueDeg(0), 0.5);
      const moved = afterActions(FIRST, { kind: "move-aircraft", to: direct(north, trueDeg(90), 5) });
      await expectFaces(page, moved);
    }));

  it("turns its heading by the nose, the card, keys, wheel and number, and the needles never move", () =>
    onBench(async (page) => {
      const faces = page.locator(".receiver .face svg");
      const before = await faces.evaluateAll((all) => all.map((svg) => svg.outerHTML));
      const number = page.getByRole("spinbutton", { name: "Heading" });
      await number.fill("215");
      expect(await number.inputValue()).toBe("215");
      await number.press("Shift+ArrowUp");
      expect(await number.inputValue()).toBe("225");
      await page.getByRole("slider", { name: "Heading, by the card" }).press("ArrowLeft");
      expect(await number.inputValue()).toBe("224");
      await page.getByRole("slider", { name: "Heading, by the card" }).hover();
      await page.mouse.wheel(0, -100);
      await expect.poll(() => number.inputValue(), POLL).toBe("225");
      const nose = page.getByRole("slider", { name: "Heading, by the nose" });
      await nose.press("ArrowRight");
      expect(await number.inputValue()).toBe("226");

      const chart = await chartOn(page, resolveScene(FIRST));
      const at = chart.projection.toPaper(FIRST.aircraft.position);
      await nose.hover();
      await page.mouse.down();
      await page.mouse.move(chart.left + at.x, chart.top + at.y - 150, { steps: 4 });
      await page.mouse.up();
      const { variationDeg } = resolveScene(FIRST);
      const upTrueDeg = -chart.projection.trueNorthAngle(FIRST.aircraft.position);
      const expected = Math.round(wrap180(upTrueDeg - variationDeg));
      await expect.poll(async () => Number(await number.inputValue()), POLL).toBe(expected);
      expect(await faces.evaluateAll((all) => all.map((svg) => svg.outerHTML))).toEqual(before);
    }));

  it("loses the signal when it is too low, and finds it again", () =>
    onBench(async (page) => {
      const altitude = page.getByRole("spinbutton", { name: "Altitude" });
      await altitude.fill("0");
      await altitude.press("Enter");
      const low = afterActions(FIRST, { kind: "set-altitude", altitudeFt: 0 });
      expect(facesOf(low)[0]).toMatch(/OFF/);
      await expectFaces(page, low);
      expect(await page.locator(".chain").textContent()).toContain(
        reasonsFor(resolveScene(low))[0]!.sentence,
      );
      await page.getByRole("button", { name: "Altitude up 100 feet" }).click();
      await page.getByRole("button", { name: "Undo" }).click();
      await page.getByRole("button", { name: "Undo" }).click();
      await expectFaces(page, FIRST);
    }));

  it("is dragged by a finger on a phone, with the faces in sight", () =>
    onBench(
      async (page) => {
        const chart = await chartOn(page, resolveScene(FIRST));
        const box = (await dart(page).boundingBox())!;
        const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
        const touch = await page.context().newCDPSession(page);
        const send = (type: "touchStart" | "touchMove" | "touchEnd", x: number, y: number) =>
          touch.send("Input.dispatchTouchEvent", {
            type,
            touchPoints: type === "touchEnd" ? [] : [{ x, y }],
          });
        await send("touchStart", from.x, from.y);
        for (let step = 1; step <= 5; step++) await send("touchMove", from.x - 8 * step, from.y + 6 * step);
        await send("touchEnd", 0, 0);
        const moved = afterActions(FIRST, { kind: "move-aircraft", to: draggedPlace(chart, FIRST, -40, 30) });
        await expectFaces(page, moved);
        expect(await page.evaluate(() => scrollY)).toBe(0);
        const face = (await page.locator(".receiver .face svg").first().boundingBox())!;
        expect(face.y + face.height).toBeLessThan(PHONE.height);
      },
      { viewport: PHONE, hasTouch: true, isMobile: true },
    ));
});

it("the chart comes nearer between two fingers, and the aircraft stays where it was on the earth", () =>
  onBench(
    async (page) => {
      const ground = (await page.locator(".chart-ground").boundingBox())!;
      const middle = { x: ground.x + 90, y: ground.y + 110 };
      const touch = await page.context().newCDPSession(page);
      const fingers = (apartPx: number) => [
        { x: middle.x - apartPx / 2, y: middle.y, id: 0 },
        { x: middle.x + apartPx / 2, y: middle.y, id: 1 },
      ];
      const before = (await dart(page).boundingBox())!;
      const send = (type: "touchStart" | "touchMove" | "touchEnd", apartPx: number) =>
        touch.send("Input.dispatchTouchEvent", {
          type,
          touchPoints: type === "touchEnd" ? [] : fingers(apartPx),
        });
      await send("touchStart", 40);
      for (const apartPx of [50, 60, 70, 80]) await send("touchMove", apartPx);
      await send("touchEnd", 80);
      // Twice as near: twice as far from the place between the fingers.
      const fromMiddle = (box: { x: number; width: number; y: number; height: number }) =>
        Math.hypot(box.x + box.width / 2 - middle.x, box.y + box.height / 2 - middle.y);
      await expect
        .poll(async () => fromMiddle((await dart(page).boundingBox())!) / fromMiddle(before), POLL)
        .toBeCloseTo(2, 1);
      await expectFaces(page, FIRST);
    },
    { viewport: PHONE, hasTouch: true, isMobile: true },
  ));

describe("the course", () => {
  it("is typed in three digits, and what is none is explained while the course stays", () =>
    onBench(async (page) => {
      await course(page, "NAV1").fill("255");
      await expectFaces(page, afterActions(FIRST, setCourse("NAV1", 255)));
      await course(page, "NAV1").fill("400");
      expect(await page.locator("#NAV1-course-fault").textContent()).toMatch(/three digits, 001 to 360/);
      expect(await course(page, "NAV1").inputValue()).toBe("255");
      await page.keyboard.press("Escape");
      await expectFaces(page, afterActions(FIRST, setCourse("NAV1", 255)));
    }));

  it("is turned by arrow keys, ten degrees with Shift, through north", () =>
    onBench(async (page) => {
      await course(page, "NAV2").fill("358");
      await course(page, "NAV2").press("ArrowUp");
      await course(page, "NAV2").press("Shift+ArrowUp");
      await courseCard(page, "NAV2").press("ArrowRight");
      expect(await course(page, "NAV2").inputValue()).toBe("010");
      await expectFaces(page, afterActions(FIRST, setCourse("NAV2", 10)));
    }));

  it("is turned by the wheel, and by its buttons", () =>
    onBench(async (page) => {
      await courseCard(page, "NAV1").hover();
      await page.mouse.wheel(0, -100);
      await expect.poll(() => course(page, "NAV1").inputValue(), POLL).toBe("071");
      await page.mouse.wheel(0, 100);
      await expect.poll(() => course(page, "NAV1").inputValue(), POLL).toBe("070");
      await page.getByRole("button", { name: "NAV1 course down 1 degree" }).click({ clickCount: 3 });
      await expectFaces(page, afterActions(FIRST, setCourse("NAV1", 67)));
    }));

  it("follows the hand that drags the card: turned right by 60, the number falls by 60, and is taken back at once", () =>
    onBench(async (page) => {
      const box = (await courseCard(page, "NAV1").boundingBox())!;
      const centre = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      const at = (deg: number) => ({
        x: centre.x + box.width * 0.4 * Math.sin((deg * Math.PI) / 180),
        y: centre.y - box.width * 0.4 * Math.cos((deg * Math.PI) / 180),
      });
      await page.mouse.move(at(0).x, at(0).y);
      await page.mouse.down();
      for (let deg = 0; deg <= 60; deg += 5) await page.mouse.move(at(deg).x, at(deg).y);
      await page.mouse.up();
      await expectFaces(page, afterActions(FIRST, setCourse("NAV1", 10)));
      await page.keyboard.press("Control+z");
      await expectFaces(page, FIRST);
      await page.keyboard.press("Control+Shift+z");
      await expectFaces(page, afterActions(FIRST, setCourse("NAV1", 10)));
    }));

  it("moves the needle as a damped one: under way first, then there", () =>
    onBench(
      async (page) => {
        const needleX = () =>
          page
            .locator(".receiver .face svg [data-part=needle]")
            .first()
            .evaluate((needle) => {
              const box = needle.getBoundingClientRect();
              return box.x + box.width / 2;
            });
        const start = await needleX();
        await course(page, "NAV1").fill("062");
        const seen: number[] = [];
        for (let count = 0; count < 12; count++) {
          seen.push(await needleX());
          await page.waitForTimeout(40);
        }
        await page.waitForTimeout(3500);
        const end = await needleX();
        expect(end).toBeGreaterThan(start + 5);
        expect(seen.some((x) => x > start + 1 && x < end - 1)).toBe(true);
        expect([...seen, end]).toEqual([...seen, end].sort((a, b) => a - b));
      },
      { reducedMotion: "no-preference" },
    ));
});

describe("tuning", () => {
  it("takes a frequency, an ident or a picked station", () =>
    onBench(async (page) => {
      await frequency(page, "NAV1").fill("116.5");
      await frequency(page, "NAV1").press("Enter");
      await expectFaces(page, afterActions(FIRST, tune("NAV1", 116.5)));
      await frequency(page, "NAV1").fill("oxk");
      await frequency(page, "NAV1").press("Enter");
      await expectFaces(page, afterActions(FIRST, tune("NAV1", 117.3)));
      await page.getByRole("combobox", { name: "NAV2 station" }).selectOption("TXJ");
      await expectFaces(page, afterActions(FIRST, tune("NAV1", 117.3), tune("NAV2", 115.6)));
      expect(await frequency(page, "NAV2").inputValue()).toBe("115.60");
    }));

  it.each([
    ["108.10", /108\.10 is a localizer channel; .* Still on 115\.60\./],
    ["115.62", /not on the 50 kHz steps/],
    ["130", /outside the navigation band/],
    ["XYZ", /no station here sends XYZ/],
  ])("explains %s in place and stays where it was", (typed, sentence) =>
    onBench(async (page) => {
      await frequency(page, "NAV1").fill(typed);
      await frequency(page, "NAV1").press("Enter");
      expect(await page.locator("#NAV1-frequency-note").textContent()).toMatch(sentence);
      expect(await frequency(page, "NAV1").inputValue()).toBe("115.60");
      await expectFaces(page, FIRST);
      expect(await page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);
    }),
  );

  it("tunes a channel where nobody sends, and the argument says so", () =>
    onBench(async (page) => {
      await frequency(page, "NAV1").fill("112.00");
      await frequency(page, "NAV1").press("Enter");
      const silent = afterActions(FIRST, tune("NAV1", 112));
      await expectFaces(page, silent);
      expect(await page.locator(".chain").textContent()).toContain(
        reasonsFor(resolveScene(silent))[0]!.sentence,
      );
    }));
});

describe("the reasons", () => {
  it("light one step at a time, by pointer and by keys", () =>
    onBench(async (page) => {
      const lit = page.locator(".chain li[data-lit=true]");
      const steps = page.locator(".chain button");
      await steps.nth(4).hover();
      expect(await lit.count()).toBe(1);
      await page.locator("h1").hover();
      expect(await lit.count()).toBe(0);
      await page.getByRole("button", { name: "NAV2", exact: true }).focus();
      // What a hand can do to the sheet, then the steps.
      for (let count = 0; count < 4; count++) await page.keyboard.press("Tab");
      expect(await lit.textContent()).toBe(await page.locator(".chain li").nth(1).textContent());
      expect(await page.locator(".source").textContent()).toMatch(/^Rule: .+/);
    }));

  it("leave out what a cover hides, and the dart with it, until the cover is lifted", () =>
    onBench(
      async (page) => {
        const covered = demoScene("22-two-lines-one-mailboat");
        const open = reasonsFor(resolveScene({ ...covered, covers: [] })).filter(
          ({ receiver }) => receiver === covered.receivers[0]!.name,
        );
        expect(covered.covers).toContain("aircraft");
        const told = await page.locator(".chain strong").allTextContents();
        expect(told.length).toBeLessThan(open.length);
        expect(await dart(page).count()).toBe(0);
        await page.getByRole("button", { name: /^Cover/ }).click();
        await page.getByRole("button", { name: "Lift all covers" }).click();
        await expect
          .poll(() => page.locator(".chain strong").allTextContents(), POLL)
          .toEqual(open.map(({ title }) => title));
        expect(await dart(page).count()).toBe(1);
      },
      { path: "#scene=22" },
    ));
});

it("every scene of the demo is shown as the engine reads it", () =>
  onBench(async (page) => {
    await page.getByRole("button", { name: "Home", exact: true }).click();
    const cards = page.locator(".scene-card");
    const keys = await cards.evaluateAll((all) => all.map((card) => card.getAttribute("href")!.slice(7)));
    expect(keys.length).toBeGreaterThanOrEqual(10);
    for (const key of keys) {
      await page.locator(`.scene-card[href="#scene=${key}"]`).click();
      await expectFaces(page, demoScene(key));
      await page.getByRole("button", { name: "Home", exact: true }).click();
    }
  }));

describe("the first minute", () => {
  it("ticks each step off and goes away for good", () =>
    onBench(async (page) => {
      const slip = page.getByRole("complementary", { name: "First steps" });
      expect(await slip.locator("li[data-done=true]").count()).toBe(0);
      await dragBy(page, dart(page), 30, 0);
      expect(await slip.locator("li[data-done=true]").allTextContents()).toEqual([
        expect.stringContaining("Drag the dart"),
      ]);
      await courseCard(page, "NAV1").press("ArrowUp");
      await page.locator(".chain button").first().hover();
      await expect.poll(() => slip.count(), POLL).toBe(0);
      await page.reload();
      await page.locator(".chart-ground > svg").waitFor();
      expect(await slip.count()).toBe(0);
    }));
});

describe("for everyone", () => {
  it("announces the face that changed once it has settled, and only that", () =>
    onBench(async (page) => {
      const announced = page.getByRole("status", { name: "Instruments" });
      await expect.poll(() => announced.textContent(), POLL).toBe(facesOf(FIRST).join(" "));
      await course(page, "NAV2").fill("180");
      await expect
        .poll(() => announced.textContent(), POLL)
        .toBe(facesOf(afterActions(FIRST, setCourse("NAV2", 180)))[1]);
    }));

  it("zooms and pans by wheel, buttons and keys, and finds back", () =>
    onBench(async (page) => {
      const at = async () => (await dart(page).boundingBox())!;
      const start = await at();
      await page.mouse.move(start.x + start.width / 2, start.y + start.height / 2 - 60);
      await page.mouse.wheel(0, -240);
      await expect.poll(async () => (await at()).y, POLL).toBeGreaterThan(start.y + 10);
      await page.getByRole("button", { name: "Fit" }).click();
      await expect.poll(at).toEqual(start);
      await page.getByRole("application").focus();
      await page.keyboard.press("ArrowLeft");
      await expect.poll(async () => Math.round((await at()).x - start.x), POLL).toBe(60);
      await page.keyboard.press("0");
      await expect.poll(at).toEqual(start);
      const ground = (await page.locator(".chart-ground").boundingBox())!;
      await page.mouse.move(ground.x + 60, ground.y + 60);
      await page.mouse.down();
      await page.mouse.move(ground.x + 100, ground.y + 90, { steps: 3 });
      await page.mouse.up();
      await expect.poll(async () => Math.round((await at()).x - start.x), POLL).toBe(40);
      expect(Math.round((await at()).y - start.y)).toBe(30);
    }));

  it.each(["light", "dark"] as const)("has nothing that axe-core objects to (%s)", (colorScheme) =>
    onBench(
      async (page) => {
        const check = async (state: string) => {
          const { violations } = await page.evaluate<{ violations: readonly Violation[] }>(
            // Evaluated by the debugger, which the content security policy of the page does not bind.
            `${axe.source};axe.run({ resultTypes: ["violations"] })`,
          );
          expect(summary(violations), state).toEqual([]);
        };
        await check("as opened");
        await page.locator(".chain button").nth(2).hover();
        await frequency(page, "NAV1").fill("108.10");
        await frequency(page, "NAV1").press("Enter");
        await page.locator("summary").click();
        await check("with a refused frequency and the story open");
        await page.getByRole("button", { name: "Help" }).click();
        await page.getByRole("dialog", { name: "Help" }).waitFor();
        await check("with the help sheet");
        await page.keyboard.press("Escape");
        await page.setViewportSize(PHONE);
        await check("on a phone");
        await page.setViewportSize(LAPTOP);
        await page.goto(`${bench.address()}/#scene=22`);
        await page.reload();
        await page.locator(".chart-ground > svg").waitFor();
        await check("with a cover");
      },
      { colorScheme },
    ),
  );

  it("keeps the chart in sight on a phone while the reasons are read, and lights it by a tap", () =>
    onBench(
      async (page) => {
        await page.getByRole("button", { name: "Reasons", exact: true }).tap();
        const step = page.locator(".chain button").nth(4);
        await step.tap();
        expect(await page.locator(".chain li[data-lit=true]").count()).toBe(1);
        const chart = (await page.locator(".chart-ground").boundingBox())!;
        const lit = (await step.boundingBox())!;
        expect(chart.y).toBeGreaterThanOrEqual(0);
        expect(lit.y).toBeGreaterThan(chart.y + chart.height);
        expect(lit.y + lit.height).toBeLessThanOrEqual(PHONE.height);
      },
      { viewport: PHONE, hasTouch: true, isMobile: true },
    ));

  it("follows the theme chosen, and remembers it", () =>
    onBench(async (page) => {
      const desk = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
      const light = await desk();
      await page.getByRole("combobox", { name: "Light or dark" }).selectOption("dark");
      await expect.poll(desk).not.toBe(light);
      const dark = await desk();
      await page.reload();
      await page.locator(".chart-ground > svg").waitFor();
      expect(await desk()).toBe(dark);
    }));

  it("fits a phone: nothing wider than the screen, every control large enough for a finger", () =>
    onBench(
      async (page) => {
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
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
        expect(small).toEqual([]);
      },
      { viewport: PHONE, hasTouch: true, isMobile: true },
    ));
});

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

const summary = (violations: readonly Violation[]): string[] =>
  violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
  );
