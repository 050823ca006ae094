/** The panel and the reasons in the real Chromium: receivers that come and go, the clock, and asking a needle why. */

import axe from "axe-core";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { reasonsFor } from "../../src/reason/index.ts";
import { resolveScene, type Scene } from "../../src/scene/index.ts";
import { act, type SceneAction } from "../../src/web/state/actions.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { DESKTOP, LAPTOP, PHONE } from "./browser.ts";
import { demoScene, facesOf, facesOn } from "./demo-in-node.ts";

const FIRST = demoScene("01-which-way-to-the-course");
const acted = (...actions: SceneAction[]): Scene => actions.reduce(act, FIRST);
const POLL = { timeout: 10_000 };

const bench = benchUnderTest();

const onBench = bench.visit;

const expectFaces = (page: Page, scene: Scene): Promise<void> =>
  expect.poll(() => facesOn(page), POLL).toEqual(facesOf(scene));
const face = (page: Page, receiver: string): Locator =>
  page.getByRole("combobox", { name: `${receiver} face` });
const receiver = (page: Page, name: string): Locator =>
  page.getByRole("article", { name: `${name} receiver` });
const courseCard = (page: Page, name: string): Locator =>
  page.getByRole("slider", { name: `${name} course, by the card` });

/** Opens a receiver's "More" and presses a button of it. */
async function more(page: Page, name: string, button: string): Promise<void> {
  await page.getByRole("button", { name: `More of ${name}` }).click();
  await page.getByRole("button", { name: button }).click();
}
const addReceiver = (page: Page) => more(page, "NAV1", "Add a receiver");

/** Numbers of the steps that speak of a part, by the engine. */
const stepsOf = (scene: Scene, name: string, part: string): string[] =>
  reasonsFor(resolveScene(scene))
    .filter((reason) => reason.receiver === name && (reason.parts as readonly string[]).includes(part))
    .map((reason) => String(reason.number));
const litSteps = (page: Page): Promise<string[]> =>
  page.locator(".chain li[data-lit=true] .bead").allTextContents();
const expectLit = (page: Page, scene: Scene, name: string, part: string): Promise<void> => {
  const steps = stepsOf(scene, name, part);
  expect(steps.length).toBeGreaterThan(0);
  return expect.poll(() => litSteps(page), POLL).toEqual(steps);
};
/** Rests the mouse on the middle of something drawn, whatever lies over it. */
async function restOn(page: Page, what: Locator): Promise<void> {
  const box = (await what.boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
}

/** What stands out of its cell or over another thing of its cell, by more than a pixel. */
const crampedIn = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const faults: string[] = [];
    for (const cell of document.querySelectorAll(".receiver, .aircraft")) {
      const room = cell.getBoundingClientRect();
      const things = [
        ...cell.querySelectorAll(
          ".number-input, .station-pick, .step-button, .why, .identify-button, .face-pick, .quiet, .clock-time, .button, .caption",
        ),
      ].filter((thing) => thing.checkVisibility() && thing.getBoundingClientRect().width > 1);
      const boxes = things.map((thing) => ({ thing, box: thing.getBoundingClientRect() }));
      for (const { thing, box } of boxes) {
        const what = `${cell.getAttribute("aria-label")}: ${thing.className} ${thing.textContent}`;
        if (box.left < room.left - 1 || box.right > room.right + 1 || box.bottom > room.bottom + 1)
          faults.push(`${what} stands out`);
        if (thing.scrollWidth > thing.clientWidth + 1 && thing.matches(".why, .button, .quiet"))
          faults.push(`${what} is cut`);
        for (const other of boxes) {
          if (other.thing === thing || other.thing.contains(thing) || thing.contains(other.thing)) continue;
          const acrossPx = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
          const downPx = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
          if (acrossPx > 1 && downPx > 1) faults.push(`${what} lies over ${other.thing.className}`);
        }
      }
    }
    return faults;
  });

