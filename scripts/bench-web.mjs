// @ts-check
// Why: the bench promises to follow the hand. This drives the real page in headless Chromium as a hand would, five seconds each of
// dragging the aircraft and turning the course, with the needle field on and with the pictures of the signal, with the processor slowed 1
// and 4 times, and prints what the frames and the hand had to wait. Usage: npm run bench:web

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { CHROMIUM_FLAGS, ensureChromium } from "./chromium.mjs";
import { prepare, runScript } from "./prepare.mjs";
import { startBench } from "./start-bench.mjs";

const SECONDS = 5;
const SLOWED = [1, 4];

/** In the page: notes every frame and, for every hand event, the time until the frame after it was handed over. */
function watchInPage() {
  const notes = { frames: /** @type {number[]} */ ([]), waits: /** @type {number[]} */ ([]), on: false };
  Object.assign(globalThis, { benchNotes: notes });
  let last = 0;
  const tick = (/** @type {number} */ now) => {
    if (notes.on && last > 0) notes.frames.push(now - last);
    last = now;
    requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
  const hand = (/** @type {Event} */ event) => {
    if (!notes.on) return;
    const began = event.timeStamp;
    requestAnimationFrame(() => {
      // A message posted in a frame is delivered once the frame has been painted.
      const channel = new MessageChannel();
      channel.port1.onmessage = () => notes.waits.push(performance.now() - began);
      channel.port2.postMessage(null);
    });
  };
  for (const kind of ["pointermove", "wheel", "keydown"])
    addEventListener(kind, hand, { capture: true, passive: true });
}

/** @param {readonly number[]} values @param {number} share */
const quantile = (values, share) => {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
};

/** @param {readonly number[]} values */
const row = (values) =>
  [0.5, 0.95, 1].map((share) => quantile(values, share).toFixed(1).padStart(7)).join("");

/**
 * @param {import("playwright-core").Page} page
 * @param {string} what
 * @param {number} slowed
 * @param {(at: number) => Promise<void>} move one small movement of the hand, at a share of the whole
 */
async function measure(page, what, slowed, move) {
  await page.evaluate(() =>
    Object.assign(/** @type {any} */ (globalThis).benchNotes, { frames: [], waits: [], on: true }),
  );
  const began = performance.now();
  for (let at = 0; at < 1; at = (performance.now() - began) / (SECONDS * 1000)) await move(at);
  const { frames, waits } = await page.evaluate(() => {
    const notes = /** @type {any} */ (globalThis).benchNotes;
    notes.on = false;
    return notes;
  });
  console.log(
    `${what.padEnd(34)} ${slowed}x  frame p50 p95 worst${row(frames)} ms   hand to picture${row(waits)} ms   (${frames.length} frames)`,
  );
}

await runScript(async () => {
  await prepare();
  const executablePath = await ensureChromium();
  const profile = mkdtempSync(join(tmpdir(), "needlework-bench-"));
  const bench = await startBench();
  const context = await chromium.launchPersistentContext(profile, {
    executablePath,
    args: CHROMIUM_FLAGS,
    viewport: { width: 1440, height: 900 },
  });
  try {
    const page = context.pages()[0] ?? (await context.newPage());
    await page.addInitScript(watchInPage);
    await page.goto(bench.address);
    const dart = page.getByLabel(/^Aircraft, /).first();
    await dart.waitFor();
    const cdp = await context.newCDPSession(page);
    await page.getByRole("button", { name: /^Field/ }).click();
    await page.getByRole("radio", { name: "Needle", exact: false }).first().check();
    await page.keyboard.press("Escape");
    await page.waitForTimeout(2000);
    const size = await page.evaluate(() => {
      const canvas = document.querySelector("canvas");
      return canvas === null ? "no field" : `${canvas.width}x${canvas.height}`;
    });
    console.log(
      `needle field of ${size}; ${await page.evaluate(() => navigator.hardwareConcurrency)} processors`,
    );
    for (const rate of SLOWED) {
      await cdp.send("Emulation.setCPUThrottlingRate", { rate });
      const box = await dart.boundingBox();
      if (box === null) throw new Error("the aircraft is not on the sheet");
      const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      await page.mouse.move(middle.x, middle.y);
      await page.mouse.down();
      await measure(page, "drag of the aircraft, field on", rate, (at) =>
        page.mouse.move(middle.x + 120 * Math.sin(at * 12), middle.y + 60 * Math.sin(at * 17)),
      );
      await page.mouse.move(middle.x, middle.y);
      await page.mouse.up();
      const card = page.getByRole("slider", { name: /course/i }).first();
      const face = await card.boundingBox();
      if (face === null) throw new Error("no course card is shown");
      await page.mouse.move(face.x + face.width / 2, face.y + face.height / 2);
      await measure(page, "turn of the course, field on", rate, async () => {
        await page.mouse.wheel(0, 100);
        await page.waitForTimeout(8);
      });
    }
    await cdp.send("Emulation.setCPUThrottlingRate", { rate: 1 });
    await page.getByRole("button", { name: /^Field/ }).click();
    await page.getByRole("radio", { name: "Nothing", exact: true }).first().check();
    await page.keyboard.press("Escape");
    for (const rate of SLOWED) {
      for (const picture of ["Composite", "Angle"]) {
        await cdp.send("Emulation.setCPUThrottlingRate", { rate: 1 });
        await page.getByRole("button", { name: picture, exact: true }).click();
        await page.waitForTimeout(1000);
        await cdp.send("Emulation.setCPUThrottlingRate", { rate });
        const box = await dart.boundingBox();
        if (box === null) throw new Error("the aircraft is not on the sheet");
        const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
        await page.mouse.move(middle.x, middle.y);
        await page.mouse.down();
        await measure(page, `drag, signal: ${picture.toLowerCase()}`, rate, (at) =>
          page.mouse.move(middle.x + 120 * Math.sin(at * 12), middle.y + 60 * Math.sin(at * 17)),
        );
        await page.mouse.move(middle.x, middle.y);
        await page.mouse.up();
      }
      const face = await page
        .getByRole("slider", { name: /course/i })
        .first()
        .boundingBox();
      if (face === null) throw new Error("no course card is shown");
      await page.mouse.move(face.x + face.width / 2, face.y + face.height / 2);
      await measure(page, "turn, signal: angle", rate, async () => {
        await page.mouse.wheel(0, 100);
        await page.waitForTimeout(8);
      });
    }
  } finally {
    await context.close();
    bench.end();
    rmSync(profile, { recursive: true, force: true });
  }
  return 0;
});
