/**
 * A text parsed as YAML 1.2 into nodes that know their place, or the faults that keep it from being parsed. Aliases
 * (`*name`) and tags (`!name`) are refused: a file a person edits says each thing where it stands, and a short file
 * cannot unfold into millions of values.
 */

import { type Document, isAlias, isMap, isNode, isSeq, LineCounter, type Node, parseDocument } from "yaml";
import { addFault, type Reading } from "./reading.ts";
import { isBlank } from "./record.ts";
import { textFault } from "./text-file.ts";
import { depthFault, syntaxFaults } from "./yaml-faults.ts";

export interface YamlFile {
  readonly reading: Reading;
  /** The one document's value; null when the file cannot be read further, and then the reading holds the faults. */
  readonly root: Node | null;
}

/** Parses the text of one file. Never throws. */
export function parseYamlFile(text: string, file: string): YamlFile {
  const reading: Reading = { file, lines: new LineCounter(), faults: [] };
  const unread: YamlFile = { reading, root: null };
  const before = textFault(text, file);
  if (before) {
    reading.faults.push(before);
    return unread;
  }
  countLines(text, reading.lines);
  const tooDeep = depthFault(text);
  if (tooDeep) {
    addFault(reading, "too-deep", tooDeep.offset, tooDeep.message);
    return unread;
  }
  const document = parsed(text);
  if (!document) {
    addFault(reading, "yaml-syntax", 0, "this cannot be read as YAML; write one key: value on each line");
    return unread;
  }
  for (const { code, offset, message } of syntaxFaults(text, document.errors, document.contents))
    addFault(reading, code, offset, message);
  refuseAliasesAndTags(reading, document.contents);
  if (reading.faults.length > 0) return unread;
  if (!isNode(document.contents) || isBlank(document.contents)) {
    addFault(
      reading,
      "empty",
      0,
      "the file holds nothing but comments; a scene file begins with scene: 1, a station file with stations: 1",
    );
    return unread;
  }
  return { reading, root: document.contents };
}

function countLines(text: string, lines: LineCounter): void {
  lines.addNewLine(0);
  for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", end + 1)) lines.addNewLine(end + 1);
}

/** The document as far as it could be parsed; null where the parser itself gives up. */
function parsed(text: string): Document.Parsed | null {
  try {
    return parseDocument(text, { version: "1.2", schema: "core", uniqueKeys: false, prettyErrors: false });
  } catch {
    // A text that drives the parser past its own limits is no YAML that a person wrote.
    return null;
  }
}

function refuseAliasesAndTags(reading: Reading, node: unknown): void {
  if (!isNode(node)) return;
  const offset = node.range?.[0] ?? 0;
  if (isAlias(node))
    addFault(
      reading,
      "alias",
      offset,
      `*${node.source} stands for a value written elsewhere; write the value itself here`,
    );
  else if (node.tag?.startsWith("!"))
    addFault(reading, "tag", offset, `the tag ${node.tag} has no meaning here; write the value without it`);
  if (isSeq(node)) for (const item of node.items) refuseAliasesAndTags(reading, item);
  if (isMap(node))
    for (const { key, value } of node.items) {
      refuseAliasesAndTags(reading, key);
      refuseAliasesAndTags(reading, value);
    }
}
