/** An instructor's set by its link: finished by keys alone, by thumbs on a phone, and taken up again after the page was closed. */

import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { buildSet, problemSetToLink } from "../../src/practice/index.ts";
import { linkWorld } from "../../src/web/link/demo-world.ts";
import { optionsShown } from "../../src/web/practice/run.ts";
import { putDown } from "../practice-learner.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { PHONE } from "./browser.ts";
import { answerWith, askedNow, ISLES, PRACTICE, settled, stage } from "./practice-person.ts";

const bench = benchUnderTest();

const WISHES = {
  title: "Four for Tuesday",
  note: "Before the flight.",
  slips: [],
  count: 4,
  seed: 11,
} as const;

function setOf(mode: "choose" | "tell", skills: Parameters<typeof buildSet>[1]["skills"]) {
  const built = buildSet(ISLES, { ...WISHES, mode, skills });
  if (built.kind === "none") throw new Error(built.says);
  return { set: built.set, link: problemSetToLink(built.set, linkWorld(ISLES)) };
}

const CHOSEN = setOf("choose", ["centre-and-read", "side-of-line", "cut-the-line"]);
const TOLD = setOf("tell", ["centre-and-read", "whole-panel-forecast", "in-or-out-course", "read-the-wind"]);

const offered = (link: string) => ({ path: `#${link}`, ready: ".practice-offer" });