describe("receivers", () => {
  it("come one by one to four, go again, and each step is taken back", () =>
    onBench(async (page) => {
      await addReceiver(page);
      await addReceiver(page);
      const four = acted({ kind: "add-receiver" }, { kind: "add-receiver" });
      expect(four.receivers.length).toBe(4);
      await expectFaces(page, four);
      await page.getByRole("button", { name: "More of NAV1" }).click();
      expect(await page.getByRole("button", { name: "Add a receiver" }).isDisabled()).toBe(true);
      await page.getByRole("button", { name: "Remove NAV1" }).click();
      const left = act(four, { kind: "remove-receiver", receiver: "NAV1" });
      await expectFaces(page, left);
      await page.getByRole("button", { name: "Undo" }).click();
      await page.getByRole("button", { name: "Undo" }).click();
      await expectFaces(page, acted({ kind: "add-receiver" }));
      await more(page, "NAV3", "Remove NAV3");
      await more(page, "NAV2", "Remove NAV2");
      await page.getByRole("button", { name: "More of NAV1" }).click();
      expect(await page.getByRole("button", { name: "Remove NAV1" }).isDisabled()).toBe(true);
    }));

  it("wear any face, and turn on it as it turns", () =>
    onBench(async (page) => {
      await face(page, "NAV1").selectOption("hsi");
      const hsi = acted({ kind: "set-face", receiver: "NAV1", face: "hsi" });
      await expectFaces(page, hsi);
      await courseCard(page, "NAV1").press("Shift+ArrowRight");
      await expectFaces(page, act(hsi, { kind: "turn-course", receiver: "NAV1", byDeg: 10 }));
      await face(page, "NAV1").selectOption("rmi");
      expect(await courseCard(page, "NAV1").count()).toBe(0);
      const rmi = act(acted({ kind: "turn-course", receiver: "NAV1", byDeg: 10 }), {
        kind: "set-face",
        receiver: "NAV1",
        face: "rmi",
      });
      await expectFaces(page, rmi);
    }));

  it("share one dial as two RMIs: single pointer NAV1, double pointer NAV2", () =>
    onBench(async (page) => {
      await face(page, "NAV1").selectOption("rmi");
      await face(page, "NAV2").selectOption("rmi");
      const both = acted(
        { kind: "set-face", receiver: "NAV1", face: "rmi" },
        { kind: "set-face", receiver: "NAV2", face: "rmi" },
      );
      await expect.poll(() => facesOn(page), POLL).toEqual([facesOf(both).join(" ")]);
      const pointer = (name: string) =>
        page.locator(`[data-face=rmi] [data-part=needle][data-receiver=${name}]`);
      const readings = resolveScene(both).receivers;
      for (const reading of readings) {
        const turned = (await pointer(reading.settings.name).getAttribute("transform"))!;
        expect(Number(/rotate\((.+)\)/.exec(turned)![1])).toBeCloseTo(reading.rmiPointerRelativeDeg!, 1);
      }
      // A double pointer has two rails.
      const rails = async (name: string) =>
        (await pointer(name).locator("path").first().getAttribute("d"))!.split("M").length;
      expect(await rails("NAV2")).toBeGreaterThan(await rails("NAV1"));
      expect(await receiver(page, "NAV2").locator(".shown-on").textContent()).toContain("NAV1");
      await page.locator("[data-face=rmi] [data-part=needle]").nth(1).waitFor();
    }));

  it("measure with their own error, typed or stepped, and the argument says so", () =>
    onBench(async (page) => {
      await page.getByRole("button", { name: "More of NAV1" }).click();
      const error = page.getByRole("spinbutton", { name: "NAV1 error" });
      await error.fill("+4");
      await error.press("Enter");
      await error.press("ArrowDown");
      const off = acted({ kind: "set-bearing-error", receiver: "NAV1", errorDeg: 3 });
      await expectFaces(page, off);
      expect(await error.inputValue()).toBe("+3");
      await error.fill("left");
      await error.press("Enter");
      expect(await page.locator("#NAV1-error-fault").textContent()).toMatch(/−30 to \+30 degrees/);
      await page.keyboard.press("Escape");
      expect(await error.count()).toBe(0);
      const radial = reasonsFor(resolveScene(off)).find(({ rule }) => rule === "radial")!;
      expect(radial.sentence).toContain("reads 3");
      await expect.poll(() => page.locator(".chain").textContent(), POLL).toContain(radial.sentence);
    }));

  it.each([
    ["1440x900", DESKTOP],
    ["1024x768", LAPTOP],
    ["390x844", PHONE],
  ] as const)("one to four stand without cramping at %s", (_, viewport) =>
    onBench(
      async (page) => {
        await more(page, "NAV2", "Remove NAV2");
        for (let count = 1; count <= 4; count++) {
          await expect.poll(() => page.locator(".receiver").count(), POLL).toBe(count);
          expect(await crampedIn(page), `${count} receivers`).toEqual([]);
          const sizes = await page
            .locator(".receiver .face")
            .evaluateAll((faces) => faces.map((each) => each.getBoundingClientRect().width));
          expect(Math.min(...sizes), `${count} receivers`).toBeGreaterThanOrEqual(110);
          if (count < 4) await addReceiver(page);
        }
        await face(page, "NAV2").selectOption("hsi");
        await face(page, "NAV3").selectOption("rmi");
        expect(await crampedIn(page)).toEqual([]);
      },
      { viewport, ...(viewport === PHONE ? { hasTouch: true, isMobile: true } : {}) },
    ),
  );
});

