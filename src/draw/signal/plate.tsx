/** What every picture of the signal stands on: its title, its words for a screen reader, and what it is given. */

import type { ComponentChildren } from "preact";
import type { ReceiverReading } from "../../panel/index.ts";
import type { Lit } from "../lit.ts";
import { TextLine } from "../plain/text-line.tsx";
import { TitledPicture } from "../plain/titled-picture.tsx";
import type { Theme } from "../theme.ts";

export interface SignalPictureProps {
  readonly reading: ReceiverReading;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
  readonly idPrefix: string;
  readonly typeScale?: number | undefined;
  /** The scene's covers; none when not given. */
  readonly covers?: readonly string[] | undefined;
  /** What the argument speaks of. */
  readonly lit?: Lit | undefined;
}

export interface PlateProps extends Pick<SignalPictureProps, "widthPx" | "heightPx" | "theme" | "idPrefix"> {
  readonly title: string;
  readonly sentence: string;
  readonly scale: number;
  readonly picture: string;
  readonly receiver: string;
  /** Where the title begins; at the left when not given. */
  readonly titleX?: number;
  readonly children: ComponentChildren;
}

/** From the edge of a picture to what is drawn, at scale 1. */
export const MARGIN_PX = 14;
/** Height that the title takes, at scale 1. */
export const TITLE_PX = 30;

export function Plate(props: PlateProps) {
  const { widthPx, heightPx, theme, idPrefix, title, sentence, scale, picture, receiver, children } = props;
  return (
    <TitledPicture
      widthPx={widthPx}
      heightPx={heightPx}
      idPrefix={idPrefix}
      title={title}
      words={sentence}
      data-picture={picture}
      data-receiver={receiver}
    >
      <TextLine
        x={props.titleX ?? MARGIN_PX * scale}
        y={21 * scale}
        sizePx={14 * scale}
        fill={theme.ink}
        typeface="words-bold"
      >
        {title}
      </TextLine>
      {children}
    </TitledPicture>
  );
}
