/** The covers of a scene: each must name a view, the aircraft, its heading, a receiver of the scene or a part of one. */

import { isSeq, type Node } from "yaml";
import { COVER_WORDS, parseCover, RECEIVER_PARTS } from "./cover.ts";
import { nearMatch } from "./near-match.ts";
import { addFault, cited, listed, type Reading } from "./reading.ts";
import { isBlank, offsetOf, type RecordField, readScalar, type Written } from "./record.ts";
import { coverLeaf } from "./scene-shape.ts";

/** One cover, or a list of them; an empty value covers nothing. `names` are the scene's receivers; none when they are at fault. */
export function readCovers(reading: Reading, field: RecordField, names: readonly string[]): string[] {
  if (isBlank(field.node)) return [];
  const receivers = [...new Set(names)];
  const items = isSeq(field.node) ? (field.node.items as (Node | null)[]) : [field.node];
  const covers: string[] = [];
  for (const node of items) {
    const keyOffset = node?.range?.[0] ?? offsetOf(field);
    const written = readScalar(reading, { key: "cover", keyOffset, node }, coverLeaf, "cover");
    if (!written) continue;
    // Receivers that could not be read have their own fault.
    const wrong = receivers.length > 0 ? whatIsWrong(written, receivers) : null;
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
    return `is nothing that can be covered; ${whatCanBe(receivers)}`;
  }
  if (target.kind !== "receiver" || receivers.includes(target.receiver)) return null;
  if (target.part === null) {
    const meant = nearMatch(value, [...COVER_WORDS, ...receivers]);
    return `is nothing that can be covered; ${meant ? `did you mean ${meant}?` : whatCanBe(receivers)}`;
  }
  const meant = nearMatch(target.receiver, receivers);
  const remedy = meant
    ? `did you mean ${meant}.${target.part}?`
    : `its receivers are ${listed(receivers, "and")}`;
  return `names ${target.receiver}, which the scene does not have; ${remedy}`;
}

const whatCanBe = (receivers: readonly string[]): string =>
  `cover ${listed([...COVER_WORDS, ...receivers], "or")}, or a part such as ${receivers[0]}.needle`;