describe("the card", () => {
  it("takes three digits typed, and says what is none", () =>
    onBench(async (page) => {
      const card = courseCard(page, "NAV1");
      await card.focus();
      await page.keyboard.type("255");
      const turned = act(FIRST, { kind: "turn-course", receiver: "NAV1", byDeg: 255 - 70 });
      await expectFaces(page, turned);
      await page.keyboard.type("40");
      expect(await receiver(page, "NAV1").locator(".typed").textContent()).toBe("40–");
      await page.keyboard.press("Backspace");
      await page.keyboard.type("00");
      expect(await receiver(page, "NAV1").locator(".typed").textContent()).toMatch(/001 to 360/);
      await page.keyboard.press("Escape");
      await expectFaces(page, turned);
      const heading = page.getByRole("slider", { name: "Heading, by the card" });
      await heading.focus();
      await page.keyboard.type("180");
      expect(await page.getByRole("spinbutton", { name: "Heading" }).inputValue()).toBe("180");
    }));
});

describe("the clock", () => {
  it("starts, stops and is brought back by T, and not while a text is typed", () =>
    onBench(async (page) => {
      const clock = page.getByRole("timer");
      expect(await clock.textContent()).toBe("00:00");
      await page.getByRole("textbox", { name: "NAV1 frequency" }).press("t");
      await page.keyboard.press("Escape");
      await page.getByRole("application").focus();
      await page.keyboard.press("t");
      await expect.poll(() => clock.textContent(), POLL).toBe("00:02");
      await page.keyboard.press("t");
      const stood = await clock.textContent();
      await page.waitForTimeout(1300);
      expect(await clock.textContent()).toBe(stood);
      await page.keyboard.press("Shift+T");
      expect(await clock.textContent()).toBe("00:00");
      await page.getByRole("button", { name: "Start" }).click();
      await expect.poll(() => clock.textContent(), POLL).toBe("00:01");
    }));

  it("counts the flight's time while it plays, and waits with it", () =>
    onBench(async (page) => {
      const clock = page.getByRole("timer");
      const seconds = async () => {
        const [minutes, rest] = (await clock.textContent())!.split(":").map(Number);
        return minutes! * 60 + rest!;
      };
      await page.getByRole("combobox", { name: /speed/i }).selectOption("20");
      await page.getByRole("application").focus();
      await page.keyboard.press(" ");
      await page.keyboard.press("t");
      await expect.poll(seconds, POLL).toBeGreaterThan(30);
      await page.keyboard.press(" ");
      await page.waitForTimeout(300);
      const halted = await seconds();
      await page.waitForTimeout(1500);
      expect(await seconds()).toBe(halted);
    }));
});

