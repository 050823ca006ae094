/** A made-up learner at the real page: he reads the question's code from nowhere, sees only what a person sees, and answers by his ideas. */

import type { Page } from "playwright-core";
import {
  type Answer,
  openProblem,
  type Problem,
  practiceWorld,
  type SlipId,
  type World,
} from "../../src/practice/index.ts";
import { optionTexts } from "../../src/web/practice/draft.ts";
import { RUNS_KEY } from "../../src/web/practice/practice-store.ts";
import { type Asked, optionsShown } from "../../src/web/practice/run.ts";
import { readRuns } from "../../src/web/practice/run-file.ts";
import { answerBy, putDown } from "../practice-learner.ts";
import { demoScene } from "./demo-in-node.ts";

const DEMO = demoScene("01-which-way-to-the-course");

/** The isles as the page has them. */
export const ISLES: World = practiceWorld({ name: "the Ostrelle Isles", ...DEMO });

export const PRACTICE = { path: "#practice", ready: ".practice" } as const;

/** What the page asks now, by the code it keeps. */
export async function askedNow(page: Page): Promise<{ readonly asked: Asked; readonly problem: Problem }> {
  const text = await page.evaluate((key) => localStorage.getItem(key), RUNS_KEY);
  const asked = readRuns(text)[0]?.asked;
  if (asked == null) throw new Error("nothing is asked");
  const opened = openProblem(ISLES, asked.code);
  if (opened.kind === "fault") throw new Error(opened.says);
  return { asked, problem: opened.problem };
}

export const stage = (page: Page): Promise<string | null> =>
  page.locator(".practice").getAttribute("data-stage");

/** Waits until the page asks, or has come to its end. */
export const settled = (page: Page) =>
  page
    .locator('.practice:is([data-stage="asking"], [data-stage="end"]) :is(.practice-problem, .practice-end)')
    .waitFor();

/** Puts an answer down with hands: by the option's visible text, or typed into what is there. */
export async function answerWith(page: Page, answer: Answer): Promise<void> {
  const { asked, problem } = await askedNow(page);
  const options = optionsShown(problem, asked.believed);
  const text = putDown(problem, options, answer);
  const phone = page.locator(".practice-tabs button").last();
  if (await phone.isVisible()) await phone.click();
  if (options !== null) {
    const shown = optionTexts(problem, options)["ABCDEFGH".indexOf(text)]?.text ?? "";
    await page.locator(".practice-option", { has: page.getByText(shown, { exact: true }) }).click();
  } else await tell(page, problem, text);
}

async function tell(page: Page, problem: Problem, text: string): Promise<void> {
  const fields = page.locator(".practice-form .ask-field");
  switch (problem.truth.kind) {
    case "word":
      await page.getByRole("radio", { name: text, exact: true }).check();
      return;
    case "panel":
      for (const half of text.split(", ")) await page.getByRole("radio", { name: half, exact: true }).check();
      return;
    case "order":
      await order(page, problem, text);
      return;
    default: {
      const parts =
        problem.truth.kind === "wind"
          ? text.split("/")
          : problem.truth.kind === "row"
            ? text.split("; ")
            : [text];
      for (const [at, part] of parts.entries()) await fields.nth(at).fill(part);
    }
  }
}

/** Moves each thing up until it stands where it is wanted. */
async function order(page: Page, problem: Problem, letters: string): Promise<void> {
  const items = problem.case.items ?? [];
  const places = items.map(({ letter }) => letter);
  for (const [at, letter] of [...letters].entries()) {
    const text = items.find((item) => item.letter === letter)?.text ?? "";
    for (let now = places.indexOf(letter); now > at; now -= 1) {
      await page.getByRole("button", { name: `Up: ${text}` }).click();
      places.splice(now - 1, 2, letter, places[now - 1]!);
    }
  }
}

/** Goes through a run to its end as one who holds these ideas. Gives the forms that were asked. */
export async function goThrough(page: Page, slips: readonly SlipId[]): Promise<readonly string[]> {
  const forms: string[] = [];
  for (;;) {
    await settled(page);
    if ((await stage(page)) === "end") return forms;
    const { problem } = await askedNow(page);
    forms.push(problem.form.id);
    await answerWith(page, answerBy(problem, slips));
    await page.getByRole("button", { name: "Check" }).click();
    await page.locator(".practice-feedback .primary").click();
    // The next problem is chosen beside the page.
    await page.waitForFunction(() => document.querySelector(".practice-feedback") === null);
  }
}
