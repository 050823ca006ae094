/** The instructor's side: a set is made, looked through, changed, handed out as link, file and paper, by mouse, by keys and on a phone. */

import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { answerText, problemSetFromLink, readProblemSet } from "../../src/practice/index.ts";
import { openNothing } from "../../src/scene/index.ts";
import { linkWorld } from "../../src/web/link/demo-world.ts";
import { objections } from "./axe.ts";
import { benchUnderTest } from "./bench-under-test.ts";
import { DESKTOP, PHONE } from "./browser.ts";
import { ISLES } from "./practice-person.ts";

const bench = benchUnderTest();
const LINKS = linkWorld(ISLES);
const SETS = { path: "#sets", ready: ".sets" } as const;

const make = async (page: Page, count: string) => {
  await page.getByLabel("Problems", { exact: true }).fill(count);
  await page.getByRole("button", { name: "Make the set" }).click();
  await page.locator(".set-problem").waitFor();
};
const listed = (page: Page) => page.locator(".set-list li").allTextContents();
const linkOf = async (page: Page) =>
  (await page.getByRole("link", { name: "Try it in Practice" }).getAttribute("href")) ?? "";
const setOn = async (page: Page) => {
  const read = problemSetFromLink((await linkOf(page)).slice(1), LINKS);
  if (!read.ok) throw new Error(read.faults.join());
  return read.set;
};

