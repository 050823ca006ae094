/**
 * What a hand that covers by pointing points at: the smallest thing under it that can be covered, or the strip over it. Found by where things
 * are drawn, not by what lies on top: the hands on chart and dials lie over the pictures they move.
 */

import { parseCover, RECEIVER_PARTS, type ReceiverPart, VIEWS } from "../../scene/index.ts";

export interface PageCover {
  readonly cover: string;
  readonly isStrip: boolean;
  readonly box: DOMRect;
}

/** A needle is thin and a finger is not: nothing is taken to be smaller than this, px. */
const LEAST_PX = 28;

/** In a receiver's place on the panel: its name is on the body. */
const IN_RECEIVER: readonly (readonly [string, ReceiverPart])[] = [
  [".face [data-part='needle']", "needle"],
  [".needle-row", "needle"],
  [".face [data-part='flag'], .face [data-part='to-from']", "flag"],
  [".face [data-part='course-card'], .face [data-part='course']", "course"],
  [".stepper[data-tone='course']", "course"],
  [".dme-row", "dme"],
  [".identify, .station-pick", "ident"],
  [".frequency", "frequency"],
];
/** Of the aircraft, on chart and panel. */
const SHARED: readonly (readonly [string, string])[] = [
  [".chart-ground > svg [data-part='aircraft']", "aircraft"],
  [".chart-ground > svg [data-part='heading'], .chart-ground > svg [data-part='track']", "heading"],
  [".panel .face [data-part='heading'], .aircraft .stepper:has(#heading)", "heading"],
];
/** What strips say, where it is not the cover's own name. */
const STRIP_PARTS: ReadonlyMap<string, ReceiverPart> = new Map([
  ...RECEIVER_PARTS.map((part): [string, ReceiverPart] => [part, part]),
  ["TO/FROM", "flag"],
  ["DME", "dme"],
]);

/** What lies at a place of the window, px, and can be covered or lifted; null where nothing is. */
export function pageCoverAt(x: number, y: number, covers: readonly string[]): PageCover | null {
  const found = [...strips(covers), ...coverables()].filter(({ box }) => holds(box, x, y));
  // A strip lies above what it covers.
  return smallest(found.filter(({ isStrip }) => isStrip)) ?? smallest(found);
}

/** The strip at a place of the window; null where there is none. */
export const stripAt = (x: number, y: number, covers: readonly string[]): PageCover | null =>
  smallest(strips(covers).filter(({ box }) => holds(box, x, y)));

function coverables(): PageCover[] {
  const views = VIEWS.map((view) => [`.view[data-view='${view}'] > .sheet`, view] as const);
  const receivers = [...document.querySelectorAll<HTMLElement>(".receiver-body[data-receiver]")];
  return [
    ...[...views, ...SHARED].flatMap(([selector, cover]) => boxes(document, selector, cover)),
    ...receivers.flatMap((article) => {
      const name = article.dataset.receiver ?? "";
      return [
        { cover: name, isStrip: false, box: boxOf(article) },
        ...IN_RECEIVER.flatMap(([selector, part]) => boxes(article, selector, `${name}.${part}`)),
      ];
    }),
  ];
}

const boxes = (within: ParentNode, selector: string, cover: string): PageCover[] =>
  [...within.querySelectorAll(selector)].map((element) => ({
    cover,
    isStrip: false,
    box: boxOf(element),
  }));

function strips(covers: readonly string[]): PageCover[] {
  return [...document.querySelectorAll<HTMLElement>(".table [data-cover]")].flatMap((strip) => {
    const receiver = strip.closest<HTMLElement>(".receiver-body[data-receiver]")?.dataset.receiver ?? null;
    const cover = coverOfStrip(strip.dataset.cover ?? "", receiver, covers);
    return cover === null ? [] : [{ cover, isStrip: true, box: boxOf(strip) }];
  });
}

/**
 * The cover of the scene that a strip stands for. A receiver's strip may lie there for its part, for all of the receiver or for the panel; a
 * course on the chart for whatever hides the station.
 * @param receiver in whose place on the panel the strip lies; null elsewhere
 */
export function coverOfStrip(
  label: string,
  receiver: string | null,
  covers: readonly string[],
): string | null {
  const [name = "", ...rest] = label.split(" ");
  const onChart = receiver === null && rest.join(" ") === "course";
  const whose = onChart ? name : receiver;
  const part = onChart ? "course" : STRIP_PARTS.get(label);
  const candidates =
    whose !== null && part !== undefined
      ? [`${whose}.${part}`, ...(onChart ? [`${whose}.frequency`, `${whose}.ident`] : []), whose, "panel"]
      : [label, "panel"];
  return candidates.find((cover) => covers.includes(cover) && parseCover(cover) !== null) ?? null;
}

const holds = (box: DOMRect, x: number, y: number): boolean =>
  box.width > 0 && x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;

/** Where an element is drawn, at least as large as a finger; empty where it is not drawn at all. */
function boxOf(element: Element): DOMRect {
  const box = element.getBoundingClientRect();
  if (box.width === 0 && box.height === 0) return box;
  const beside = (size: number) => Math.max(0, (LEAST_PX - size) / 2);
  const [right, down] = [beside(box.width), beside(box.height)];
  return new DOMRect(box.x - right, box.y - down, box.width + 2 * right, box.height + 2 * down);
}

const smallest = (found: readonly PageCover[]): PageCover | null =>
  found.reduce<PageCover | null>(
    (least, each) => (least === null || areaOf(each) < areaOf(least) ? each : least),
    null,
  );
const areaOf = ({ box }: PageCover): number => box.width * box.height;
