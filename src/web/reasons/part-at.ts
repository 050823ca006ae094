/**
 * Which part of chart, panel or signal is at a place of the screen, by the `data-part` that the pictures and controls carry. A needle is thin and
 * a finger is not: what lies a little beside counts too, nearest first. What is covered is not drawn, so it is never found.
 */

import type { Part } from "../../reason/index.ts";

export interface PointedPart {
  /** Names of the receivers it belongs to; none for what belongs to all, such as the heading. */
  readonly receivers: readonly string[];
  readonly part: Part;
}

/** What a picture calls its parts, and what the argument calls them. */
const PARTS: ReadonlyMap<string, Part> = new Map([
  ...(
    [
      "aircraft",
      "heading",
      "track",
      "wind",
      "station",
      "rose",
      "radial",
      "course",
      "to-side",
      "from-side",
      "abeam",
      "offset",
      "service-volume",
      "frequency",
      "ident",
      "course-card",
      "needle",
      "flag",
      "dme",
      "north",
    ] as const satisfies readonly Part[]
  ).map((part): [string, Part] => [part, part]),
  ["to-from", "flag"],
  ["course-index", "course-card"],
  ["reciprocal-index", "course-card"],
  ["lubber", "heading"],
]);

/** Where parts are pointed at. */
const VIEWS = ".chart-ground, .panel, .signal";
/** How far beside a part still points at it, px. */
const BESIDE_PX = 7;
const SAMPLES: readonly (readonly [number, number])[] = [
  [0, 0],
  ...[0, 45, 90, 135, 180, 225, 270, 315].map((deg): [number, number] => [
    BESIDE_PX * Math.cos((deg * Math.PI) / 180),
    BESIDE_PX * Math.sin((deg * Math.PI) / 180),
  ]),
];

/** The part that an element is, or lies in; null when it is none that the argument may speak of. */
export function partOf(element: Element): PointedPart | null {
  const view = element.closest(VIEWS);
  const named = element.closest("[data-part]");
  if (view === null || named === null || !view.contains(named)) return null;
  const part = PARTS.get(named.getAttribute("data-part") ?? "");
  // The dart in the middle of a dial is no aircraft on the chart; the hatch of the TO side covers half the sheet.
  if (part === undefined || (part === "aircraft" && view.matches(".panel"))) return null;
  if (part === "to-side" && named instanceof SVGPathElement) return null;
  const receivers = named.closest("[data-receiver]")?.getAttribute("data-receiver")?.split(" ") ?? [];
  // A station that nobody listens to made nothing on the panel.
  if (receivers.length === 0 && named.closest("[data-station], [data-info-box], [data-label]") !== null)
    return null;
  return { receivers, part };
}

/** The part that a thing with the focus stands for: its own, or that of the picture under an unseen hand. */
export function partOfFocused(element: Element): PointedPart | null {
  const named = element.getAttribute("data-part-by-key");
  const part = element.matches(".hand-aircraft") ? "aircraft" : PARTS.get(named ?? "");
  if (part === undefined || element.closest(VIEWS) === null) return partOf(element);
  const receiver = element.closest("[data-receiver]")?.getAttribute("data-receiver");
  return { receivers: receiver == null ? [] : [receiver], part };
}

/** The part at a place of the window, px; null where they have none, or where something lies over them. */
export function partAt(x: number, y: number): PointedPart | null {
  const view = document.elementFromPoint(x, y)?.closest(VIEWS);
  if (view == null) return null;
  // The chart's picture lets every pointer through to the ground: it is felt for only while asked.
  view.toggleAttribute("data-asked", true);
  try {
    for (const [right, down] of SAMPLES)
      for (const element of document.elementsFromPoint(x + right, y + down)) {
        const found = view.contains(element) ? partOf(element) : null;
        if (found !== null) return found;
      }
    return null;
  } finally {
    view.removeAttribute("data-asked");
  }
}