describe("the instructor", () => {
  it("makes a set by skill, looks through it, replaces a problem and takes it back", () =>
    bench.visit(async (page) => {
      await page.getByText("Skills", { exact: false }).first().click();
      await page.getByLabel("Side of the line").check();
      await make(page, "3");
      expect(await listed(page)).toHaveLength(3);
      const before = await setOn(page);
      expect(before.problems.map(({ form }) => form.id)).toEqual(["side-call", "side-call", "side-call"]);
      await page.locator(".set-list button").nth(1).click();
      await page.getByRole("button", { name: "Another like this" }).click();
      const after = await setOn(page);
      expect(after.problems[1]?.code).not.toBe(before.problems[1]?.code);
      expect(after.problems[0]?.code).toBe(before.problems[0]?.code);
      await page.getByRole("button", { name: "Undo" }).click();
      expect((await setOn(page)).problems.map(({ code }) => code)).toEqual(
        before.problems.map(({ code }) => code),
      );
      await page.getByRole("button", { name: "Take out" }).click();
      expect(await listed(page)).toHaveLength(2);
    }, SETS));

  it("sees the key only on request", () =>
    bench.visit(async (page) => {
      await make(page, "5");
      const { problems } = await setOn(page);
      for (const [at, problem] of problems.entries()) {
        await page.locator(".set-list button").nth(at).click();
        const covered = await page.content();
        for (const step of problem.case.steps()) expect(covered).not.toContain(step);
        expect(await page.locator(".set-key").count()).toBe(0);
        await page.getByRole("button", { name: "Show the key" }).click();
        expect(await page.locator(".set-key").textContent()).toContain(answerText(problem.truth));
        await page.getByRole("button", { name: "Cover the key" }).click();
      }
    }, SETS));

  it("hands out a link that opens in Practice, and a file that opens again", () =>
    bench.visit(async (page) => {
      await make(page, "2");
      const { problems } = await setOn(page);
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Save as a file" }).click(),
      ]);
      expect(download.suggestedFilename()).toBe("problems.yaml");
      const path = await download.path();
      const read = readProblemSet(readFileSync(path, "utf8"), {
        path: "problems.yaml",
        open: openNothing,
        isles: LINKS,
      });
      expect(read.ok && read.set.problems.map(({ code }) => code)).toEqual(problems.map(({ code }) => code));
      await page.getByRole("button", { name: "Take out" }).click();
      await page.locator(".set-open input").setInputFiles({
        name: "mine.yaml",
        mimeType: "application/yaml",
        buffer: readFileSync(path),
      });
      await page.waitForFunction(() => document.querySelectorAll(".set-list li").length === 2);
      await page.getByRole("link", { name: "Try it in Practice" }).click();
      await page.locator(".practice-offer").waitFor();
      expect(await page.locator(".practice-offer").textContent()).toContain("2 problems");
    }, SETS));

  it("is told what is wrong with a file and a code, and loses nothing", () =>
    bench.visit(async (page) => {
      await make(page, "2");
      await page.locator(".set-open input").setInputFiles({
        name: "broken.yaml",
        mimeType: "application/yaml",
        buffer: Buffer.from("problems: 1\nlist:\n  - AAA-AAA-AAA\n"),
      });
      await page.locator(".set-notes li").first().waitFor();
      expect(await page.locator(".set-notes").textContent()).toContain("broken.yaml:3:5 “AAA-AAA-AAA”");
      await page.getByLabel("Add a problem by its code").fill("4K7");
      await page.getByRole("button", { name: "Add", exact: true }).click();
      expect(await page.locator(".set-notes").textContent()).toContain("has nine letters and digits");
      expect(await listed(page)).toHaveLength(2);
    }, SETS));

  it("prints the sheet without an answer, two problems to a page, and the key apart", () =>
    bench.visit(async (page) => {
      await make(page, "4");
      const { problems } = await setOn(page);
      await page.evaluate(() => {
        window.print = () => {};
      });
      await page.getByRole("button", { name: "Print the sheet" }).click();
      await page.locator('.set-print[data-what="sheet"]').waitFor({ state: "attached" });
      const sheet = await page.locator(".set-print").innerHTML();
      for (const problem of problems) {
        expect(sheet).toContain(problem.code);
        for (const step of problem.case.steps()) expect(sheet).not.toContain(step);
      }
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
      expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
      await page.evaluate(() => dispatchEvent(new Event("afterprint")));
      await page.getByRole("button", { name: "Print the key" }).click();
      await page.locator('.set-print[data-what="key"]').waitFor({ state: "attached" });
      const key = (await page.locator(".set-print").textContent()) ?? "";
      for (const problem of problems) expect(key).toContain(answerText(problem.truth));
    }, SETS));

  it("has sheet and key typeset by the bench's server, and says so when it is out of reach", () =>
    bench.visit(
      async (page) => {
        await make(page, "2");
        for (const [what, name] of [
          ["sheet", "problems.pdf"],
          ["key", "problems-key.pdf"],
        ]) {
          const [download] = await Promise.all([
            page.waitForEvent("download"),
            page.getByRole("button", { name: `The ${what} as PDF` }).click(),
          ]);
          expect(download.suggestedFilename()).toBe(name);
          expect(readFileSync(await download.path(), "latin1").slice(0, 5)).toBe("%PDF-");
        }
        await page.context().setOffline(true);
        await page.getByRole("button", { name: "The sheet as PDF" }).click();
        await page.getByText("out of reach").waitFor();
      },
      { ...SETS, overlook: (error) => error.includes("ERR_INTERNET_DISCONNECTED") },
    ));

  it("finds everything again after the page was closed, and works by keys alone", () =>
    bench.visit(async (page) => {
      await page.getByLabel("Title, at the head of the sheet").focus();
      await page.keyboard.type("By keys");
      await page.getByLabel("Problems", { exact: true }).focus();
      await page.keyboard.press("Control+A");
      await page.keyboard.type("3");
      await page.keyboard.press("Enter");
      await page.locator(".set-problem").waitFor();
      await page.getByRole("button", { name: "Later", exact: true }).focus();
      await page.keyboard.press("Enter");
      const before = await setOn(page);
      expect(before.title).toBe("By keys");
      await page.reload();
      await page.locator(".set-problem").waitFor();
      expect((await setOn(page)).problems.map(({ code }) => code)).toEqual(
        before.problems.map(({ code }) => code),
      );
    }, SETS));

  it.each([
    ["on a desk in the light", { viewport: DESKTOP, colorScheme: "light" }],
    ["on a phone in the dark", { viewport: PHONE, colorScheme: "dark" }],
  ] as const)("has no fault of access %s, and nothing beyond the edge", (_, context) =>
    bench.visit(
      async (page) => {
        await make(page, "2");
        await page.getByRole("button", { name: "Show the key" }).click();
        expect(await objections(page)).toEqual([]);
        const [wide, seen] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
        expect(wide).toBeLessThanOrEqual(seen ?? 0);
      },
      { ...SETS, ...context },
    ),
  );
});
