/** Help texts, made from what the commands tell about themselves. */

import { optionsOf } from "./call.ts";
import type { Command, OptionSpec } from "./command.ts";

const INDENT = "  ";

/** The text of `needlework --help`. */
export function generalHelp(
  commands: readonly { readonly name: string; readonly summary: string }[],
): string {
  return [
    "needlework: what every instrument shows, anywhere around any VOR, and why",
    "",
    "usage: needlework COMMAND ...",
    "",
    ...columns(commands.map(({ name, summary }) => [name, summary])),
    "",
    "`needlework COMMAND --help` tells more of each.",
    "A training aid, not for navigation.",
    "",
    "example:",
    `${INDENT}needlework bench`,
  ].join("\n");
}

/** The text of `needlework COMMAND --help`; it ends with an example. */
export function commandHelp(command: Command): string {
  const operands = command.operands === "" ? "" : ` ${command.operands}`;
  return [
    `usage: needlework ${command.name}${operands} [options]`,
    "",
    command.about,
    "",
    "options:",
    ...columns(
      Object.entries(optionsOf(command)).map(([name, spec]) => [optionWords(name, spec), spec.help]),
    ),
    "",
    "example:",
    `${INDENT}${command.example}`,
  ].join("\n");
}

const optionWords = (name: string, spec: OptionSpec): string =>
  `${spec.short === undefined ? "    " : `-${spec.short}, `}--${name}${spec.value === undefined ? "" : ` ${spec.value}`}`;

function columns(rows: readonly (readonly [string, string])[]): string[] {
  const width = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `${INDENT}${left.padEnd(width)}  ${right}`);
}
