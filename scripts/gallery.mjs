// @ts-check
// Why: the pictures of docs/gallery show the bench as it is today. This opens the real page in the machine's Chromium, does what a person
// would do, and takes each picture anew, or those that are named. Usage: node scripts/gallery.mjs [NAME...]

import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { CHROMIUM_FLAGS, ensureChromium } from "./chromium.mjs";
import { prepare, ROOT, runScript } from "./prepare.mjs";
import { startBench } from "./start-bench.mjs";

const INTO = join(ROOT, "docs/gallery");
const DESK = { width: 1440, height: 900 };
const SMALL = { width: 1024, height: 768 };
const PHONE = { width: 390, height: 844 };

/** @typedef {import("playwright-core").Page} Page */
/** @typedef {{ name: string, words: string, size?: { width: number, height: number }, dark?: boolean, at?: string, touch?: boolean, act?: (page: Page) => Promise<void> }} Picture */

/** @param {Page} page @param {string | RegExp} name */
const press = (page, name) => page.getByRole("button", { name }).first().click();

/** @param {Page} page @param {string} kind */
async function field(page, kind) {
  await press(page, /^Field/);
  await page.getByRole("radio", { name: kind }).first().check();
  await page.keyboard.press("Escape");
  await page.waitForTimeout(2500);
}

/** @param {Page} page */
async function signalPictures(page) {
  await press(page, "Enlarge the signal");
  await page.getByRole("slider", { name: "Time since the flash" }).fill("5.3");
}

/** @param {Page} page @param {string | RegExp} skill */
async function practise(page, skill) {
  await press(page, skill);
  await page.locator(".practice-problem").waitFor();
}

/** Answers wrongly until a ghost stands beside the truth. @param {Page} page */
async function toGhost(page) {
  await practise(page, /: Centre and read$/);
  const tabs = page.locator(".practice-tabs button");
  for (let tried = 0; tried < 6; tried += 1) {
    if (await tabs.count()) await tabs.last().click();
    await page.locator(".practice-option").last().click();
    await press(page, "Check");
    await page.locator(".practice-feedback").waitFor();
    if (await page.locator(".practice-plate").count()) return;
    await press(page, /^(Next problem|Try one like it)$/);
    await page.locator(".practice-option").first().waitFor();
  }
}

/** To the end of a run as one who takes the number he dialled for his radial. @param {Page} page */
async function toEnd(page) {
  await practise(page, /: Dots to degrees$/);
  const tabs = page.locator(".practice-tabs button");
  for (let asked = 0; asked < 30; asked += 1) {
    await page.locator(".practice-problem, .practice-end").first().waitFor();
    if (await page.locator(".practice-end").count()) return;
    if (await tabs.count()) await tabs.first().click();
    const panel = await page.locator(".practice-panel svg desc").first().textContent();
    const course = /[Cc]ourse (\d{3})/.exec(panel ?? "")?.[1] ?? "";
    if (await tabs.count()) await tabs.last().click();
    const option = page.locator(".practice-option", { hasText: course });
    const field = page.locator(".practice-form input[type=text]");
    if (course !== "" && (await option.count())) await option.first().click();
    else if (course !== "" && (await field.count())) await field.first().fill(course);
    else {
      await press(page, "I don't know yet");
      await page.locator(".practice-feedback .primary").click();
      await page.locator(".practice-feedback").waitFor({ state: "detached" });
      continue;
    }
    await press(page, "Check");
    await page.locator(".practice-feedback .primary").click();
    await page.locator(".practice-feedback").waitFor({ state: "detached" });
  }
}

/** Makes a set, looks at a problem that needs the chart, and has its key shown. @param {Page} page */
async function makeSet(page) {
  await page.getByLabel("Title, at the head of the sheet").fill("Tuesday's spokes");
  await press(page, "Make the set");
  await page.locator(".set-list button").nth(2).click();
  await press(page, "Show the key");
  await page.locator(".set-key").waitFor();
}

