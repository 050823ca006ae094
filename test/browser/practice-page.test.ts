/** Practice as a page: how it is reached, and that nothing on it shuts anyone out. */

import { describe, expect, it } from "vitest";
import { objections } from "./axe.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { DESKTOP, LAPTOP, PHONE } from "./browser.ts";
import { answerWith, askedNow, PRACTICE, settled } from "./practice-person.ts";

const bench = benchUnderTest();

describe("practice", () => {
  it("is reached from the bench by its button and its key, from home, and by its address", () =>
    bench.visit(async (page) => {
      await page.getByRole("button", { name: "Practice", exact: true }).click();
      await page.locator(".practice-start").waitFor();
      expect(new URL(page.url()).hash).toBe("#practice");
      expect(await page.title()).toBe("Practice · Needlework");
      await page.getByRole("button", { name: "To the bench" }).click();
      await page.locator(".chart-ground > svg").waitFor();
      await page.keyboard.press("q");
      await page.locator(".practice-start").waitFor();
      await page.goBack();
      await page.locator(".chart-ground > svg").waitFor();
      await page.getByRole("button", { name: "Home" }).click();
      await page.getByRole("button", { name: "Practice", exact: true }).click();
      await page.locator(".practice-start").waitFor();
    }));

  it.each([
    ["desk", DESKTOP, "light"],
    ["laptop", LAPTOP, "dark"],
    ["phone", PHONE, "dark"],
    ["phone", PHONE, "light"],
  ] as const)("gives axe nothing to object to: %s, %o, %s", (_, viewport, colorScheme) =>
    bench.visit(
      async (page) => {
        expect(await objections(page), "the start").toEqual([]);
        await page.getByRole("button", { name: /: Centre and read$/ }).click();
        await settled(page);
        expect(await objections(page), "a problem").toEqual([]);
        const { problem } = await askedNow(page);
        await answerWith(page, problem.slipAnswers[0]!.answer);
        expect(await objections(page), "an answer").toEqual([]);
        await page.getByRole("button", { name: "Check" }).click();
        await page.getByRole("heading", { name: "Not so" }).waitFor();
        expect(await objections(page), "a wrong answer").toEqual([]);
      },
      { ...PRACTICE, viewport, colorScheme },
    ),
  );
});
