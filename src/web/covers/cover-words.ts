/** What can be covered in a scene, in groups as a person looks for it, and what each is called. */

import { parseCover, RECEIVER_PARTS, type ReceiverPart, type Scene, VIEWS } from "../../scene/index.ts";

export interface Coverable {
  readonly cover: string;
  /** Within its group: "needle". */
  readonly short: string;
  /** Standing alone: "NAV1 needle". */
  readonly long: string;
}

export interface CoverGroup {
  readonly title: string;
  readonly coverables: readonly Coverable[];
}

const PART_WORDS: Readonly<Record<ReceiverPart, string>> = {
  needle: "needle",
  flag: "TO/FROM flag",
  course: "course",
  dme: "DME",
  ident: "ident",
  frequency: "frequency",
};

/** "the chart", "NAV1 needle", "aircraft": what a cover hides, in a sentence. */
export function coverWords(cover: string): string {
  const target = parseCover(cover);
  if (target === null) return cover;
  switch (target.kind) {
    case "view":
      return `the ${target.view}`;
    case "aircraft":
      return "the aircraft's place";
    case "heading":
      return "the heading";
    case "receiver":
      return target.part === null
        ? `all of ${target.receiver}`
        : `${target.receiver} ${PART_WORDS[target.part]}`;
  }
}

/** A magnetic indicator has neither course nor flag. */
const partsOf = (face: string): readonly ReceiverPart[] =>
  face === "rmi" ? RECEIVER_PARTS.filter((part) => part !== "course" && part !== "flag") : RECEIVER_PARTS;

/** Everything that can be covered; what is covered already is always among it. */
export function coverGroups({ receivers, covers }: Scene): readonly CoverGroup[] {
  const coverable = (cover: string, short: string): Coverable => ({ cover, short, long: coverWords(cover) });
  return [
    { title: "Views", coverables: VIEWS.map((view) => coverable(view, view)) },
    {
      title: "Aircraft",
      coverables: [coverable("aircraft", "where it is"), coverable("heading", "heading")],
    },
    ...receivers.map(({ name, face }) => ({
      title: name,
      coverables: [
        coverable(name, "all of it"),
        ...RECEIVER_PARTS.filter(
          (part) => partsOf(face).includes(part) || covers.includes(`${name}.${part}`),
        ).map((part) => coverable(`${name}.${part}`, PART_WORDS[part])),
      ],
    })),
  ];
}

/**
 * Whether what a cover hides can be seen now: neither it lies under its own cover nor under one of what it is a part of. The heading shows on
 * the chart too, so it is hidden by its own cover alone.
 */
export function isInSight(covers: readonly string[], cover: string): boolean {
  if (covers.includes(cover)) return false;
  const target = parseCover(cover);
  if (target?.kind === "aircraft") return !covers.includes("chart");
  if (target?.kind !== "receiver") return true;
  return !covers.includes("panel") && !covers.includes(target.receiver);
}
