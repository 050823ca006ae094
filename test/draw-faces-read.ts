/** Reads pictures back: angles, places and words out of the SVG text, as drawn. */

import type { ComponentChild, VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import { wrap360 } from "../src/earth/index.ts";

export const svgOf = (picture: ComponentChild): string => renderToString(picture as VNode);

/** The start tag of the first element with this data-part. Throws when there is none. */
export function partTag(svg: string, part: string): string {
  const tag = new RegExp(`<[a-z]+[^>]*data-part="${part}"[^>]*>`).exec(svg)?.[0];
  if (tag === undefined) throw new Error(`nothing is drawn for ${part}`);
  return tag;
}

export const hasPart = (svg: string, part: string): boolean => svg.includes(`data-part="${part}"`);

/** How far the part is turned clockwise, degrees in [0, 360). */
export function turnOf(svg: string, part: string): number {
  const turn = /rotate\((-?[\d.]+)\)/.exec(partTag(svg, part))?.[1];
  if (turn === undefined) throw new Error(`${part} is not turned`);
  return wrap360(Number(turn));
}

/** How far the part is moved to the right, px. */
export function movedRightPx(svg: string, part: string): number {
  const x = /translate\((-?[\d.]+)/.exec(partTag(svg, part))?.[1];
  if (x === undefined) throw new Error(`${part} is not moved`);
  return Number(x);
}

/** Where the ten dots of the deviation scale are drawn, left to right, px. */
export function dotPlacesPx(svg: string): number[] {
  const dots = /<g data-part="dots"[^>]*>(.*?)<\/g>/.exec(svg)?.[1] ?? "";
  return [...dots.matchAll(/cx="(-?[\d.]+)"/g)].map(([, x]) => Number(x));
}

/** The needle's place on the scale as drawn, dots, right positive: measured with the dots of the same picture. */
export function needleDotsDrawn(svg: string): number {
  const places = dotPlacesPx(svg);
  const spacing = ((places.at(-1) ?? Number.NaN) - (places[0] ?? Number.NaN)) / places.length;
  return movedRightPx(svg, "needle") / spacing;
}

/** Every word in the picture, title and description included. */
export const wordsOf = (svg: string): string =>
  svg
    .replace(/<style>.*?<\/style>/gs, "")
    .replace(/<[^>]+>/g, "\n")
    .replace(/\n+/g, "\n");

/** Every number of every attribute is finite and none is minus zero. */
export function badNumbers(svg: string): string[] {
  return [...svg.matchAll(/NaN|Infinity|undefined|null|[" (,]-0(?=[" ),])/g)].map(([found]) => found);
}

/** Ids in the picture; each should be there once. */
export const idsOf = (svg: string): string[] => [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? "");
