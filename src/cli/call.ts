/** Reads a command's options and operands, and says what is wrong with them in words. */

import { parseArgs } from "node:util";
import type { Call, Command, OptionSpec } from "./command.ts";
import { didYouMean } from "./did-you-mean.ts";
import { CallFault } from "./faults.ts";

const HELP: OptionSpec = { short: "h", help: "this text" };

/** The command's own options and `--help`. */
export const optionsOf = (command: Command): Readonly<Record<string, OptionSpec>> => ({
  ...command.options,
  help: HELP,
});

/**
 * The call that the arguments make. `-` and everything after `--` are operands. Throws CallFault when an option is
 * unknown, lacks its value or has one too many, stands twice, or when operands are missing or too many; operands are
 * not counted when help is asked for.
 */
export function readCall(command: Command, args: readonly string[]): Call {
  const specs = optionsOf(command);
  const options = Object.fromEntries(
    Object.entries(specs).map(([name, spec]) => [
      name,
      {
        type: spec.value === undefined ? ("boolean" as const) : ("string" as const),
        ...(spec.short === undefined ? {} : { short: spec.short }),
      },
    ]),
  );
  const { tokens } = parseArgs({
    args: [...args],
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const given = new Map<string, string | true>();
  const operands: string[] = [];
  for (const token of tokens) {
    if (token.kind === "positional") operands.push(token.value);
    if (token.kind !== "option") continue;
    const spec = Object.hasOwn(specs, token.name) ? specs[token.name] : undefined;
    if (spec === undefined) throw unknownOption(token.rawName, specs);
    if (given.has(token.name)) throw new CallFault(`${token.rawName} is given twice`);
    given.set(token.name, valueFor(token.rawName, spec, token.value, token.inlineValue === true));
  }
  if (!given.has("help")) countOperands(command, operands);
  return {
    operands,
    text: (name) => {
      const value = given.get(name);
      return value === true ? undefined : value;
    },
    has: (name) => given.has(name),
  };
}

function valueFor(
  rawName: string,
  spec: OptionSpec,
  value: string | undefined,
  inline: boolean,
): string | true {
  if (spec.value === undefined) {
    if (value !== undefined) throw new CallFault(`${rawName} takes no value, but got "${value}"`);
    return true;
  }
  // A number or a place may begin with a minus; what looks like the next option is one, and the value was forgotten.
  const isNextOption = value !== undefined && !inline && /^--?[A-Za-z]/.test(value);
  if (value === undefined || value === "" || isNextOption)
    throw new CallFault(`${rawName} needs a value: ${rawName} ${spec.value}`);
  return value;
}

function unknownOption(rawName: string, specs: Readonly<Record<string, OptionSpec>>): CallFault {
  const known = Object.entries(specs).flatMap(([name, spec]) =>
    spec.short === undefined ? [`--${name}`] : [`--${name}`, `-${spec.short}`],
  );
  return new CallFault(`unknown option ${rawName}${didYouMean(rawName, known)}`);
}

function countOperands(command: Command, operands: readonly string[]): void {
  const [least, most] = command.operandCount;
  if (operands.length < least) throw new CallFault(`${command.operands.split(" ")[0]} is missing`);
  const extra = operands[most];
  if (extra !== undefined)
    throw new CallFault(
      most === 0 ? `no operand is expected, but got "${extra}"` : `"${extra}" is one operand too many`,
    );
}
