/** The line that ties the phase to chart and panel: there while the signal is pointed at, ending at needle and radial; none under a cover. */

import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { benchUnderTest } from "./bench-under-test.ts";

const bench = benchUnderTest();

const pointAtSignal = (page: Page) => page.locator(".signal-plot").hover();
const tie = (page: Page) => page.locator(".tie-line path");
/** Where the two strokes end. */
async function tieEnds(page: Page): Promise<readonly (readonly [number, number])[]> {
  const d = (await tie(page).getAttribute("d")) ?? "";
  return [...d.matchAll(/L([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
}

describe("the tie between signal, chart and panel", () => {
  it("ends at the radial and at the needle, follows the course, and goes with the hand", () =>
    bench.visit(async (page) => {
      await pointAtSignal(page);
      await tie(page).waitFor({ state: "attached" });
      const needle = page.locator('.receiver-body[data-receiver="NAV1"] [data-part="needle"]').first();
      const box = await needle.boundingBox();
      if (box === null) throw new Error("no needle is drawn");
      const [, before] = await tieEnds(page);
      expect(before?.[0]).toBeCloseTo(box.x + box.width / 2, 0);
      await page.getByRole("spinbutton", { name: "NAV1 course", exact: true }).fill("064");
      await page.keyboard.press("Enter");
      await pointAtSignal(page);
      await page.waitForFunction(
        (x) =>
          Number(
            /L[\d.]+ [\d.]+M[\d.]+ [\d.]+L([\d.]+)/.exec(
              document.querySelector(".tie-line path")?.getAttribute("d") ?? "",
            )?.[1],
          ) !== x,
        before?.[0],
      );
      await page.locator(".chart-ground").hover();
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
      await tie(page).waitFor({ state: "detached" });
    }));

  it("stays while a step of the argument lights the radial", () =>
    bench.visit(async (page) => {
      await page.getByText("whichever way you point").first().hover();
      await tie(page).waitFor({ state: "attached" });
      expect(await tieEnds(page)).toHaveLength(2);
    }));

  it("is not drawn where anything is covered", () =>
    bench.visit(
      async (page) => {
        await pointAtSignal(page);
        await page.waitForTimeout(300);
        expect(await tie(page).count()).toBe(0);
      },
      { path: "#scene=22-two-lines-one-mailboat" },
    ));
});
