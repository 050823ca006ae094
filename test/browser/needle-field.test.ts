/** The needle field in the real Chromium: its pixels, as the screen shows them, against the engine run here in Node. */

import axe from "axe-core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import type { FieldKind } from "../../src/draw/field/field-choice.ts";
import { KIND_NAMES } from "../../src/draw/field/field-names.ts";
import { EDGE_INK, FIX_INKS, inksFor, RECEPTION_INKS, TILE_CELLS } from "../../src/draw/field/inks.ts";
import { chartProjection, THEMES, type Theme } from "../../src/draw/index.ts";
import { type LatLon, stationDeg } from "../../src/earth/index.ts";
import {
  crossFixAt,
  fieldReception,
  fixBand,
  NO_FIX,
  type ReceiverReading,
  receptionCode,
  shadeOf,
} from "../../src/panel/index.ts";
import { resolveScene, type Scene } from "../../src/scene/index.ts";
import { panned, zoomed } from "../../src/web/chart/chart-window.ts";
import { paperShift } from "../../src/web/field/plate-place.ts";
import { benchUnderTest, type Visit } from "./bench-under-test.ts";
import { PHONE } from "./browser.ts";
import { type ChartOnPage, chartOn, demoScene } from "./demo-in-node.ts";

const bench = benchUnderTest();

/** On a scene of the demo. */
const onScene = (name: string, use: (page: Page) => Promise<void>, visit: Visit = {}): Promise<void> =>
  bench.visit(use, {
    path: `#scene=${name}`,
    // A driver's remark about the screenshots taken here is none of the page's.
    overlook: (error) => error.includes("GPU stall due to ReadPixels"),
    ...visit,
  });

async function chooseField(page: Page, kind: FieldKind | null): Promise<void> {
  await page.getByRole("button", { name: /^Field/ }).click();
  await page.getByRole("radio", { name: kind === null ? "Nothing" : KIND_NAMES[kind] }).check();
  await page.keyboard.press("Escape");
  if (kind !== null) await fieldReady(page);
}

/** Waits for the full plate of the chart as it is; the legend that comes with a field has made the chart a little lower. */
const fieldReady = async (page: Page): Promise<void> => {
  await page.locator(".field-legend").waitFor();
  await page.waitForFunction(
    () => {
      const ground = document.querySelector(".chart-ground");
      const canvas = document.querySelector<HTMLElement>('.needle-field[data-ready="true"] canvas');
      return (
        canvas !== null &&
        canvas.style.width === `${ground?.clientWidth}px` &&
        canvas.style.height === `${ground?.clientHeight}px`
      );
    },
    undefined,
    { timeout: 30_000 },
  );
};

/** The graphics card of this machine is imitated by its processor; a page that cannot know it paints with WebGL all the same. */
const hideTheDriver = (): void => {
  const proto = WebGL2RenderingContext.prototype as { getExtension(name: string): unknown };
  const known = proto.getExtension;
  proto.getExtension = function (name) {
    return name === "WEBGL_debug_renderer_info" ? null : known.call(this, name);
  };
};

/** Which painter the canvas belongs to. */
const painterOn = (page: Page): Promise<string> =>
  page
    .locator(".needle-field canvas")
    .evaluate((canvas) => ((canvas as HTMLCanvasElement).getContext("2d") === null ? "card" : "hand"));

/** The colours on the screen, with nothing over the field and no ground shining through. */
async function screenPixels(page: Page): Promise<{ readonly widthPx: number; readonly rgba: Uint8Array }> {
  await page.evaluate(() => {
    for (const element of document.querySelectorAll<SVGElement | HTMLElement>(
      ".chart-ground > *:not(.needle-field)",
    ))
      element.style.setProperty("visibility", "hidden");
    document.querySelector<HTMLElement>(".needle-field")?.style.setProperty("mix-blend-mode", "normal");
  });
  const png = await page.locator(".chart-ground").screenshot();
  await page.evaluate(() => {
    for (const element of document.querySelectorAll<SVGElement | HTMLElement>(".chart-ground > *"))
      for (const name of ["visibility", "mix-blend-mode"]) element.style.removeProperty(name);
  });
  const { widthPx, bytes } = await page.evaluate(
    async (source) => {
      const image = new Image();
      image.src = source;
      await image.decode();
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext("2d");
      context?.drawImage(image, 0, 0);
      const data = context?.getImageData(0, 0, image.width, image.height).data ?? [];
      let text = "";
      for (let at = 0; at < data.length; at += 8192)
        text += String.fromCharCode(...data.slice(at, at + 8192));
      return { widthPx: image.width, bytes: btoa(text) };
    },
    `data:image/png;base64,${png.toString("base64")}`,
  );
  return { widthPx, rgba: Uint8Array.from(Buffer.from(bytes, "base64")) };
}

