/** A learner at the page: one who holds two mistaken ideas hears them named, and every way of answering works. */

import { describe, expect, it } from "vitest";
import { slipOf } from "../../src/practice/index.ts";
import { RECORD_KEY } from "../../src/web/practice/practice-store.ts";
import { objections } from "./axe.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { answerWith, askedNow, goThrough, PRACTICE, settled, stage } from "./practice-person.ts";

const bench = benchUnderTest();

describe("a learner", () => {
  it("who holds two ideas gets both named, and is told what to do next", () =>
    bench.visit(async (page) => {
      const held = ["radial-reads-inbound", "needle-is-aircraft"] as const;
      await page
        .getByRole("combobox", { name: "In which part?" })
        .selectOption({ label: "Reading the panel" });
      await page.getByRole("button", { name: "Find out", exact: true }).click();
      const forms = await goThrough(page, held);
      expect(forms.length).toBeGreaterThan(4);
      const words = await page.locator(".practice-end").textContent();
      for (const slip of held) {
        expect(words).toContain(`You most likely hold this idea: “${slipOf(slip).name}.”`);
        expect(words).toContain(slipOf(slip).refutation);
      }
      expect(words).not.toMatch(/%/);
      expect(await objections(page)).toEqual([]);
      await page.getByRole("button", { name: /^Practise “/ }).click();
      await settled(page);
      expect(await stage(page)).toBe("asking");
    }, PRACTICE));

  it("who has it right hears of no idea", () =>
    bench.visit(async (page) => {
      await page.getByRole("button", { name: /: Centre and read$/ }).click();
      expect(await goThrough(page, [])).toHaveLength(6);
      expect(await page.locator(".practice-end").textContent()).toContain(
        "No mistaken idea shows in these answers.",
      );
      // What was cleared is watched from now on.
      await expect
        .poll(() => page.evaluate((key) => localStorage.getItem(key), RECORD_KEY))
        .toContain('["cleared"');
    }, PRACTICE));

  it("sees after a wrong answer his own world beside the true one, and gets one like it", () =>
    bench.visit(async (page) => {
      await page.getByRole("button", { name: /: Centre and read$/ }).click();
      await settled(page);
      const { problem } = await askedNow(page);
      const [wrong] = problem.slipAnswers;
      await answerWith(page, wrong!.answer);
      await page.getByRole("button", { name: "Check" }).click();
      await page.getByRole("heading", { name: "Not so" }).waitFor();
      expect(await page.locator(".practice-plate figcaption strong").allTextContents()).toEqual([
        "What is so",
        "As your answer has it",
      ]);
      await page.getByRole("button", { name: "Try one like it" }).click();
      await page.getByText("One like it, now that you have seen why").waitFor();
      const after = await askedNow(page);
      expect(after.problem.form.id).toBe(problem.form.id);
      expect(after.problem.slipAnswers.map(({ slip }) => slip)).toContain(after.asked.followUp);
    }, PRACTICE));

  it("who does not know yet is shown the way, and no idea is laid at his door", () =>
    bench.visit(async (page) => {
      await page.getByRole("button", { name: /: Cut the line$/ }).click();
      await settled(page);
      await page.getByRole("button", { name: "I don't know yet" }).click();
      await page.getByRole("heading", { name: "Not yet, then: here is the way" }).waitFor();
      expect(await page.locator(".practice-steps li").count()).toBeGreaterThan(0);
      expect(await page.locator(".practice-slip").count()).toBe(0);
      expect(await page.getByRole("button", { name: "Next problem" }).count()).toBe(1);
    }, PRACTICE));

  it("hears what is missing when he checks too soon, and nothing is lost", () =>
    bench.visit(async (page) => {
      await page.getByRole("button", { name: /: Say what a station sends$/ }).click();
      await settled(page);
      await page.getByRole("button", { name: "Check" }).click();
      await page.getByText("Choose one of the answers.").waitFor();
      expect(await stage(page)).toBe("asking");
    }, PRACTICE));
});
