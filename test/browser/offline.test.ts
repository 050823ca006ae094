/** The bench without a network after its first load: what came later on demand is there too. */

import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openPage, pageFolder, serveBench, startBrowser } from "./browser.ts";

let browser: Browser;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

const HEADER =
  '"id","filename","ident","name","type","frequency_khz","latitude_deg","longitude_deg","elevation_ft","iso_country","dme_frequency_khz","dme_channel","dme_latitude_deg","dme_longitude_deg","dme_elevation_ft","slaved_variation_deg","magnetic_variation_deg","usageType","power","associated_airport"';
const ROW = '1,"x","QZA","Alder Ridge","VOR",113900,45.2,8.1,900,"ZZ",,,,,,2,1,"BOTH","HIGH",';

it("opens again, is dragged, explains itself, draws a field and a figure, reads a catalogue, shows the world's land and asks problems", async () => {
  const server = await serveBench(pageFolder());
  const { page, errors } = await openPage(browser, `${server.address}/#scene=01`, {
    serviceWorkers: "allow",
  });
  try {
    // Kept once every file of the bench has come.
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await server.close();
    await page.reload();
    const aircraft = page.getByLabel(/^Aircraft, /).first();
    await aircraft.waitFor();

    const before = await aircraft.getAttribute("aria-label");
    await aircraft.focus();
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => aircraft.getAttribute("aria-label")).not.toBe(before);

    await page.getByRole("button", { name: "Help" }).click();
    await page.getByRole("dialog", { name: "Help" }).waitFor();
    await page.keyboard.press("Escape");

    await page.getByRole("button", { name: /^Field/ }).click();
    await page.getByRole("radio", { name: "Needle", exact: true }).check();
    await page.keyboard.press("Escape");
    await page.locator('.needle-field[data-ready="true"] canvas').waitFor();

    await page.getByRole("button", { name: "Share" }).click();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "PDF", exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.pdf$/);
    await page.keyboard.press("Escape");

    await page.getByRole("button", { name: "Stations", exact: true }).click();
    await page.locator("#tool-sheet input[type=file]").setInputFiles({
      name: "made-up.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(`${HEADER}\n${ROW}\n`),
    });
    await page.locator("#tool-sheet").getByText("kept in this browser.").waitFor();
    await page.getByRole("searchbox").fill("alder");
    await page.locator("#tool-sheet .found").first().click();
    await page.locator("#tool-sheet").getByRole("button", { name: "Fly there" }).click();
    await page.locator('.chart-ground > svg [data-land="world"]').waitFor({ state: "attached" });

    await page.getByRole("button", { name: "Practice", exact: true }).click();
    await page.getByRole("button", { name: /: Centre and read$/ }).click();
    await page.locator(".practice-option").first().click();
    await page.getByRole("button", { name: "Check" }).click();
    await page.locator(".practice-feedback .primary").click();
    await page.locator('.practice[data-stage="asking"] .practice-problem').waitFor();

    // The one thing the page asked of the network and did not get is the network's to say.
    const ours = errors.filter((error) => !error.includes("/api/") && !error.includes("service-worker.js"));
    expect(ours).toEqual([]);
  } finally {
    await page.context().close();
  }
}, 120_000);
