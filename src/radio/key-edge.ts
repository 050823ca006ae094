/** The edge of a keyed stroke: a raised cosine, so that the key does not click and spreads little beyond its tone. Common practice. */

/** Rise and fall of a stroke, seconds, inside the stroke. */
export const EDGE_S = 0.005;

/** How far the key is down so long after an edge of `edgeS` begins, 0 to 1; `sinceS` in [0, edgeS]. */
export const risen = (sinceS: number, edgeS: number): number =>
  (1 - Math.cos((Math.PI * sinceS) / edgeS)) / 2;
