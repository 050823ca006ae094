/** The ways of telling an answer by hand: a place on the chart, numbers in steps, an ident by ear; and what is due for review. */

import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { evidenceOf, type FormId, type Mode, makeProblem, type Problem } from "../../src/practice/index.ts";
import { recordText } from "../../src/web/practice/record-file.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { domWords } from "./dom-words.ts";
import { askedNow, goThrough, ISLES, PRACTICE, settled } from "./practice-person.ts";

const bench = benchUnderTest();

function problemOf(form: FormId, mode: Mode, fits: (problem: Problem) => boolean = () => true): Problem {
  for (let seed = 1; seed < 60; seed += 1) {
    const made = makeProblem(ISLES, form, mode, seed);
    if (made.kind === "problem" && fits(made.problem)) return made.problem;
  }
  throw new Error(`no ${form} fits`);
}

/** Opens a problem by the code in its address. */
const onProblem = (problem: Problem, use: (page: Page) => Promise<void>): Promise<void> =>
  bench.visit(
    async (page) => {
      await page.getByRole("button", { name: "Start it" }).click();
      await settled(page);
      await use(page);
    },
    { path: `#practice=${problem.code}`, ready: ".practice-offer" },
  );

describe("a place", () => {
  const problem = problemOf("place-dot", "tell");

  it("is marked by a press on the chart, moved by arrows, and given", () =>
    onProblem(problem, async (page) => {
      const field = page.locator(".practice-form .ask-field");
      const ground = page.locator(".practice-chart .chart-ground");
      await ground.click({ position: { x: 300, y: 200 } });
      const pressed = await field.inputValue();
      expect(pressed).toMatch(/S 00\d°/);
      const mark = page.getByRole("button", { name: /^Your mark: arrow keys/ });
      await mark.focus();
      await page.keyboard.press("Shift+ArrowUp");
      const moved = await field.inputValue();
      expect(moved).not.toBe(pressed);
      // A drag moves the paper, never the mark.
      const box = (await ground.boundingBox())!;
      await page.mouse.move(box.x + 200, box.y + 120);
      await page.mouse.down();
      await page.mouse.move(box.x + 260, box.y + 160, { steps: 4 });
      await page.mouse.up();
      expect(await field.inputValue()).toBe(moved);
      await page.getByRole("button", { name: "Check" }).click();
      await page.locator(".practice-feedback").waitFor();
      expect(await mark.count()).toBe(0);
    }));

  it("is written as radial and distance too, and shown where it is", () =>
    onProblem(problem, async (page) => {
      await page.locator(".practice-form .ask-field").fill("TXJ 246/18");
      await page.getByRole("button", { name: /^Your mark: arrow keys/ }).waitFor();
    }));
});

describe("a direction", () => {
  it("is stepped by buttons and keys, through north, and typed", () =>
    onProblem(problemOf("read-radial", "tell"), async (page) => {
      const field = page.getByRole("textbox", { name: "Direction" });
      const up = page.getByRole("button", { name: "Direction up 10 degrees" });
      await up.click();
      expect(await field.inputValue()).toBe("360");
      await up.click();
      expect(await field.inputValue()).toBe("010");
      await field.press("ArrowDown");
      expect(await field.inputValue()).toBe("009");
      await field.press("PageDown");
      expect(await field.inputValue()).toBe("359");
      // Held, it goes on.
      const button = (await page
        .getByRole("button", { name: "Direction up 1 degree", exact: true })
        .boundingBox())!;
      await page.mouse.move(button.x + 10, button.y + 10);
      await page.mouse.down();
      await expect
        .poll(async () => {
          const now = Number(await field.inputValue());
          return now >= 3 && now < 300;
        })
        .toBe(true);
      await page.mouse.up();
      await field.fill("246");
      await field.press("Enter");
      await page.locator(".practice-feedback").waitFor();
    }));
});

describe("an ident", () => {
  it("is heard and drawn, and its letters are told only after the answer", () =>
    onProblem(
      problemOf("ident-match", "choose", (problem) => problem.case.listenTo !== undefined),
      async (page) => {
        const { problem } = await askedNow(page);
        if (problem.truth.kind !== "word") throw new Error("an ident is a word");
        const spelled = [...problem.truth.word].join(", ");
        await page.getByRole("button", { name: "Identify NAV1" }).click();
        await page.locator(".ident-keying svg").waitFor();
        expect(await domWords(page)).not.toContain(spelled);
        expect(await page.locator(".practice-ident [role=status]").textContent()).toBe(
          "Identify NAV1: 3 letters in code.",
        );
        await page.getByRole("button", { name: "I don't know yet" }).click();
        await page.getByRole("button", { name: "Identify NAV1" }).click();
        await expect
          .poll(() => page.locator(".practice-ident [role=status]").textContent())
          .toContain(spelled);
      },
    ));
});

describe("reviews", () => {
  it("are due when their day has come, and are asked in fresh problems", () => {
    const day = new Date(Date.now() - 40 * 86_400_000).toISOString().slice(0, 10);
    const events = (["side-call", "read-radial"] as const).map((form, at) => {
      const problem = problemOf(form, "choose");
      return {
        kind: "answer" as const,
        at: `${day}T10:00:0${at}.000Z`,
        day,
        code: problem.code,
        form,
        item: evidenceOf(problem, null).item,
        pick: 0,
        confidence: null,
        timeS: 9,
        followUp: null,
      };
    });
    return bench.visit(async (page) => {
      expect(await page.getByRole("button", { name: "No reviews due" }).isDisabled()).toBe(true);
      await page.getByLabel("Take a record in…").setInputFiles({
        name: "r.json",
        mimeType: "application/json",
        buffer: Buffer.from(recordText(events)),
      });
      await page.getByRole("button", { name: /^Review \d+$/ }).click();
      const forms = await goThrough(page, []);
      expect(new Set(forms)).toEqual(new Set(["side-call", "read-radial"]));
      await page.getByRole("button", { name: "Back to the start" }).click();
      await page.getByText("Nothing is due today.").waitFor();
    }, PRACTICE);
  });
});
