/** A whole picture as one SVG element: its size, its title, and its words for whoever does not see it. */

import type { ComponentChildren } from "preact";
import { px } from "./px.ts";

export interface TitledPictureProps {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Begins the ids of title and description. */
  readonly idPrefix: string;
  readonly title: string;
  /** The description. */
  readonly words: ComponentChildren;
  /** What tests and pointers know the picture by. */
  readonly "data-picture"?: string;
  readonly "data-receiver"?: string;
  readonly children: ComponentChildren;
}

export function TitledPicture(props: TitledPictureProps) {
  const { widthPx, heightPx, idPrefix, title, words, children, ...data } = props;
  const [width, height] = [px(widthPx), px(heightPx)];
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={`${idPrefix}-title ${idPrefix}-desc`}
      {...data}
    >
      <title id={`${idPrefix}-title`}>{title}</title>
      <desc id={`${idPrefix}-desc`}>{words}</desc>
      {children}
    </svg>
  );
}