/** The ink of a place by the engine alone. */
function inkAt(kind: FieldKind, place: LatLon, [first, second]: readonly ReceiverReading[]): number {
  if (first === undefined) throw new Error("the scene has a receiver");
  const reception = RECEPTION_INKS + receptionCode(fieldReception(first));
  switch (kind) {
    case "needle":
    case "to-from":
      return first.radial === null ? reception : shadeOf(first);
    case "reception":
      return reception;
    case "fix": {
      const errorNm = second === undefined ? null : crossFixAt(place, first, second, 4);
      return FIX_INKS + (errorNm === null ? NO_FIX : fixBand(errorNm));
    }
  }
}

/** Two thousand pixels of the screen wear the ink that the engine asks for there; but a few, which lie on a line at an edge. */
async function expectField(
  page: Page,
  kind: FieldKind,
  scene: Scene,
  chart: ChartOnPage,
  theme: Theme = THEMES.light,
): Promise<void> {
  const { widthPx, rgba } = await screenPixels(page);
  const inks = inksFor(kind, theme);
  const { toWorld } = chartProjection(chart.view, chart.widthPx, chart.heightPx);
  const colourOf = (ink: number, x: number, y: number) =>
    String(inks.subarray((ink * TILE_CELLS + (y & 7) * 8 + (x & 7)) * 4).subarray(0, 3));
  let onEdges = 0;
  const met = new Set<number>();
  for (let index = 0; index < 2000; index++) {
    // The ground may end within its last pixel, which then shows what lies behind as well.
    const x = Math.floor((index * 0.754877666 * (chart.widthPx - 1)) % (chart.widthPx - 1));
    const y = Math.floor((index * 0.569840296 * chart.heightPx) % chart.heightPx);
    const place = toWorld(x + 0.5, y + 0.5);
    const { receivers } = resolveScene({ ...scene, aircraft: { ...scene.aircraft, position: place } });
    const ink = inkAt(kind, place, receivers);
    const from = (y * widthPx + x) * 4;
    const colour = String(rgba.subarray(from, from + 3));
    met.add(ink);
    if (colour === colourOf(ink, x, y)) continue;
    expect(colour, `pixel ${x}, ${y}`).toBe(colourOf(EDGE_INK, x, y));
    onEdges++;
  }
  expect(onEdges).toBeLessThan(50);
  expect(met.size).toBeGreaterThan(2);
}

const withCourse = (scene: Scene, course: number): Scene => ({
  ...scene,
  receivers: scene.receivers.map((receiver, index) =>
    index === 0 ? { ...receiver, course: stationDeg(course) } : receiver,
  ),
});

const FIRST = "01-which-way-to-the-course";
const MOUNTAIN = "14-what-the-mountain-hides";
const MAILBOAT = "22-two-lines-one-mailboat";

