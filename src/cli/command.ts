/** What each command tells about itself; help and option reading are made from it. */

import type { ExitCode } from "./faults.ts";

export interface OptionSpec {
  /** What stands after the option in the help, such as `FILE`; absent for an option that is on or off. */
  readonly value?: string;
  /** One letter, without the dash. */
  readonly short?: string;
  readonly help: string;
}

/** A call after its options are read. */
export interface Call {
  readonly operands: readonly string[];
  /** The option's value, or undefined when it was not given. */
  text(name: string): string | undefined;
  /** Whether an on-or-off option was given. */
  has(name: string): boolean;
}

export interface Command {
  readonly name: string;
  /** As written in the usage line, such as `SCENE...`; empty when there are none. */
  readonly operands: string;
  /** How many operands may stand there, both ends included. */
  readonly operandCount: readonly [least: number, most: number];
  /** One or more sentences. */
  readonly about: string;
  readonly options: Readonly<Record<string, OptionSpec>>;
  /** A call that works on the demo files of the package. */
  readonly example: string;
  run(call: Call): Promise<ExitCode>;
}
