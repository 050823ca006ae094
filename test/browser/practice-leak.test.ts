/**
 * While a problem is asked its answer is nowhere in the page: no text, no label, no title, no value, no address; nor which idea leads to which
 * option. And nothing is sent.
 */

import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type FormId, type Mode, makeProblem, type Problem, SLIPS } from "../../src/practice/index.ts";
import { answerWords } from "../../src/web/practice/answer-words.ts";
import { putDown } from "../practice-learner.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { PHONE } from "./browser.ts";
import { domWords } from "./dom-words.ts";
import { ISLES, PRACTICE, settled } from "./practice-person.ts";

const bench = benchUnderTest();

/** The answer as it might be written, where its text would not stand on the page by chance: three figures, a place, a whole row. */
function secretsOf(problem: Problem): readonly RegExp[] {
  const { truth } = problem;
  const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
  const whole = (text: string) => new RegExp(`(?<![\\d.])${escaped(text)}(?![\\d.])`);
  const texts = [putDown(problem, null, truth), answerWords(problem, truth)];
  return [...new Set(texts)].filter((text) => text.length >= 3).map(whole);
}

/** Seeds at which the answer stands nowhere of right: not in the question, what is given, nor on the open views. */
const FORMS_TOLD: readonly FormId[] = [
  "read-radial",
  "place-dot",
  "two-line-fix",
  "clearance-course",
  "cut-heading",
  "measure-radial",
  "wind-from-drift",
  "needle-forecast",
  "rmi-radial",
  "leg-log",
];

/** Of a form and mode, one whose answer is not also part of the question. */
function problemOf(form: FormId, mode: Mode): Problem {
  for (let seed = 40; seed < 80; seed += 1) {
    const made = makeProblem(ISLES, form, mode, seed);
    if (made.kind === "none") throw new Error(made.says);
    const { problem } = made;
    const open = JSON.stringify([
      problem.case.scene.ask,
      problem.case.given,
      problem.situation.scene.aircraft,
      problem.case.scene.receivers.map(({ course, frequencyMhz }) => [course, frequencyMhz]),
    ]);
    if (!secretsOf(problem).some((secret) => secret.test(open))) return problem;
  }
  throw new Error(`every ${form} says its answer`);
}

async function openCode(page: Page, problem: Problem): Promise<void> {
  await page.getByRole("textbox", { name: /^Open a problem by its code/ }).fill(problem.code);
  await page.getByRole("button", { name: "Open", exact: true }).click();
  await settled(page);
  await page.getByText(problem.case.scene.ask).first().waitFor();
}

const linesWith = (words: string, secret: RegExp | string): readonly string[] =>
  words
    .split("\n")
    .filter((line) => (typeof secret === "string" ? line.includes(secret) : secret.test(line)));

/** Ids and names of ideas, and words that would tell right from wrong. */
function expectNoIdeas(words: string): void {
  for (const { id, name } of SLIPS) {
    expect(linesWith(words, id), id).toEqual([]);
    expect(linesWith(words, name), name).toEqual([]);
  }
  expect(words).not.toMatch(/\b(truth|correct|wrong)\b/i);
}

describe("a problem that is told", () => {
  it.each([
    ["on a desk", undefined],
    ["on a phone, in every view", PHONE],
  ] as const)("says its answer nowhere, %s, and sends nothing", (_, viewport) =>
    bench.visit(
      async (page) => {
        const sent: string[] = [];
        for (const form of FORMS_TOLD) {
          const problem = problemOf(form, "tell");
          await openCode(page, problem);
          page.on("request", (request) => sent.push(`${request.url()} ${request.postData() ?? ""}`));
          const tabs = page.locator(".practice-tabs button");
          for (let at = 0; at < Math.max(1, await tabs.count()); at += 1) {
            if ((await tabs.count()) > 0) await tabs.nth(at).click();
            await page.waitForTimeout(60);
            const words = `${await domWords(page)}\n${page.url()}`;
            for (const secret of secretsOf(problem)) expect(linesWith(words, secret), form).toEqual([]);
            expectNoIdeas(words);
          }
          if ((await tabs.count()) > 0) await tabs.last().click();
          await page.getByRole("button", { name: "I don't know yet" }).click();
          // What was looked for is found once it is told.
          await page.locator(".practice-answers .truth").waitFor();
          const told = await page.locator(".practice-answers").textContent();
          expect(
            secretsOf(problem).some((secret) => secret.test(told ?? "")),
            `${form}: ${told}`,
          ).toBe(true);
          await page.getByRole("button", { name: "Pause" }).click();
        }
        expect(sent.filter((request) => !/\/assets\/[^?]*\.(js|css|woff2) $/.test(request))).toEqual([]);
      },
      { ...PRACTICE, ...(viewport === undefined ? {} : { viewport }) },
    ),
  );
});

describe("a problem to choose in", () => {
  it("gives every option alike: nothing tells the true one from the others", () =>
    bench.visit(async (page) => {
      for (const form of ["read-radial", "turn-call", "can-use", "place-dot"] as const) {
        const problem = problemOf(form, "choose");
        await openCode(page, problem);
        expectNoIdeas(await domWords(page));
        const drawn = await page.locator(".practice-option").evaluateAll((options) =>
          options.map((option) => {
            const copy = option.cloneNode(true) as HTMLElement;
            for (const words of copy.querySelectorAll("span")) words.textContent = "";
            return copy.outerHTML;
          }),
        );
        expect(new Set(drawn).size, form).toBe(1);
        await page.getByRole("button", { name: "Pause" }).click();
      }
    }, PRACTICE));
});
