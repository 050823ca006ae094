// Draws the coast and relief of the Ostrelle Isles, the invented world of the demo, into demo/ostrelle.land.yaml.
// The outlines below were laid by hand, a few points an island; this program rounds and roughens them, always in
// the same way, so that the file can be made again: node scripts/ostrelle-land.mjs [--check]
// With --check it writes nothing and fails when the committed file is not what it would write.

import { readFileSync, writeFileSync } from "node:fs";

const OUT = new URL("../demo/ostrelle.land.yaml", import.meta.url);

/** Chosen by eye among the first few tried. */
const NOISE_NUMBER = 20260701;
/** Longest stretch of coast left straight, NM. */
const COAST_STEP_NM = 0.4;
/** Sideways shift of a new coast point, as a share of the stretch it divides: rocky shores, and the smoother reefs. */
const ROCK = 0.24;
const REEF = 0.1;
/** A contour ring keeps within this share of the radius that its cone gives it, so that chart and radio agree. */
const CONTOUR_WANDER = 0.15;
const CONTOURS_FT = [500, 1000, 2000, 3000];

const minutes = (degrees, min) => degrees + min / 60;
const south = (degrees, min) => -minutes(degrees, min);

/**
 * Outlines in nautical miles east and north of the anchor, clockwise from the north. An atoll is one outline that
 * goes round outside, turns in at the pass and comes back along the lagoon.
 */
const ISLANDS = [
  {
    name: "Haldrey",
    anchor: [south(10, 20), minutes(1, 27)],
    outline: `
      -1,7.4 0.6,8.1 1.6,6.6 2.4,5.4 4.6,5.3 5,3.8 6.6,2.6 6.2,0.9 4.6,0.4 4.9,-0.9 3.6,-2.4
      4.4,-4.4 6.6,-4.6 8,-6 10.3,-7.3 11,-9.2 9.4,-10.3 7.6,-10.5 6.9,-11.3 7.4,-12.5 5.7,-13.6
      4,-12.5 2.9,-12.9 3,-14.6 1.4,-16.9 -0.8,-16 -2.6,-14.7 -4.9,-15.6 -7.6,-15.4 -9.2,-13.6
      -11.6,-12.2 -11.6,-10.6 -13.2,-9.4 -12.7,-7.4 -11.3,-5.6 -12.1,-3 -10.8,-1.2 -9,-0.6
      -7.4,0.4 -9.2,1.4 -8.6,3.2 -6.4,3.4 -5.6,5.4 -3.4,5.6`,
  },
  {
    name: "Brevane",
    anchor: [south(10, 41), minutes(0, 39)],
    outline: `
      -3.4,6.9 -0.6,6.5 1.5,4.6 2,3 4,2.6 5.6,0.8 4.7,-0.9 5,-2.8 6.6,-4.6 4.6,-6.1 2.4,-5.4
      0.7,-4 -0.6,-5.3 -3,-5.2 -4.5,-3.4 -6.1,-2.4 -7.9,-0.6 -7.3,1.8 -8.6,4.2 -6.6,6.2`,
  },
  {
    name: "Tamsel",
    reef: true,
    anchor: [south(10, 9), minutes(2, 19)],
    outline: `
      -6.7,2.7 -6.2,4.2 -4.2,5.3 -2,4.9 -0.5,3.4 0.5,1.5 0.7,-0.4 -0.2,-1.8 -2,-2.2 -3.9,-1.8
      -5.5,-0.8 -6.6,0.6 -6,1.1 -4.9,0.1 -3.7,-0.7 -2.1,-0.9 -0.9,-0.5 -0.5,0.6 -1,2 -1.7,3.3
      -2.8,4.1 -4.2,4.3 -5.4,3.5 -6,2.4`,
  },
  {
    name: "Oskerry",
    anchor: [south(11, 24), minutes(1, 44)],
    outline: `
      0.6,6.6 2.2,5.6 3.9,5.2 4.4,3.6 2.9,2.8 2.6,1.5 3.6,-0.2 2.8,-2.4 2.6,-4.4 1,-6 -0.4,-7.4
      -2.4,-6.6 -4.6,-6 -5.6,-3.6 -5.2,-1 -3.2,0.6 -2.8,2.2 -1.3,3.2 -1,5.2`,
  },
  {
    name: "Lunsay",
    reef: true,
    anchor: [south(9, 33), minutes(1, 10)],
    outline: `
      -1.6,0.3 -0.3,0.7 1,0.3 2.1,-0.9 2.2,-2.4 1.6,-3.7 0.9,-4.1 0.9,-3.5 1.3,-2.4 1,-1.3
      0.3,-0.5 -0.9,-0.3`,
  },
  {
    name: "West Cay",
    reef: true,
    anchor: [south(9, 33), minutes(1, 10)],
    outline: `
      -3.1,-0.8 -2.7,-0.7 -2.9,-1.8 -2.4,-3.2 -1.2,-4.2 -1.5,-4.7 -2.8,-3.9 -3.5,-2.4`,
  },
  {
    name: "Skarrow",
    anchor: [south(11, 7), minutes(2, 47)],
    outline: `
      -1.4,3 -0.2,2.6 0.6,1.2 1.9,0.8 2.4,-0.6 1.9,-1.7 0.5,-2.1 -0.5,-3 -2.2,-2.7 -2.5,-1.2
      -1.3,-0.2 -1.4,1.2 -2.2,2.2`,
  },
  {
    name: "Thimble Rock",
    anchor: [south(9, 51), minutes(1, 52)],
    outline: `
      -0.5,0.5 0.7,0.4 1,-0.3 0.1,-0.7 -0.9,-0.3`,
  },
  {
    name: "Great Bobbin",
    anchor: [south(11, 3), minutes(1, 2)],
    outline: `
      -0.3,1 0.6,0.6 0.8,-0.5 0,-1.1 -0.8,-0.2`,
  },
  {
    name: "Little Bobbin",
    anchor: [south(11, 13), minutes(0, 53)],
    outline: `
      0,0.5 0.5,0.1 0.2,-0.5 -0.4,-0.3`,
  },
];