describe("asking why", () => {
  it("by the mouse: needle, flag, card, DME and frequency light the steps that speak of them", () =>
    onBench(async (page) => {
      const nav1 = receiver(page, "NAV1");
      await restOn(page, nav1.locator("svg [data-part=needle]"));
      await expectLit(page, FIRST, "NAV1", "needle");
      expect(await page.locator(".source").textContent()).toMatch(/^The needle: \d steps speak of it$/);
      await restOn(page, nav1.locator("svg [data-part=flag]"));
      await expectLit(page, FIRST, "NAV1", "flag");
      const card = (await nav1.locator(".face").boundingBox())!;
      await page.mouse.move(card.x + card.width / 2, card.y + card.height * 0.12);
      await expectLit(page, FIRST, "NAV1", "course-card");
      await restOn(page, nav1.locator(".dme-row .why"));
      await expectLit(page, FIRST, "NAV1", "dme");
      await restOn(page, nav1.locator(".frequency"));
      await expectLit(page, FIRST, "NAV1", "frequency");
      await page.mouse.move(3, 3);
      await expect.poll(() => litSteps(page), POLL).toEqual([]);
    }));

  it("on the chart: the radial, the course line and the aircraft do", () =>
    onBench(async (page) => {
      const chart = page.locator(".chart-ground > svg");
      for (const part of ["radial", "course"] as const) {
        const at = await chart
          .locator(
            `path[data-part=${part}][data-receiver=NAV1], [data-part=${part}][data-receiver=NAV1] path`,
          )
          .first()
          .evaluate((line) => {
            const path = line as SVGPathElement;
            const point = path.getPointAtLength(path.getTotalLength() * 0.55);
            const on = new DOMPoint(point.x, point.y).matrixTransform(path.getScreenCTM()!);
            return { x: on.x, y: on.y };
          });
        await page.mouse.move(at.x, at.y);
        await expectLit(page, FIRST, "NAV1", part);
      }
      await restOn(page, chart.locator("[data-part=aircraft]"));
      await expectLit(page, FIRST, "NAV1", "aircraft");
      // Felt for only while asked: the ground is still dragged.
      expect(await page.locator("[data-asked]").count()).toBe(0);
    }));

  it("argues about the receiver whose needle is pointed at", () =>
    onBench(async (page) => {
      await restOn(page, receiver(page, "NAV2").locator("svg [data-part=needle]"));
      await expectLit(page, FIRST, "NAV2", "needle");
      expect(await page.locator(".chain").getAttribute("aria-label")).toBe("Why NAV2 reads so");
    }));

  it("leaves a step lit as long as it is pointed at, and what it speaks of", () =>
    onBench(async (page) => {
      const step = page.locator(".chain li", { hasText: "TO" }).last();
      await step.locator("button").hover();
      await page.waitForTimeout(500);
      expect(await page.locator(".chain li[data-lit=true]").count()).toBe(1);
      expect(await step.getAttribute("data-lit")).toBe("true");
      expect(await page.locator(".source").textContent()).toMatch(/^Rule: .+/);
      await page.mouse.move(3, 3);
      await expect.poll(() => litSteps(page), POLL).toEqual([]);
    }));

  it("brings the first such step into sight, and a click keeps it lit until Escape", () =>
    onBench(
      async (page) => {
        const nav1 = receiver(page, "NAV1");
        await nav1.locator(".needle-row .why").last().click();
        await expectLit(page, FIRST, "NAV1", "needle");
        await page.mouse.move(3, 3);
        await page.waitForTimeout(300);
        await expectLit(page, FIRST, "NAV1", "needle");
        const [step, chain] = await Promise.all([
          page.locator(".chain li[data-lit=true]").first().boundingBox(),
          page.locator(".argument").boundingBox(),
        ]);
        expect(step!.y).toBeGreaterThanOrEqual(chain!.y);
        expect(step!.y + step!.height).toBeLessThanOrEqual(chain!.y + chain!.height);
        await page.keyboard.press("Escape");
        await page.mouse.move(3, 3);
        await page.locator("body").press("Escape");
        await expect.poll(() => litSteps(page), POLL).toEqual([]);
      },
      { viewport: LAPTOP },
    ));

  it("by keys alone: flag, needle and DME are reached, and Enter keeps them lit", () =>
    onBench(async (page) => {
      await page.getByRole("button", { name: "NAV1 course up 1 degree" }).focus();
      for (const part of ["flag", "needle", "dme"]) {
        await page.keyboard.press("Tab");
        await expectLit(page, FIRST, "NAV1", part);
      }
      await page.keyboard.press("Enter");
      await page.keyboard.press("Shift+Tab");
      await expectLit(page, FIRST, "NAV1", "needle");
      await page.getByRole("button", { name: "Undo" }).focus();
      await page.getByRole("button", { name: "Home" }).focus();
      await expectLit(page, FIRST, "NAV1", "dme");
      await courseCard(page, "NAV1").focus();
      await page.keyboard.press("Shift+Tab");
      await page.keyboard.press("Tab");
      await expectLit(page, FIRST, "NAV1", "course-card");
    }));

  it("says nothing of what is covered", () =>
    onBench(
      async (page) => {
        const nav1 = receiver(page, "NAV1");
        await restOn(page, nav1.locator("svg [data-part=needle]"));
        await page.waitForTimeout(300);
        const said = await page.locator(".reasons").textContent();
        const scene = demoScene("22-two-lines-one-mailboat");
        const radial = reasonsFor(resolveScene(scene)).find(({ rule }) => rule === "radial")!;
        expect(said).not.toContain(radial.sentence);
        expect(await page.locator(".chart-ground [data-part=aircraft]").count()).toBe(0);
      },
      { path: "#scene=22" },
    ));

  it("shows at least five reasons at 1024x768", () =>
    onBench(
      async (page) => {
        const whole = await page.locator(".argument").evaluate((chain) => {
          const room = chain.getBoundingClientRect();
          return [...chain.querySelectorAll("li")].filter(
            (step) => step.getBoundingClientRect().bottom <= room.bottom + 1,
          ).length;
        });
        expect(whole).toBeGreaterThanOrEqual(5);
      },
      { viewport: LAPTOP },
    ));
});

