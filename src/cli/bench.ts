/** `needlework bench`: the bench's server on this machine, until Ctrl-C. */

import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { buildServer, listenOnLoopback, PortRefused } from "../server/index.ts";
import { benchPaper } from "./bench-paper.ts";
import type { Command } from "./command.ts";
import { CallFault, EXIT_DONE } from "./faults.ts";
import { numberOption } from "./number-option.ts";
import { packageFile } from "./package-files.ts";
import { readSceneOrThrow } from "./scene-operand.ts";
import { print, STREAM, tell } from "./streams.ts";
import { readText } from "./text-files.ts";
import { today } from "./today.ts";

export const BENCH: Command = {
  name: "bench",
  operands: "[SCENE]",
  operandCount: [0, 1],
  about: [
    "Opens the bench on 127.0.0.1 and prints its address. With a scene file the bench opens on it, otherwise on the",
    "demo. Nothing leaves this machine. Ctrl-C ends it.",
  ].join("\n"),
  options: {
    port: {
      value: "N",
      short: "p",
      help: "the port to listen on; by default the usual one, or any that is free",
    },
    open: { help: "open the address in the browser" },
  },
  example: "needlework bench demo/scenes/01-which-way-to-the-course.yaml",
  run: async (call) => {
    const scenePath = call.operands[0] ?? null;
    if (scenePath === STREAM)
      throw new CallFault("the bench reads its scene anew whenever it changes, so it needs a file");
    const port = numberOption(call, { name: "port", least: 1, most: 65_535, unit: "", whole: true }, 0);
    if (scenePath !== null) await readSceneOrThrow(scenePath);
    const webFolder = packageFile("dist/web");
    if (!existsSync(webFolder)) throw new Error(`the built page is missing from ${webFolder}`);
    const app = await buildServer({
      webFolder,
      scene: scenePath === null ? null : { path: scenePath, readText, today },
      paper: benchPaper,
      tellFault: (error) =>
        tell(`needlework bench: ${error instanceof Error ? error.message : String(error)}`),
    });
    const address = await listenOnLoopback(app, port === 0 ? null : port).catch((error: unknown) => {
      throw error instanceof PortRefused
        ? new CallFault(
            `${error.message}; choose another with --port, or leave the option out to get a free one`,
          )
        : error;
    });
    print(`The bench is open at ${address}`);
    tell("Ctrl-C ends it.");
    if (call.has("open")) openInBrowser(address);
    await endAsked();
    await app.close();
    return EXIT_DONE;
  },
};

/** Ends when the person or the system asks the program to. */
const endAsked = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => resolve());
  });

const OPENERS: Readonly<Partial<Record<NodeJS.Platform, readonly [program: string, ...args: string[]]>>> = {
  darwin: ["open"],
  win32: ["cmd", "/c", "start", ""],
};

/** Hands the address to the system. Without a browser there is nothing lost, since the address is printed. */
function openInBrowser(address: string): void {
  const [program, ...args] = OPENERS[process.platform] ?? ["xdg-open"];
  const opener = spawn(program, [...args, address], { stdio: "ignore", detached: true });
  opener.on("error", () => tell(`no browser could be started; open ${address} yourself`));
  opener.unref();
}