describe("the field's pixels", () => {
  it.each<[FieldKind, string, "hand" | "card", "light" | "dark"]>([
    ["needle", FIRST, "hand", "light"],
    ["needle", FIRST, "card", "dark"],
    ["to-from", MOUNTAIN, "hand", "dark"],
    ["to-from", MOUNTAIN, "card", "light"],
    ["reception", MOUNTAIN, "hand", "light"],
    ["reception", MOUNTAIN, "card", "dark"],
    ["fix", MAILBOAT, "hand", "light"],
    ["fix", MAILBOAT, "card", "light"],
  ])("are what the engine reads there: %s of %s, by %s, %s", (kind, name, painter, colorScheme) =>
    onScene(
      name,
      async (page) => {
        const scene = demoScene(name);
        await chooseField(page, kind);
        expect(await painterOn(page)).toBe(painter);
        await expectField(page, kind, scene, await chartOn(page, resolveScene(scene)), THEMES[colorScheme]);
      },
      { colorScheme, ...(painter === "card" ? { before: hideTheDriver } : {}) },
    ),
  );

  it.each<["hand" | "card"]>([["hand"], ["card"]])("follow the course as it turns, by %s", (painter) =>
    onScene(
      FIRST,
      async (page) => {
        await chooseField(page, "needle");
        const scene = demoScene(FIRST);
        const chart = await chartOn(page, resolveScene(scene));
        const course = page.getByRole("spinbutton", { name: "NAV1 course", exact: true });
        for (const degrees of [71, 160, 359]) {
          await course.fill(String(degrees));
          await course.press("Enter");
          await page.waitForTimeout(100);
          await expectField(page, "needle", withCourse(scene, degrees), chart);
        }
      },
      painter === "card" ? { before: hideTheDriver } : {},
    ),
  );

  it("follow the chart when it is moved and brought nearer, and go with it until the new plate is there", () =>
    onScene(
      FIRST,
      async (page) => {
        await chooseField(page, "reception");
        const scene = demoScene(FIRST);
        const chart = await chartOn(page, resolveScene(scene));
        const { widthPx, heightPx } = chart;
        const size = { widthPx, heightPx };
        const middle = { x: widthPx / 2, y: heightPx / 2 };
        const moved = panned(chart.view, size, middle, { x: middle.x + 60, y: middle.y });
        const view = zoomed(moved, size, 1.4, middle);
        await page.getByRole("application", { name: /^Chart ground/ }).focus();
        await page.keyboard.press("ArrowLeft");
        await page.keyboard.press("+");
        const style = () => page.locator(".needle-field canvas").evaluate((canvas) => canvas.style.transform);
        await expect.poll(style).toMatch(/^matrix/);
        const shift = paperShift({ view: chart.view, ...size }, { view, ...size });
        const numbers = (await style()).match(/-?[\d.]+(e-?\d+)?/g)?.map(Number) ?? [];
        const { a, b: turn, e, f } = shift;
        [a, turn, -turn, a, e, f].forEach((value, index) => {
          expect(numbers[index]).toBeCloseTo(value, 2);
        });
        await fieldReady(page);
        expect(await style()).toBe("none");
        const projection = chartProjection(view, widthPx, heightPx);
        await expectField(page, "reception", scene, { ...chart, view, projection });
      },
      { before: slowWorker },
    ));
});

/** A worker that is slow to hear, so that what is shown meanwhile can be looked at. */
const slowWorker = (): void => {
  const Real = Worker;
  globalThis.Worker = class extends Real {
    override postMessage(message: unknown): void {
      setTimeout(() => super.postMessage(message), 1500);
    }
  } as typeof Worker;
};

describe("the plate", () => {
  /** Counts what the page asks its workers for. */
  const countOrders = (): void => {
    const Real = Worker;
    const counted = globalThis as unknown as { orders: number; Worker: typeof Worker };
    counted.orders = 0;
    counted.Worker = class extends Real {
      override postMessage(message: unknown): void {
        counted.orders += 1;
        super.postMessage(message);
      }
    } as typeof Worker;
  };
  const ordersOn = (page: Page): Promise<number> =>
    page.evaluate(() => (globalThis as unknown as { orders: number }).orders);

  it("stands while the course turns and the aircraft is moved; another altitude makes another", () =>
    onScene(
      FIRST,
      async (page) => {
        await chooseField(page, "needle");
        const before = await ordersOn(page);
        await page.getByRole("slider", { name: "NAV1 course, by the card" }).press("ArrowRight");
        const dart = page.getByRole("button", { name: /^Aircraft/ });
        for (let press = 0; press < 5; press++) await dart.press("ArrowUp");
        await fieldReady(page);
        expect(await ordersOn(page)).toBe(before);
        const altitude = page.getByRole("spinbutton", { name: /^altitude/i });
        await altitude.fill("6000");
        await altitude.press("Enter");
        await expect.poll(() => ordersOn(page)).toBe(before + 1);
        await fieldReady(page);
        const scene = demoScene(FIRST);
        const higher = { ...scene, aircraft: { ...scene.aircraft, altitudeFt: 6000 } };
        await expectField(page, "needle", withCourse(higher, 71), await chartOn(page, resolveScene(scene)));
      },
      { before: countOrders },
    ));

  it("is painted by hand when the graphics card is taken away", () =>
    onScene(
      FIRST,
      async (page) => {
        await chooseField(page, "needle");
        expect(await painterOn(page)).toBe("card");
        await page.locator(".needle-field canvas").evaluate((canvas) => {
          const gl = (canvas as HTMLCanvasElement).getContext("webgl2");
          gl?.getExtension("WEBGL_lose_context")?.loseContext();
        });
        await expect.poll(() => painterOn(page)).toBe("hand");
        const scene = demoScene(FIRST);
        await expectField(page, "needle", scene, await chartOn(page, resolveScene(scene)));
      },
      { before: hideTheDriver },
    ));
});

