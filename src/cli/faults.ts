/** The two ways a command may fail that are not the program's own fault; each has its exit code. */

import { type Fault, faultLine } from "../scene/index.ts";

export const EXIT_DONE = 0;
/** A file or text that was given is at fault. */
export const EXIT_INPUT = 1;
/** The call is at fault: command, option or operand. */
export const EXIT_CALL = 2;
export type ExitCode = typeof EXIT_DONE | typeof EXIT_INPUT | typeof EXIT_CALL;

/** The call is at fault. The message is one sentence without a full stop. */
export class CallFault extends Error {
  readonly exitCode = EXIT_CALL;
}

/** What was given to read or write is at fault. The message is one sentence without a full stop, or several lines. */
export class InputFault extends Error {
  readonly exitCode = EXIT_INPUT;
}

/** The faults of a file, one line each. */
export const faultsOf = (faults: readonly Fault[]): InputFault =>
  new InputFault(faults.map(faultLine).join("\n"));
