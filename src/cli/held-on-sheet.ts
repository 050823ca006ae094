/**
 * Keeps the rasteriser from ending the process. Its layers (clipped groups, pictures inside the picture) are bounded by what they hold,
 * not by what is seen of it: where all of that lies far beyond the sheet, or one layer reaches far beyond and another lies inside it, its
 * sums leave nothing to draw on, and it gives up.
 */

/** The rectangles that groups are clipped to, by id. */
const CLIP = /<clipPath id="([^"]+)">(<rect [^>]*?)(?:\/>|><\/rect>)<\/clipPath>/g;
const CLIPPED_GROUP = /<g [^>]*?clip-path="url\(#([^")]+)\)"[^>]*>/g;
/** The beginning of a picture up to a clipped group right inside it. */
const CLIPPING_PICTURE = /<svg (?=(?:(?!<\/?svg[ >])[\s\S])*?<g [^>]*?clip-path=)/g;

/**
 * The same picture for the rasteriser. Each group that is clipped to a rectangle also holds that rectangle, unseen, so that it reaches
 * the sheet; and a picture inside the picture that clips for itself is no layer beside.
 */
export function heldOnSheet(svg: string): string {
  const clips = new Map([...svg.matchAll(CLIP)].map(([, id, rect]) => [id, rect]));
  const whole = svg.indexOf("<svg ");
  return svg
    .replace(CLIPPING_PICTURE, (start, offset: number) =>
      offset === whole ? start : `${start}overflow="visible" `,
    )
    .replace(CLIPPED_GROUP, (group, id: string) => {
      const rect = clips.get(id);
      return rect === undefined ? group : `${group}${rect} fill="#000" fill-opacity="0"/>`;
    });
}
