/** Practice as a page: how it is reached, and that nothing on it shuts anyone out. */

import { describe, expect, it } from "vitest";
import { problemCode } from "../../src/practice/index.ts";
import { objections } from "./axe.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { DESKTOP, LAPTOP, PHONE } from "./browser.ts";
import { answerWith, askedNow, ISLES, PRACTICE, settled } from "./practice-person.ts";

const bench = benchUnderTest();

/** Of a problem that any bench can open. */
const CODE = problemCode({ form: "side-call", mode: "choose", seed: 9, mark: ISLES.mark });

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

  it("chooses problems itself where the browser runs no worker for it", () =>
    bench.visit(
      async (page) => {
        await page.getByRole("button", { name: /: Centre and read$/ }).click();
        await settled(page);
        expect((await askedNow(page)).problem.form.skills).toContain("centre-and-read");
      },
      {
        ...PRACTICE,
        early: (page) => page.route(/tutor-worker/, (route) => route.abort()),
        overlook: (error) => error.includes("tutor-worker"),
      },
    ));

  it("goes on where the browser keeps nothing, and says so", () =>
    bench.visit(
      async (page) => {
        await page.getByRole("button", { name: /: Centre and read$/ }).click();
        await settled(page);
        await page.getByRole("button", { name: "I don't know yet" }).click();
        await page.getByText(/^This browser keeps nothing more for this page/).waitFor();
        await page.getByRole("button", { name: "Next problem" }).click();
        await settled(page);
      },
      {
        ...PRACTICE,
        early: (page) =>
          page.addInitScript(() => {
            Storage.prototype.setItem = () => {
              throw new DOMException("full", "QuotaExceededError");
            };
          }),
      },
    ));

  it("opens one problem by the code in its address, from its card", () =>
    bench.visit(
      async (page) => {
        await page.getByRole("heading", { name: `Problem ${CODE}` }).waitFor();
        await page.getByRole("button", { name: "Start it" }).click();
        await settled(page);
        expect((await askedNow(page)).problem.code).toBe(CODE);
      },
      { path: `#practice=${CODE}`, ready: ".practice-offer" },
    ));

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
