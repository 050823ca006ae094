/** The parser's own complaints said in a person's words: what is wrong on the line, and what to write. */

import { isCollection, isMap, isNode, isPair, isScalar, type YAMLParseError } from "yaml";
import type { FaultCode } from "./fault-codes.ts";

export interface SyntaxFault {
  readonly code: FaultCode;
  readonly offset: number;
  readonly message: string;
}

/** Lists and maps inside each other; a scene needs five. Far below what would exhaust the parser. */
const DEEPEST = 40;
const TABS = "a tab indents this line; YAML is indented with spaces only";

/** One fault a line, the first: the rest of a line's complaints follow from it. Tabs explain all others of their file. */
export function syntaxFaults(text: string, errors: readonly YAMLParseError[], root: unknown): SyntaxFault[] {
  if (errors.length === 0) return [];
  const tabs = tabFault(text);
  if (tabs) return [tabs];
  const found: SyntaxFault[] = [];
  const linesSeen = new Set<number>();
  const lineOf = (offset: number): number => text.lastIndexOf("\n", offset - 1);
  for (const error of [...errors].sort((one, other) => one.pos[0] - other.pos[0])) {
    if (linesSeen.has(lineOf(error.pos[0]))) continue;
    const fault = syntaxFault(error, text, root);
    linesSeen.add(lineOf(error.pos[0])).add(lineOf(fault.offset));
    found.push(fault);
  }
  return found;
}

/** The first tab in an indentation. Only asked once the parser has complained: inside a block of text a tab may stand. */
function tabFault(text: string): SyntaxFault | null {
  const lines = [...text.matchAll(/^ *\t/gm)];
  const first = lines[0];
  if (!first) return null;
  const more = lines.length === 1 ? "" : ` (so are ${lines.length - 1} more lines)`;
  return { code: "tab", offset: first.index + first[0].length - 1, message: `${TABS}${more}` };
}

function syntaxFault(error: YAMLParseError, text: string, root: unknown): SyntaxFault {
  const offset = Math.min(error.pos[0], text.length);
  if (error.code === "MULTIPLE_DOCS")
    return {
      offset,
      code: "several-documents",
      message: "a second document begins here; one file holds one scene, so put it in a file of its own",
    };
  if (error.code === "RESOURCE_EXHAUSTION") return { offset, code: "too-deep", message: tooDeepMessage() };
  if (error.code === "TAG_RESOLVE_FAILED" || error.code === "MULTIPLE_TAGS")
    return { offset, code: "tag", message: "a tag (!name) has no meaning here; write the value without it" };
  const code = "yaml-syntax";
  if (/closing .quote/.test(error.message))
    return {
      code,
      offset: unclosedAt(root, text, offset),
      message: "the quotation mark opened here is never closed; add the closing one",
    };
  if (/sufficiently indented and end with|must end with|end with a [}\]]/.test(error.message)) {
    const opened = unclosedAt(root, text, offset);
    const closing = text[opened] === "[" ? "]" : "}";
    return {
      code,
      offset: opened,
      message: `the bracket opened here is not closed; add the ${closing} it lacks`,
    };
  }
  const further = error.code === "BLOCK_AS_IMPLICIT_KEY" ? furtherIndentedAt(text, offset) : null;
  if (further !== null)
    return {
      code,
      offset: further,
      message:
        "this line is indented further than the line above it, whose value it seems to go on with; begin it at the same column",
    };
  return { code, offset, message: syntaxSentence(error, text) };
}

/** Where the quoted text or bracket that has no end begins; `offset` when it is not to be found. */
function unclosedAt(root: unknown, text: string, offset: number): number {
  let found = -1;
  const look = (node: unknown): void => {
    if (isPair(node)) {
      look(node.key);
      look(node.value);
      return;
    }
    if (!isNode(node)) return;
    const [start, end] = node.range ?? [offset, offset];
    const quoted = isScalar(node) && /^QUOTE/.test(node.type ?? "") && text[start];
    const bracket = isCollection(node) && node.flow && (isMap(node) ? "}" : "]");
    const closing = quoted || bracket;
    const open = closing && (text[end - 1] !== closing || end - 1 === start);
    if (open && start <= offset) found = Math.max(found, start);
    if (isCollection(node)) node.items.forEach(look);
  };
  look(root);
  return found < 0 ? offset : found;
}

/** Where a line begins that is taken for part of the value above it, having its own `key:`; null when the colon is on the line itself. */
function furtherIndentedAt(text: string, offset: number): number | null {
  const colon = /:(\s|$)/.exec(text.slice(offset));
  const before = text.slice(offset, offset + (colon?.index ?? 0));
  const lineEnd = before.lastIndexOf("\n");
  return lineEnd < 0 ? null : offset + lineEnd + 1 + before.slice(lineEnd + 1).search(/\S|$/);
}

function syntaxSentence(error: YAMLParseError, text: string): string {
  const says = (words: RegExp): boolean => words.test(error.message);
  if (says(/^Missing ,/))
    return "a comma is missing before this item; items between brackets are parted by commas";
  if (says(/separated from other tokens/)) return "a # that begins a comment needs a space before it";
  if (says(/space after :/)) return "a colon needs a space after it, as in key: value";
  if (error.code === "BLOCK_AS_IMPLICIT_KEY")
    return "there is a second colon in this value; put the whole value in quotes if the colon is part of it, or give the next key a line of its own";
  if (error.code === "MULTILINE_IMPLICIT_KEY" || says(/followed by map values/))
    return "this line is not key: value; write a colon and a space after the key, and indent the line like the keys beside it";
  if (error.code === "BAD_INDENT" || says(/without - indicator/))
    return "this line is not indented like the ones it belongs with; begin it at the same column";
  if (error.code === "BAD_SCALAR_START")
    return `a value cannot begin with ${text[error.pos[0]] ?? "this character"}; put the value in quotes`;
  if (error.code === "BAD_DQ_ESCAPE")
    return "a backslash inside double quotes begins a special character; use single quotes for plain text";
  return "this does not belong here in YAML; write one key: value on a line, and put text with special characters in quotes";
}

const tooDeepMessage = (): string =>
  `lists and maps are nested more than ${DEEPEST} deep here; nothing in these files needs more than five`;

/**
 * Where a text nests deeper than anything a person writes: by open brackets, by lines ever further in, or by dashes in
 * a row. Asked before parsing, because the parser descends one call a level. It may count brackets inside quoted text,
 * which matters only for texts with dozens of unclosed ones.
 */
export function depthFault(text: string): SyntaxFault | null {
  const offset = deepBracketAt(text) ?? deepIndentAt(text);
  return offset === null ? null : { code: "too-deep", offset, message: tooDeepMessage() };
}

function deepBracketAt(text: string): number | null {
  let open = 0;
  for (const bracket of text.matchAll(/[[\]{}]/g)) {
    open = bracket[0] === "[" || bracket[0] === "{" ? open + 1 : Math.max(0, open - 1);
    if (open > DEEPEST) return bracket.index;
  }
  return null;
}

function deepIndentAt(text: string): number | null {
  const indents: number[] = [];
  for (const line of text.matchAll(/^([ \t]*)((?:[-?:&!][^\s]*[ \t]+)*)\S/gm)) {
    const indent = line[1]?.length ?? 0;
    while ((indents.at(-1) ?? -1) >= indent) indents.pop();
    indents.push(indent);
    const marks = line[2]?.match(/\S+/g)?.length ?? 0;
    if (indents.length + marks > DEEPEST) return line.index + indent;
  }
  return null;
}
