/** What a person is told when a call ends badly, and with which exit code. */

import { CallFault, EXIT_INPUT, type ExitCode, InputFault } from "./faults.ts";

export interface Failure {
  readonly text: string;
  readonly exitCode: ExitCode;
}

/**
 * Faults of input and call speak for themselves. Anything else is the program's own fault: one sentence and how to report
 * it, with the stack only when `debug` asks for it. `caller` is the call's beginning, such as `needlework read`.
 */
export function failureOf(error: unknown, caller: string, debug: boolean): Failure {
  if (error instanceof InputFault) return { text: error.message, exitCode: error.exitCode };
  if (error instanceof CallFault)
    return { text: `${caller}: ${error.message}; see ${caller} --help`, exitCode: error.exitCode };
  const reason = (error instanceof Error ? error.message : String(error)).split("\n")[0];
  const stack = debug && error instanceof Error ? `\n${error.stack}` : "";
  return {
    text: `${caller}: this should not have happened (${reason}); run it again with NEEDLEWORK_DEBUG=1 and report what it prints, with the file${stack}`,
    exitCode: EXIT_INPUT,
  };
}