/** Cones: what blocks a signal. */
const PEAKS = [
  { name: "Mount Corvane", at: [south(10, 27.5), minutes(1, 22)], elevationFt: 4260, baseRadiusNm: 6 },
  { name: "Brevane Tor", at: [south(10, 39), minutes(0, 36)], elevationFt: 1450, baseRadiusNm: 3.5 },
  { name: "Oskerry Fell", at: [south(11, 26.5), minutes(1, 42.5)], elevationFt: 1910, baseRadiusNm: 3 },
  { name: "Skarrow Head", at: [south(11, 7.5), minutes(2, 47.5)], elevationFt: 340, baseRadiusNm: 1 },
];

/** Moors too gentle to block anything: only drawn. The stations Haldrey and Brevane stand on two of them. */
const MOORS = [
  {
    at: [south(10, 19.6), minutes(1, 26.2)],
    contours: [
      { aboveFt: 500, radiusNm: 3.3 },
      { aboveFt: 1000, radiusNm: 1.7 },
    ],
  },
  { at: [south(10, 28.2), minutes(1, 34.2)], contours: [{ aboveFt: 500, radiusNm: 1.2 }] },
  { at: [south(10, 41.4), minutes(0, 39.6)], contours: [{ aboveFt: 500, radiusNm: 1.1 }] },
];

const AIRFIELDS = [
  { name: "Port Haldrey", at: [south(10, 31.2), minutes(1, 33.4)], elevationFt: 85, runway: 15 },
  { name: "Brevane Moor", at: [south(10, 43), minutes(0, 42)], elevationFt: 410, runway: 14 },
  { name: "Tamsel Lagoon", at: [south(10, 10.5), minutes(2, 17)], elevationFt: 9, runway: 11 },
  { name: "Oskerry Bay", at: [south(11, 20.5), minutes(1, 46)], elevationFt: 60, runway: 16 },
  { name: "Lunsay Cay", at: [south(9, 34.5), minutes(1, 11.5)], elevationFt: 14, runway: 15 },
  { name: "Skarrow Strip", at: [south(11, 8.2), minutes(2, 46)], elevationFt: 190, runway: 12 },
];

