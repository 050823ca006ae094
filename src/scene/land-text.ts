/** A land as our files write it. Points of rings are in decimal degrees to five places, 1 m. */

import type { LatLon } from "../earth/index.ts";
import type { Land } from "../radio/index.ts";
import { numberText, positionText, quotedIfNeeded } from "./written-values.ts";

const POINTS_A_LINE = 5;

/** The lines of a land's keys, without the version and without indentation. */
export function landLines(land: Land): string[] {
  return [
    `name: ${quotedIfNeeded(land.name)}`,
    ...list("islands", land.islands, ({ name, coast }) => [
      `- name: ${quotedIfNeeded(name)}`,
      ...ringLines("coast", coast),
    ]),
    ...list("relief", land.relief, ({ aboveFt, ring }) => [
      `- above: ${numberText(aboveFt, 1)}`,
      ...ringLines("ring", ring),
    ]),
    ...list("peaks", land.peaks, ({ name, position, elevationFt, baseRadiusNm }) => [
      `- name: ${quotedIfNeeded(name)}`,
      `  at: ${positionText(position)}`,
      `  elevation: ${numberText(elevationFt, 1)}`,
      `  radius: ${numberText(baseRadiusNm, 2)}`,
    ]),
    ...list("airfields", land.airfields, ({ name, position, elevationFt, runway }) => [
      `- name: ${quotedIfNeeded(name)}`,
      `  at: ${positionText(position)}`,
      `  elevation: ${numberText(elevationFt, 1)}`,
      ...(runway === null ? [] : [`  runway: ${runway}`]),
    ]),
  ];
}

function list<T>(key: string, items: readonly T[], lines: (item: T) => string[]): string[] {
  if (items.length === 0) return [];
  return [`${key}:`, ...items.flatMap(lines).map((line) => `  ${line}`)];
}

function ringLines(key: string, ring: readonly LatLon[]): string[] {
  const points = ring.map(({ latDeg, lonDeg }) => `[${numberText(latDeg, 5)}, ${numberText(lonDeg, 5)}]`);
  const rows = Array.from({ length: Math.ceil(points.length / POINTS_A_LINE) }, (_, row) =>
    points.slice(row * POINTS_A_LINE, (row + 1) * POINTS_A_LINE).join(", "),
  );
  return [
    `  ${key}: [`,
    ...rows.map((row, index) => `    ${row}${index < rows.length - 1 ? "," : ""}`),
    "  ]",
  ];
}
