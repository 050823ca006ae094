// @ts-check
// Why: set-up and tests run other programs quietly, and show what they said only when they fail.

import { spawn } from "node:child_process";

/**
 * @typedef {{ code: number, output: string, stdout: string }} Ended
 *   exit code (128 or more for a signal), both streams as they came, and stdout alone
 */

/**
 * Runs a program to its end and keeps what it printed.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {{ cwd: string, env?: NodeJS.ProcessEnv, shell?: boolean }} options
 * @returns {Promise<Ended>}
 */
export function runChild(program, args, options) {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { ...options, stdio: ["ignore", "pipe", "pipe"] });
    let output = "";
    let stdout = "";
    child.stdout?.setEncoding("utf8").on("data", (text) => {
      output += text;
      stdout += text;
    });
    child.stderr?.setEncoding("utf8").on("data", (text) => {
      output += text;
    });
    child.on("error", reject);
    child.on("close", (code) => resolve({ code: code ?? 128, output, stdout }));
  });
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: colour codes begin with the escape character
const COLOUR_CODES = /\u001b\[[0-9;]*m/g;

/** @param {string} output */
const plainLines = (output) => output.replace(COLOUR_CODES, "").trim().split("\n");

/**
 * The last lines of an output, blank ends and colours cut.
 * @param {string} output
 * @param {number} lines
 */
export const tail = (output, lines) => plainLines(output).slice(-lines).join("\n");

/**
 * The first lines of an output, blank ends and colours cut.
 * @param {string} output
 * @param {number} lines
 */
export const head = (output, lines) => plainLines(output).slice(0, lines).join("\n");

/**
 * Does the work, and says so on stderr only if it takes longer than a second.
 * @template T
 * @param {string} what a phrase such as "installing packages"
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withNote(what, work) {
  const note = setTimeout(() => process.stderr.write(`needlework: ${what} ...\n`), 1000);
  try {
    return await work();
  } finally {
    clearTimeout(note);
  }
}
