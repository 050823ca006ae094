/** What nearly every file of browser tests begins with: one Chromium, one server of the bench, and visits to it that leave nothing behind. */

import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import {
  type BenchServer,
  openPage,
  type PageOptions,
  pageFolder,
  serveBench,
  startBrowser,
} from "./browser.ts";

export interface Visit extends PageOptions {
  /** What follows the address of the bench, such as `#scene=22`. */
  readonly path?: string;
  /** Of another bench than the file's own. */
  readonly address?: string;
  /** Runs in the page before its own script; the page is then loaded once more. */
  readonly before?: (() => void) | undefined;
  /** Whether the page may say this without being at fault. */
  readonly overlook?: (error: string) => boolean;
}

export interface BenchUnderTest {
  readonly browser: () => Browser;
  readonly address: () => string;
  /** Opens the bench, lets a person use it, and checks that the page had nothing to complain of. */
  readonly visit: (use: (page: Page) => Promise<void>, visit?: Visit) => Promise<void>;
}

/** Called once at the head of a file of tests: browser and server begin before its first test and end after its last. */
export function benchUnderTest(): BenchUnderTest {
  let browser: Browser | undefined;
  let server: BenchServer | undefined;
  beforeAll(async () => {
    browser = await startBrowser();
    server = await serveBench(pageFolder());
  });
  afterAll(async () => {
    await browser?.close();
    await server?.close();
  });
  const started = <T>(thing: T | undefined): T => {
    if (thing === undefined) throw new Error("browser and server begin with the first test");
    return thing;
  };
  const address = () => started(server).address;
  return {
    browser: () => started(browser),
    address,
    visit: async (use, visit = {}) => {
      const { path = "", address: at = address(), before, overlook = () => false, ...options } = visit;
      const { page, errors } = await openPage(started(browser), `${at}/${path}`, options);
      try {
        if (before !== undefined) {
          await page.addInitScript(before);
          await page.reload();
          await page.locator(".chart-ground > svg").waitFor();
        }
        await use(page);
        expect(errors.filter((error) => !overlook(error))).toEqual([]);
      } finally {
        await page.context().close();
      }
    },
  };
}
