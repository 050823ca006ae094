// @ts-check
// Why: the browser tests drive the Chromium of the machine, since packages that download at install are not used here.

import { existsSync, readdirSync } from "node:fs";
import { homedir } from "node:os";
import { delimiter, join } from "node:path";
import { hasApt, installWithApt, mayInstall } from "./apt.mjs";
import { withNote } from "./run-child.mjs";

const NAMES = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
  "chrome",
];

/** How every Chromium is started here: by itself, with no graphics card, and asking nobody for anything. */
export const CHROMIUM_FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/**
 * Path of a Chromium or a relative of it; null when there is none. `NEEDLEWORK_CHROMIUM` comes before any other.
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {string | null}
 */
export function findChromium(env = process.env) {
  const named = env.NEEDLEWORK_CHROMIUM;
  if (named !== undefined && named !== "") return existsSync(named) ? named : null;
  return [...onPath(env), ...inUsualPlaces(env), ...downloaded(env)].find((path) => existsSync(path)) ?? null;
}

/** @param {NodeJS.ProcessEnv} env */
function onPath(env) {
  const folders = (env.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  const ending = process.platform === "win32" ? ".exe" : "";
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name + ending)));
}

/** @param {NodeJS.ProcessEnv} env */
function inUsualPlaces(env) {
  if (process.platform === "darwin")
    return ["Chromium", "Google Chrome", "Microsoft Edge"].map(
      (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
    );
  if (process.platform !== "win32") return [];
  const folders = [env.PROGRAMFILES, env["PROGRAMFILES(X86)"], env.LOCALAPPDATA].filter(
    (folder) => folder !== undefined,
  );
  const paths = [
    "Chromium/Application/chrome.exe",
    "Google/Chrome/Application/chrome.exe",
    "Microsoft/Edge/Application/msedge.exe",
  ];
  return folders.flatMap((folder) => paths.map((path) => join(folder, path)));
}

/**
 * What `npx playwright-core install chromium` has put on this machine.
 * @param {NodeJS.ProcessEnv} env
 */
function downloaded(env) {
  const cache = { darwin: "Library/Caches/ms-playwright", win32: "AppData/Local/ms-playwright" };
  const usual = cache[/** @type {"darwin" | "win32"} */ (process.platform)] ?? ".cache/ms-playwright";
  const folder = env.PLAYWRIGHT_BROWSERS_PATH ?? join(homedir(), usual);
  if (!existsSync(folder)) return [];
  const programs = [
    "chrome-linux/chrome",
    "chrome-linux64/chrome",
    "chrome-mac/Chromium.app/Contents/MacOS/Chromium",
    "chrome-win/chrome.exe",
  ];
  return readdirSync(folder)
    .filter((name) => name.startsWith("chromium-"))
    .flatMap((name) => programs.map((program) => join(folder, name, program)));
}

/**
 * The path of a Chromium; on Debian or Ubuntu as root it is installed when missing. Throws an Error that says the one
 * command to run.
 * @returns {Promise<string>}
 */
export async function ensureChromium() {
  const found = findChromium();
  if (found !== null) return found;
  const named = process.env.NEEDLEWORK_CHROMIUM;
  if (named) throw new Error(`NEEDLEWORK_CHROMIUM names ${named}, and there is no such file`);
  if (mayInstall()) {
    await withNote("installing Chromium with apt-get", () => installWithApt("chromium"));
    const installed = findChromium();
    if (installed !== null) return installed;
  }
  const command = hasApt() ? "sudo apt-get install -y chromium" : "npx playwright-core install chromium";
  throw new Error(`the browser tests need Chromium, and none was found; run: ${command}`);
}
