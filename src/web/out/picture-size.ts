/** How large a picture is made. */

export interface PictureSize {
  /** The picture is laid out for this. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** Pixels of a PNG to each of those. */
  readonly pixelRatio: number;
}

export const SIZE_CHOICES = ["wide", "slide", "screen"] as const;
export type SizeChoice = (typeof SIZE_CHOICES)[number];

const WIDE: PictureSize = { widthPx: 1920, heightPx: 1080, pixelRatio: 1 };
const SLIDE: PictureSize = { widthPx: 1600, heightPx: 1200, pixelRatio: 1 };

/** Smaller than this nothing can be read; larger than this no canvas is drawn on. */
const LEAST_PX = 200;
const MOST_PX = 8000;

/** The size of a choice, for a page of these CSS pixels on a screen with so many of its own to each. */
export function pictureSize(
  choice: SizeChoice,
  screen: { readonly innerWidth: number; readonly innerHeight: number; readonly devicePixelRatio: number },
): PictureSize {
  if (choice === "wide") return WIDE;
  if (choice === "slide") return SLIDE;
  const within = (px: number) => Math.min(MOST_PX, Math.max(LEAST_PX, Math.round(px)));
  const [widthPx, heightPx] = [within(screen.innerWidth), within(screen.innerHeight)];
  const most = MOST_PX / Math.max(widthPx, heightPx);
  return { widthPx, heightPx, pixelRatio: Math.max(0.5, Math.min(screen.devicePixelRatio, most)) };
}

/** `1920 × 1080`, the pixels of its PNG. */
export const sizeText = ({ widthPx, heightPx, pixelRatio }: PictureSize): string =>
  `${Math.round(widthPx * pixelRatio)} × ${Math.round(heightPx * pixelRatio)}`;
