/** The covers of a scene: each must name a view, the aircraft, its heading, a receiver of the scene or a part of one. */

import { isSeq, type Node } from "yaml";
import { COVER_WORDS, parseCover, RECEIVER_PARTS } from "./cover.ts";
import { nearMatch } from "./near-match.ts";
import { addFault, cited, listed, type Reading } from "./reading.ts";
import { isBlank, offsetOf, type RecordField, readScalar, type Written } from "./record.ts";
import { coverLeaf } from "./scene-shape.ts";

/** One cover, or a list of them; an empty value covers nothing. */
export function readCovers(reading: Reading, field: RecordField, names: readonly string[]): string[] {
  if (isBlank(field.node)) return [];
  const receivers = [...new Set(names)];
  const items = isSeq(field.node) ? (field.node.items as (Node | null)[]) : [field.node];
  const covers: string[] = [];
  for (const node of items) {
    const keyOffset = node?.range?.[0] ?? offsetOf(field);
    const written = readScalar(reading, { key: "cover", keyOffset, node }, coverLeaf, "cover");
    if (!written) continue;
    const wrong = whatIsWrong(written, receivers);
    if (wrong) addFault(reading, "unknown-cover", written.offset, `cover ${cited(written.text)} ${wrong}`);
    else if (!covers.includes(written.value)) covers.push(written.value);
  }
  return covers;
}

function whatIsWrong({ value }: Written<string>, receivers: readonly string[]): string | null {
  const target = parseCover(value);
  if (target === null) {
    const [receiver = "", part] = value.split(".");
    if (part !== undefined && receivers.includes(receiver)) {
      const meant = nearMatch(part, RECEIVER_PARTS);
      const parts = `a receiver's parts are ${listed(RECEIVER_PARTS, "and")}`;
      return `is no part of ${receiver}; ${meant ? `did you mean ${receiver}.${meant}?` : parts}`;
    }
    return `is nothing that can be covered; cover ${listed([...COVER_WORDS, ...receivers], "or")}, or a part such as ${receivers[0] ?? "NAV1"}.needle`;
  }
  if (target.kind !== "receiver" || receivers.includes(target.receiver)) return null;
  const meant = nearMatch(value, target.part === null ? [...COVER_WORDS, ...receivers] : receivers);
  const suffix =
    target.part === null || meant === null || !receivers.includes(meant) ? "" : `.${target.part}`;
  const remedy = meant ? `did you mean ${meant}${suffix}?` : `its receivers are ${listed(receivers, "and")}`;
  return `names ${target.receiver}, which the scene does not have; ${remedy}`;
}