describe("by a finger on a phone", () => {
  it("a tap on the needle's words keeps its steps lit, a drag on the card turns it", () =>
    onBench(
      async (page) => {
        const nav1 = receiver(page, "NAV1");
        await courseCard(page, "NAV1").scrollIntoViewIfNeeded();
        const box = (await courseCard(page, "NAV1").boundingBox())!;
        const touch = await page.context().newCDPSession(page);
        const at = (deg: number) => ({
          x: box.x + box.width / 2 + box.width * 0.36 * Math.sin((deg * Math.PI) / 180),
          y: box.y + box.height / 2 - box.width * 0.36 * Math.cos((deg * Math.PI) / 180),
        });
        const send = (type: "touchStart" | "touchMove" | "touchEnd", deg: number) =>
          touch.send("Input.dispatchTouchEvent", {
            type,
            touchPoints: type === "touchEnd" ? [] : [at(deg)],
          });
        await send("touchStart", 60);
        for (const deg of [50, 40, 30]) await send("touchMove", deg);
        await send("touchEnd", 30);
        const turned = acted({ kind: "turn-course", receiver: "NAV1", byDeg: 30 });
        await expectFaces(page, turned);
        const words = nav1.locator(".needle-row .why").last();
        await words.scrollIntoViewIfNeeded();
        // A touch while the pane still scrolls only stops it.
        await page.evaluate(() => new Promise((done) => setTimeout(done, 100)));
        await words.tap();
        await page.getByRole("button", { name: "Reasons" }).tap();
        await expectLit(page, turned, "NAV1", "needle");
      },
      { viewport: PHONE, hasTouch: true, isMobile: true },
    ));

  it("every control of four receivers is large enough", () =>
    onBench(
      async (page) => {
        await addReceiver(page);
        await addReceiver(page);
        await page.getByRole("button", { name: "More of NAV1" }).click();
        const small = await page
          .locator(".panel :is(button, select, input, [role=slider])")
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

it.each(["light", "dark"] as const)("has nothing that axe-core objects to (%s)", (colorScheme) =>
  onBench(
    async (page) => {
      const check = async (state: string) => {
        const { violations } = await page.evaluate<{ violations: readonly Violation[] }>(
          `${axe.source};axe.run({ resultTypes: ["violations"] })`,
        );
        const told = violations.flatMap(({ id, nodes }) =>
          nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
        );
        expect(told, state).toEqual([]);
      };
      await addReceiver(page);
      await addReceiver(page);
      await face(page, "NAV2").selectOption("hsi");
      await page.getByRole("button", { name: "NAV1 needle" }).first().click();
      await check("four receivers, a needle asked about");
      await page.getByRole("button", { name: "More of NAV3" }).click();
      await check("more of a receiver");
      await page.keyboard.press("Escape");
      await courseCard(page, "NAV1").focus();
      await page.keyboard.type("40");
      await check("digits typed at a card");
      await page.setViewportSize(LAPTOP);
      await check("in a small window");
      await page.setViewportSize(PHONE);
      await check("on a phone");
    },
    { colorScheme },
  ),
);