/** Tab as often as it takes to come to what is named. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let presses = 0; presses < 60; presses += 1) {
    const on = await page.evaluate(() => {
      const element = document.activeElement;
      return element?.getAttribute("aria-label") ?? (element?.closest("label") ?? element)?.textContent ?? "";
    });
    if (name.test(on)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`no Tab leads to ${name}`);
}

describe("a set", () => {
  it("is finished with keys alone", () =>
    bench.visit(async (page) => {
      await tabTo(page, /^Start: 4 problems$/);
      await page.keyboard.press("Enter");
      for (let at = 0; at < 4; at += 1) {
        await settled(page);
        const { asked, problem } = await askedNow(page);
        const letter = putDown(problem, optionsShown(problem, asked.believed), problem.truth);
        await page.keyboard.press(String("ABCDEFGH".indexOf(letter) + 1));
        // How sure one is: from the options on to the next group, and in it by arrows.
        await page.keyboard.press("Tab");
        await page.keyboard.press("Space");
        await page.keyboard.press("Enter");
        await page.getByRole("heading", { name: "Right" }).waitFor();
        await tabTo(page, /^(Next problem|See how it went)$/);
        await page.keyboard.press("Enter");
      }
      await page.locator(".practice-end").waitFor();
      expect(await page.locator(".practice-end").textContent()).toContain("4 problems answered, all right.");
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Done for now");
    }, offered(CHOSEN.link)));

  it("is finished on a phone by touch, one view at a time", () =>
    bench.visit(
      async (page) => {
        await page.getByRole("button", { name: "Start: 4 problems" }).tap();
        for (let at = 0; at < 4; at += 1) {
          await settled(page);
          const { problem } = await askedNow(page);
          expect(await page.locator(".practice-answer").isVisible()).toBe(false);
          const tabs = page.locator(".practice-tabs button");
          for (const box of await Promise.all((await tabs.all()).map((tab) => tab.boundingBox())))
            expect(box!.y + box!.height).toBeGreaterThan(PHONE.height - 60);
          await answerWith(page, problem.truth);
          expect(await page.locator(".practice-chart, .practice-panel").count()).toBe(0);
          await page.getByRole("button", { name: "Check" }).tap();
          await page.getByRole("heading", { name: "Right" }).waitFor();
          await page.getByRole("button", { name: /^(Next problem|See how it went)$/ }).tap();
        }
        await page.locator(".practice-end").waitFor();
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide).toBeLessThanOrEqual(PHONE.width);
      },
      { ...offered(TOLD.link), viewport: PHONE, hasTouch: true },
    ));

  it("loses nothing when its page is closed in the middle, not even a half-typed answer", () =>
    bench.visit(async (page) => {
      await page.getByRole("button", { name: "Start: 4 problems" }).click();
      await settled(page);
      const first = await askedNow(page);
      await answerWith(page, first.problem.truth);
      await page.getByRole("button", { name: "Check" }).click();
      // Closed on the answer itself: it is still there.
      await page.reload();
      await page.getByRole("button", { name: /^Four for Tuesday 1 of 4 answered$/ }).click();
      await page.getByRole("heading", { name: "Right" }).waitFor();
      await page.getByRole("button", { name: "Next problem" }).click();
      await settled(page);
      const field = page.locator(".practice-form .ask-field, .practice-form [type=radio]").first();
      const isText = (await field.getAttribute("type")) === "text";
      if (isText) await field.fill("12");
      else await field.check();
      await page.getByRole("radio", { name: "A guess" }).check();
      const context = page.context();
      const again = await context.newPage();
      await page.close();
      await again.goto(`${bench.address()}/#practice`);
      await again.getByRole("button", { name: /^Four for Tuesday 1 of 4 answered$/ }).click();
      await settled(again);
      const kept = again.locator(".practice-form .ask-field, .practice-form [type=radio]").first();
      if (isText) expect(await kept.inputValue()).toBe("12");
      else expect(await kept.isChecked()).toBe(true);
      expect(await again.getByRole("radio", { name: "A guess" }).isChecked()).toBe(true);
    }, offered(TOLD.link)));

  it("that is spoilt or of another kind is refused with a sentence", () =>
    bench.visit(async (page) => {
      const field = page.getByRole("textbox", { name: /^Open a problem by its code/ });
      const open = page.getByRole("button", { name: "Open", exact: true });
      await field.fill("4K7-Q2M");
      await open.click();
      await page.getByText(/nine letters and digits, such as 4K7-Q2M-9XD; “4K7-Q2M” has 6/).waitFor();
      await field.fill(CHOSEN.link.slice(0, -9));
      await open.click();
      await page.locator(".practice-offer .fault").waitFor();
      expect(await stage(page)).toBe("start");
      const code = CHOSEN.set.problems[0]!.code;
      await field.fill(code.toLowerCase().replaceAll("-", " "));
      await open.click();
      await settled(page);
      expect((await askedNow(page)).problem.code).toBe(code);
    }, PRACTICE));
});

describe("a record", () => {
  it("is taken out as a file and taken in at another place, added to what is there", () =>
    bench.visit(async (page) => {
      await page.getByRole("button", { name: "Start: 4 problems" }).click();
      await settled(page);
      await answerWith(page, (await askedNow(page)).problem.truth);
      await page.getByRole("button", { name: "Check" }).click();
      await page.getByRole("button", { name: "Pause" }).click();
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Take my record out" }).click(),
      ]);
      expect(download.suggestedFilename()).toBe("needlework-practice.json");
      const text = readFileSync(await download.path(), "utf8");
      const takeIn = async (on: Page, name: string, content: string) =>
        on
          .getByLabel("Take a record in…")
          .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(content) });
      await takeIn(page, "same.json", text);
      await page.getByText("All of this record was here already.").waitFor();
      await page.evaluate(() => localStorage.clear());
      await page.reload();
      await page.locator(".practice-start").waitFor();
      await takeIn(page, "half.json", text.slice(0, -20));
      await page.getByText(/^This file is no record of practice/).waitFor();
      await takeIn(page, "spoilt.json", text.replace('"choose"', '"dream"'));
      await page.getByText(/^Entry 1 of this record is spoilt/).waitFor();
      expect(await page.getByRole("button", { name: "Take my record out" }).isDisabled()).toBe(true);
      await takeIn(page, "record.json", text);
      await page.getByText("1 entry taken in.").waitFor();
      await page.reload();
      await page.getByRole("heading", { name: "Welcome back" }).waitFor();
    }, offered(CHOSEN.link)));
});