/** A generator of numbers in [0, 1), the same ones each time: a 32-bit multiplicative walk (Lehmer, 1951). */
function walk(start) {
  let state = start % 2147483647;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

const pairs = (outline) =>
  outline
    .trim()
    .split(/\s+/)
    .map((pair) => pair.split(",").map(Number));

/** A closed Catmull-Rom curve through the points, each stretch cut in two. */
function rounded(points) {
  const at = (i) => points[(i + points.length) % points.length];
  return points.flatMap((_, i) =>
    [0, 0.5].map((t) =>
      [0, 1].map((axis) => {
        const [a, b, c, d] = [at(i - 1)[axis], at(i)[axis], at(i + 1)[axis], at(i + 2)[axis]];
        return b + (t / 2) * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
      }),
    ),
  );
}

/** Divides every stretch longer than the step, shifting the new point sideways. */
function roughened(points, share, random) {
  const divide = (from, to) => {
    const [east, north] = [to[0] - from[0], to[1] - from[1]];
    if (Math.hypot(east, north) <= COAST_STEP_NM) return [from];
    const shift = (random() * 2 - 1) * share;
    const middle = [(from[0] + to[0]) / 2 - north * shift, (from[1] + to[1]) / 2 + east * shift];
    return [...divide(from, middle), ...divide(middle, to)];
  };
  return points.flatMap((point, i) => divide(point, points[(i + 1) % points.length]));
}

/**
 * How far the flanks of one hill stand out (1) or fall back (-1) in a direction: a few slow waves, the greatest scaled
 * to 1. All contours of a hill share them, as ridges do.
 */
function ridges(random) {
  const waves = [2, 3, 5, 7, 11].map((turns) => ({ turns, size: 1 / turns, phase: random() * 2 * Math.PI }));
  const raw = (bearing) =>
    waves.reduce((sum, wave) => sum + wave.size * Math.sin(wave.turns * bearing + wave.phase), 0);
  const greatest = Math.max(...Array.from({ length: 360 }, (_, i) => Math.abs(raw((i * Math.PI) / 180))));
  return (bearing) => raw(bearing) / greatest;
}

/** A ring about the middle whose radius wanders with the ridges and a little by itself, within CONTOUR_WANDER. */
function contour(radiusNm, ridge, random) {
  const count = Math.max(16, Math.round((2 * Math.PI * radiusNm) / 0.5));
  return Array.from({ length: count }, (_, i) => {
    const bearing = (2 * Math.PI * i) / count;
    const wander = 0.8 * ridge(bearing) + 0.2 * (random() * 2 - 1);
    const radius = radiusNm * (1 + CONTOUR_WANDER * wander);
    return [radius * Math.sin(bearing), radius * Math.cos(bearing)];
  });
}

/** Miles east and north of the anchor to degrees. On a plane: these islands are drawn, not surveyed. */
const placed = ([lat, lon], points) =>
  points.map(([east, north]) => [lat + north / 60, lon + east / (60 * Math.cos((lat * Math.PI) / 180))]);

const degrees = (points) => points.map((point) => `[${point.map((value) => value.toFixed(4)).join(", ")}]`);

function ring(points, indent) {
  const words = degrees(points);
  const lines = [];
  for (let i = 0; i < words.length; i += 5) lines.push(indent + words.slice(i, i + 5).join(", "));
  return `[\n${lines.join(",\n")},\n${indent.slice(2)}]`;
}

function place([lat, lon]) {
  const part = (value, width, positive, negative) => {
    const tenths = Math.round(Math.abs(value) * 600);
    const whole = String(Math.floor(tenths / 600)).padStart(width, "0");
    return `${whole}°${((tenths % 600) / 10).toFixed(1).padStart(4, "0")}′${value < 0 ? negative : positive}`;
  };
  return `${part(lat, 2, "N", "S")} ${part(lon, 3, "E", "W")}`;
}

function land() {
  const random = walk(NOISE_NUMBER);
  const coasts = ISLANDS.map(({ name, anchor, outline, reef }) => ({
    name,
    coast: placed(anchor, roughened(rounded(pairs(outline)), reef ? REEF : ROCK, random)),
  }));
  const hills = [
    ...MOORS,
    ...PEAKS.map(({ at, elevationFt, baseRadiusNm }) => ({
      at,
      contours: CONTOURS_FT.filter((aboveFt) => aboveFt < elevationFt).map((aboveFt) => ({
        aboveFt,
        radiusNm: baseRadiusNm * (1 - aboveFt / elevationFt),
      })),
    })),
  ].map((hill) => ({ ...hill, ridge: ridges(random) }));
  const relief = CONTOURS_FT.flatMap((aboveFt) =>
    hills.flatMap(({ at, contours, ridge }) =>
      contours
        .filter((line) => line.aboveFt === aboveFt)
        .map((line) => ({ aboveFt, ring: placed(at, contour(line.radiusNm, ridge, random)) })),
    ),
  );
  return [
    "# Generated by scripts/ostrelle-land.mjs; change that and run it again.",
    "# The Ostrelle Isles are invented. Not for navigation.",
    "land: 1",
    "name: The Ostrelle Isles",
    "islands:",
    ...coasts.map(({ name, coast }) => `  - name: ${name}\n    coast: ${ring(coast, "      ")}`),
    "relief:",
    ...relief.map(({ aboveFt, ring: line }) => `  - above: ${aboveFt}\n    ring: ${ring(line, "      ")}`),
    "peaks:",
    ...PEAKS.map(
      (peak) =>
        `  - { name: ${peak.name}, at: ${place(peak.at)}, elevation: ${peak.elevationFt}, radius: ${peak.baseRadiusNm} }`,
    ),
    "airfields:",
    ...AIRFIELDS.map(
      (field) =>
        `  - { name: ${field.name}, at: ${place(field.at)}, elevation: ${field.elevationFt}, runway: ${field.runway} }`,
    ),
    "",
  ].join("\n");
}

const text = land();
if (process.argv.includes("--check")) {
  if (readFileSync(OUT, "utf8") !== text) {
    console.error("demo/ostrelle.land.yaml is not what scripts/ostrelle-land.mjs writes; run it again");
    process.exit(1);
  }
} else {
  writeFileSync(OUT, text);
  console.log(`demo/ostrelle.land.yaml ${Math.round(text.length / 1000)} kB`);
}