describe("the button", () => {
  it("works by keyboard alone, and gives the focus back", () =>
    onScene(MAILBOAT, async (page) => {
      const button = page.getByRole("button", { name: /^Field/ });
      await button.focus();
      await page.keyboard.press("Enter");
      await page.locator(".field-panel").waitFor();
      await page.keyboard.press("Tab");
      for (let press = 0; press < 4; press++) await page.keyboard.press("ArrowDown");
      await fieldReady(page);
      expect(await page.locator(".needle-field").getAttribute("data-field")).toBe("fix");
      const legend = page.getByRole("region", { name: "Legend of the needle field" });
      expect(await legend.getByRole("heading").textContent()).toMatch(
        /^Fix by NAV1 and NAV2 at [\d,]+ ft, each within 4°/,
      );
      expect(await legend.getByRole("listitem").allTextContents()).toEqual([
        "under 1",
        "1 to 2",
        "2 to 4",
        "4 to 8",
        "8 NM or more",
      ]);
      await page.keyboard.press("Escape");
      expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
      expect(await button.getAttribute("aria-expanded")).toBe("false");
    }));

  it("takes the field away again, to the very chart that was", () =>
    onScene(FIRST, async (page) => {
      const picture = page.locator(".chart-ground > svg").last();
      const before = await picture.evaluate((svg) => svg.outerHTML);
      await chooseField(page, "needle");
      expect(await page.locator(".chart-ground > svg").count()).toBe(2);
      await chooseField(page, null);
      await expect.poll(() => picture.evaluate((svg) => svg.outerHTML)).toBe(before);
    }));

  it("shows the legend of what is on the chart, and nothing that is covered", () =>
    onScene(MOUNTAIN, async (page) => {
      await chooseField(page, "reception");
      const legend = page.getByRole("region", { name: "Legend of the needle field" });
      await expect
        .poll(() => legend.getByRole("listitem").allTextContents())
        .toContain("hidden by high ground");
    }));

  it.each<["light" | "dark"]>([["light"], ["dark"]])("has nothing for axe to find, %s", (colorScheme) =>
    onScene(
      MAILBOAT,
      async (page) => {
        for (const kind of ["needle", "to-from", "reception", "fix"] as const) {
          await chooseField(page, kind);
          await page.getByRole("button", { name: /^Field/ }).click();
          await page.evaluate(axe.source);
          const found = await page.evaluate(async () => {
            const run = (globalThis as unknown as { axe: typeof axe }).axe;
            const { violations } = await run.run({
              include: [".field-menu", ".field-legend", ".chart-ground"],
            });
            return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
          });
          expect(found).toEqual([]);
          await page.keyboard.press("Escape");
        }
      },
      { colorScheme },
    ),
  );

  it("works by touch at phone size", () =>
    onScene(
      FIRST,
      async (page) => {
        await page.getByRole("button", { name: "Tools" }).tap();
        await page.getByRole("button", { name: /^Field/ }).tap();
        const needle = page.getByRole("radio", { name: "Needle" });
        const box = (await page.locator(".field-panel").boundingBox())!;
        expect(box.x).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width).toBeLessThanOrEqual(PHONE.width);
        await needle.tap();
        await page.touchscreen.tap(PHONE.width / 2, 120);
        await expect.poll(() => page.locator(".field-panel").count()).toBe(0);
        await page.getByRole("button", { name: "Chart" }).tap();
        await fieldReady(page);
      },
      { viewport: PHONE, hasTouch: true, isMobile: true },
    ));
});
