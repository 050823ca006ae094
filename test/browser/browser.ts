/** The machine's Chromium and the bench's own server over a page built from the sources at hand, for the browser tests. */

import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { inject } from "vitest";
import { CHROMIUM_FLAGS, findChromium } from "../../scripts/chromium.mjs";
import { benchPaper } from "../../src/cli/bench-paper.ts";
import { buildServer, type SceneSettings } from "../../src/server/index.ts";

/** A Chromium with a new, empty user data folder, which it takes away again when closed. */
export async function startBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error("no Chromium was found; name one in NEEDLEWORK_CHROMIUM");
  return chromium.launch({ executablePath, args: CHROMIUM_FLAGS });
}

export interface BenchServer {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** The folder of the page that was built before the first of these tests, for reading only: all of them share it. */
export const pageFolder = (): string => inject("pageFolder");

/** The bench's server on a free port; with a scene as `needlework bench SCENE` starts it. */
export async function serveBench(
  webFolder: string,
  scene: SceneSettings | null = null,
): Promise<BenchServer> {
  const faults: unknown[] = [];
  const app = await buildServer({
    webFolder,
    scene,
    paper: benchPaper,
    tellFault: (fault) => faults.push(fault),
  });
  const address = await app.listen({ host: "127.0.0.1", port: 0 });
  return {
    address,
    close: async () => {
      await app.close();
      if (faults.length > 0) throw new Error(`the server failed: ${String(faults[0])}`);
    },
  };
}

export const DESKTOP = { width: 1440, height: 900 };
export const LAPTOP = { width: 1024, height: 768 };
export const PHONE = { width: 390, height: 844 };

export interface PageOptions extends BrowserContextOptions {
  /** What stands on the page when it has come up; the chart when not given. */
  readonly ready?: string;
  /** Done to the page before it goes to its address. */
  readonly early?: ((page: Page) => Promise<unknown>) | undefined;
}

/** A page that notes every error it tells: in its console, as an exception, or as a request that came to nothing. */
export async function openPage(
  browser: Browser,
  address: string,
  { ready = ".chart-ground > svg", early, ...options }: PageOptions = {},
): Promise<{ readonly page: Page; readonly errors: readonly string[] }> {
  const context = await browser.newContext({
    viewport: DESKTOP,
    reducedMotion: "reduce",
    ...options,
  });
  // Keeping every file for offline use would cost each of these short visits a second, and most of them do not ask for it.
  if (options.serviceWorkers !== "allow")
    await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, "serviceWorker"));
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  const errors: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") errors.push(message.text());
  });
  page.on("pageerror", (error) => errors.push(String(error)));
  page.on("requestfailed", (request) => {
    const why = request.failure()?.errorText ?? "failed";
    // A page that is left behind takes its requests with it.
    if (why !== "net::ERR_ABORTED") errors.push(`${request.url()} ${why}`);
  });
  await early?.(page);
  await page.goto(address);
  const drawn = page.locator(ready);
  await drawn
    .first()
    .waitFor()
    .catch((cause) => {
      throw new Error(`the bench did not come up: ${errors.join("; ")}`, { cause });
    });
  return { page, errors };
}
