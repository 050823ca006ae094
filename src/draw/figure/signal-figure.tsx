/**
 * The signal in a figure: the two waves always; where there is room the phase as an angle on the station's rose beside them or below; and
 * on a sheet that is all the signal's, the composite and its spectrum too.
 */

import type { ReceiverReading } from "../../panel/index.ts";
import { px } from "../plain/px.ts";
import { CompositePicture } from "../signal/composite-picture.tsx";
import { compositeSamples } from "../signal/composite-samples.ts";
import { pictureSignal } from "../signal/picture-signal.ts";
import type { SignalPictureProps } from "../signal/plate.tsx";
import { RoseAngle } from "../signal/rose-angle.tsx";
import { spectrumOf } from "../signal/spectrum-of.ts";
import { SpectrumPicture } from "../signal/spectrum-picture.tsx";
import { TwoWaves, type TwoWavesProps } from "./two-waves.tsx";

export type SignalFigurePicture = "waves" | "angle" | "composite" | "spectrum";

export interface SignalFigurePlace {
  readonly picture: SignalFigurePicture;
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Rooms in px at type scale 1: less, and the picture would be cramped. */
const BESIDE_WIDTH_PX = 620;
const BESIDE_HEIGHT_PX = 170;
const BELOW_WIDTH_PX = 300;
const BELOW_HEIGHT_PX = 460;
const ALL_WIDTH_PX = 700;
const ALL_HEIGHT_PX = 390;
/** The waves' part of the width. */
const LEFT_PART = 0.6;

/** Which pictures have room, and where. Plain arithmetic in px. */
export function signalFigurePlaces(
  widthPx: number,
  heightPx: number,
  scale: number,
): readonly SignalFigurePlace[] {
  const fits = (width: number, height: number): boolean =>
    widthPx >= width * scale && heightPx >= height * scale;
  const left = Math.floor(widthPx * LEFT_PART);
  if (fits(ALL_WIDTH_PX, ALL_HEIGHT_PX)) {
    const third = Math.floor(heightPx / 3);
    const rose = Math.min(heightPx, Math.floor((widthPx - left) * 1.25));
    return [
      { picture: "waves", x: 0, y: 0, widthPx: left, heightPx: third },
      { picture: "composite", x: 0, y: third, widthPx: left, heightPx: third },
      { picture: "spectrum", x: 0, y: 2 * third, widthPx: left, heightPx: heightPx - 2 * third },
      {
        picture: "angle",
        x: left,
        y: Math.floor((heightPx - rose) / 2),
        widthPx: widthPx - left,
        heightPx: rose,
      },
    ];
  }
  if (fits(BESIDE_WIDTH_PX, BESIDE_HEIGHT_PX))
    return [
      { picture: "waves", x: 0, y: 0, widthPx: left, heightPx },
      { picture: "angle", x: left, y: 0, widthPx: widthPx - left, heightPx },
    ];
  if (fits(BELOW_WIDTH_PX, BELOW_HEIGHT_PX)) {
    const half = Math.floor(heightPx / 2);
    return [
      { picture: "waves", x: 0, y: 0, widthPx, heightPx: half },
      { picture: "angle", x: 0, y: half, widthPx, heightPx: heightPx - half },
    ];
  }
  return [{ picture: "waves", x: 0, y: 0, widthPx, heightPx }];
}

export function SignalFigure(props: TwoWavesProps) {
  const { reading, widthPx, heightPx, idPrefix, typeScale = 1 } = props;
  if (reading === null || reading.radial === null) return <TwoWaves {...props} />;
  return (
    <>
      {signalFigurePlaces(widthPx, heightPx, typeScale).map(({ picture, x, y, ...size }) => (
        <g key={picture} transform={`translate(${px(x)} ${px(y)})`}>
          <OnePicture
            {...props}
            {...size}
            reading={reading}
            idPrefix={`${idPrefix}-${picture}`}
            picture={picture}
          />
        </g>
      ))}
    </>
  );
}

interface OnePictureProps extends SignalPictureProps {
  readonly reading: ReceiverReading;
  readonly picture: SignalFigurePicture;
}

function OnePicture({ picture, ...props }: OnePictureProps) {
  const signal = pictureSignal(props.reading, props.covers);
  switch (picture) {
    case "waves":
      return <TwoWaves {...props} />;
    case "angle":
      return <RoseAngle {...props} />;
    case "composite":
      return signal === null ? null : (
        <CompositePicture {...props} signal={signal} samples={compositeSamples(signal)} />
      );
    case "spectrum":
      return signal === null ? null : (
        <SpectrumPicture {...props} signal={signal} spectrum={spectrumOf(signal)} />
      );
  }
}
