/** From the arguments to an exit code: finds the command, reads its call, runs it, words what went wrong. */

import { readCall } from "./call.ts";
import type { Command } from "./command.ts";
import { didYouMean } from "./did-you-mean.ts";
import { failureOf } from "./failure.ts";
import { CallFault, EXIT_CALL, EXIT_DONE, type ExitCode } from "./faults.ts";
import { commandHelp, generalHelp } from "./help.ts";
import { packageVersion } from "./package-files.ts";
import { print, tell } from "./streams.ts";

interface Entry {
  readonly name: string;
  readonly summary: string;
  /** Loaded only when called: the picture and server parts take their time to start. */
  load(): Promise<Command>;
}

export const COMMANDS: readonly Entry[] = [
  {
    name: "bench",
    summary: "opens the bench on this machine and prints its address",
    load: async () => (await import("./bench.ts")).BENCH,
  },
  {
    name: "read",
    summary: "what every instrument shows in a scene, and why",
    load: async () => (await import("./read.ts")).READ,
  },
  {
    name: "figure",
    summary: "a picture of a scene: SVG, PNG or PDF",
    load: async () => (await import("./figure.ts")).FIGURE,
  },
  {
    name: "problems",
    summary: "problems to wished skills and slips: as a set, as data, as a QTI package",
    load: async () => (await import("./problems.ts")).PROBLEMS,
  },
  {
    name: "sheet",
    summary: "problems on paper, and their key",
    load: async () => (await import("./sheet.ts")).SHEET,
  },
  {
    name: "mark",
    summary: "the answers of a class marked, with the ideas behind the wrong ones",
    load: async () => (await import("./mark.ts")).MARK,
  },
  {
    name: "ident",
    summary: "a station's ident as sound",
    load: async () => (await import("./ident.ts")).IDENT,
  },
  {
    name: "signal",
    summary: "a station's signal as samples, and a radial from samples",
    load: async () => (await import("./signal.ts")).SIGNAL,
  },
  {
    name: "stations",
    summary: "reads a station file or the worldwide table, lists and converts it",
    load: async () => (await import("./stations.ts")).STATIONS,
  },
];

/** Runs one call of the command line. Never throws. */
export async function run(args: readonly string[]): Promise<ExitCode> {
  const [name, ...rest] = args;
  try {
    if (name === undefined) {
      tell(generalHelp(COMMANDS));
      return EXIT_CALL;
    }
    if (name === "--help" || name === "-h" || name === "help") {
      print(generalHelp(COMMANDS));
      return EXIT_DONE;
    }
    if (name === "--version") {
      print(packageVersion());
      return EXIT_DONE;
    }
    return await runCommand(name, rest);
  } catch (error) {
    const caller = COMMANDS.some((entry) => entry.name === name) ? `needlework ${name}` : "needlework";
    const { text, exitCode } = failureOf(error, caller, process.env.NEEDLEWORK_DEBUG === "1");
    tell(text);
    return exitCode;
  }
}

async function runCommand(name: string, args: readonly string[]): Promise<ExitCode> {
  const entry = COMMANDS.find((candidate) => candidate.name === name);
  if (entry === undefined) {
    const kind = name.startsWith("-") ? "option" : "command";
    const known = [...COMMANDS.map((candidate) => candidate.name), "--help", "--version"];
    throw new CallFault(`unknown ${kind} ${name}${didYouMean(name, known)}`);
  }
  const command = await entry.load();
  const call = readCall(command, args);
  if (call.has("help")) {
    print(commandHelp(command));
    return EXIT_DONE;
  }
  return command.run(call);
}