/** @type {readonly Picture[]} */
const PICTURES = [
  { name: "bench", words: "The bench as `npm start` opens it: four views of one scene, in step." },
  { name: "bench-dark", words: "The same, dark.", dark: true },
  { name: "home", words: "Home: the demo scenes as live thumbnails, in teaching order.", at: "#home" },
  {
    name: "reasons-lit",
    words: "Pointing at a step of the argument lights what it speaks of.",
    act: async (page) => {
      await page.getByText("facing 070, the line is on your left").first().hover();
    },
  },
  {
    name: "needle-field",
    words: "The needle field: the whole chart by what the first needle would show at every place.",
    act: (page) => field(page, "Needle"),
  },
  {
    name: "field-reception",
    words: "Reception at this altitude: where the station is received, and where it is promised.",
    dark: true,
    at: "#scene=14-what-the-mountain-hides",
    act: (page) => field(page, "Reception"),
  },
  {
    name: "field-fix",
    words: "How well a cross fix of the two receivers holds, place by place.",
    at: "#scene=22-two-lines-one-mailboat",
    act: async (page) => {
      await field(page, "Cross fix");
    },
  },
  {
    name: "covered",
    words: "A covered aircraft, and the question that goes with it.",
    at: "#scene=22-two-lines-one-mailboat",
  },
  { name: "three-faces", words: "Three receivers: fixed card, HSI, RMI.", at: "#scene=24-three-faces" },
  {
    name: "projecting",
    words: "Projecting: large type, no tools.",
    act: (page) => press(page, "Project"),
  },
  {
    name: "signal",
    words:
      "The signal view enlarged: waves, composite, spectrum, the phase on the rose, the lighthouse picture.",
    act: (page) => signalPictures(page),
  },
  { name: "signal-dark", words: "The same, dark.", dark: true, act: (page) => signalPictures(page) },
  {
    name: "signal-phone",
    words: "The lighthouse picture on a phone.",
    size: PHONE,
    touch: true,
    act: async (page) => {
      await press(page, "Signal");
      await press(page, "Lighthouse");
      await page.getByRole("slider", { name: "Time since the flash" }).fill("5.3");
    },
  },
  {
    name: "signal-sheet",
    words: "The sheet that has the signal measured, and spoilt: here by an echo from a hangar.",
    at: "#scene=28-an-echo-from-a-hangar",
    act: (page) => press(page, /^Measured/),
  },
  {
    name: "signal-sheet-dark",
    words: "A reflector's form, dark, at 1024 by 768.",
    size: SMALL,
    dark: true,
    at: "#scene=28-an-echo-from-a-hangar",
    act: async (page) => {
      await page.keyboard.press("s");
      await press(page, "New reflector");
      await page.getByLabel("Stands at").fill("TXJ 120/1.5");
    },
  },
  {
    name: "signal-sheet-phone",
    words: "The same sheet on a phone.",
    size: PHONE,
    touch: true,
    at: "#scene=28-an-echo-from-a-hangar",
    act: (page) => page.keyboard.press("s"),
  },
  {
    name: "signal-echo",
    words: "A tenth of the signal comes back from a hangar: what the receiver makes of it.",
    at: "#scene=28-an-echo-from-a-hangar",
    act: (page) => press(page, "Enlarge the signal"),
  },
  {
    name: "signal-doppler",
    words: "The same echo, and a Doppler station.",
    at: "#scene=29-the-same-by-doppler",
    act: (page) => press(page, "Enlarge the signal"),
  },
  {
    name: "signal-propeller",
    words: "A propeller that chops the signal near twice its 30 Hz.",
    at: "#scene=30-the-propeller",
    act: (page) => press(page, "Enlarge the signal"),
  },
  { name: "practice-start", words: "Practice: where a learner begins.", at: "#practice" },
  {
    name: "practice",
    words: "A problem: the chart is covered, the panel is read.",
    at: "#practice",
    act: (page) => practise(page, /: Centre and read$/),
  },
  {
    name: "practice-ghost",
    words:
      "A wrong answer as the world it would come from, below the true one, and the idea that leads there.",
    at: "#practice",
    act: (page) => toGhost(page),
  },
  {
    name: "practice-result",
    words: "The end of six problems: what is secure, what to work on, what to do next.",
    at: "#practice",
    act: (page) => toEnd(page),
  },
  {
    name: "practice-phone",
    words: "A problem on a phone: one view at a time, its tabs under the thumb.",
    size: PHONE,
    touch: true,
    at: "#practice",
    act: (page) => practise(page, /: Centre and read$/),
  },
  {
    name: "practice-ghost-phone",
    words: "A wrong answer on a phone, dark.",
    size: PHONE,
    touch: true,
    dark: true,
    at: "#practice",
    act: (page) => toGhost(page),
  },
  {
    name: "practice-result-phone",
    words: "The end on a phone.",
    size: PHONE,
    touch: true,
    at: "#practice",
    act: (page) => toEnd(page),
  },
  {
    name: "problem-sets",
    words: "The instructor's desk: a set made of wishes, a problem as the learner sees it, and its key.",
    at: "#sets",
    act: (page) => makeSet(page),
  },
  {
    name: "problem-sets-laptop",
    words: "The same at 1024 by 768, dark.",
    size: SMALL,
    dark: true,
    at: "#sets",
    act: (page) => makeSet(page),
  },
  { name: "laptop", words: "At 1024 by 768.", size: SMALL },
  { name: "phone", words: "On a phone.", size: PHONE, touch: true },
  { name: "phone-dark", words: "On a phone, dark.", size: PHONE, touch: true, dark: true },
];

await runScript(async () => {
  await prepare();
  const browser = await chromium.launch({ executablePath: await ensureChromium(), args: CHROMIUM_FLAGS });
  const bench = await startBench();
  try {
    mkdirSync(INTO, { recursive: true });
    const named = process.argv.slice(2);
    for (const { name, size = DESK, dark = false, at = "", touch = false, act } of PICTURES) {
      if (named.length > 0 && !named.includes(name)) continue;
      const context = await browser.newContext({
        viewport: size,
        colorScheme: dark ? "dark" : "light",
        reducedMotion: "reduce",
        hasTouch: touch,
      });
      const page = await context.newPage();
      await page.goto(`${bench.address}/${at}`);
      await page.waitForLoadState("networkidle");
      await page.waitForTimeout(at === "#home" ? 8000 : 1000);
      await act?.(page);
      await page.waitForTimeout(500);
      await page.screenshot({ path: join(INTO, `${name}.png`) });
      console.log(`docs/gallery/${name}.png`);
      await context.close();
    }
    const rows = PICTURES.map(
      ({ name, words }) => `## ${words}\n\n![${words.replaceAll("`", "")}](${name}.png)\n`,
    );
    writeFileSync(
      join(INTO, "README.md"),
      `# Gallery\n\nTaken by \`node scripts/gallery.mjs\` from the running bench.\n\n${rows.join("\n")}`,
    );
  } finally {
    await browser.close();
    bench.end();
  }
  return 0;
});
