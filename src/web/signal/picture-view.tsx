/** The pictures of the signal beside the two waves. Samples and spectrum are made anew when what arrives changes, not when a course turns. */

import type { JSX } from "preact";
import { useMemo } from "preact/hooks";
import {
  CompositePicture,
  compositeSamples,
  pictureSignal,
  RoseAngle,
  SpectrumPicture,
  spectrumOf,
} from "../../draw/index.ts";
import { HearParts } from "./hear-parts.tsx";
import { LighthouseView } from "./lighthouse-view.tsx";
import type { SignalPicture } from "./picture-choice.ts";

export type PictureProps = Parameters<typeof RoseAngle>[0];

export interface PictureViewProps extends PictureProps {
  readonly picture: Exclude<SignalPicture, "waves">;
}

export function PictureView({ picture, ...props }: PictureViewProps): JSX.Element | null {
  switch (picture) {
    case "composite":
      return <CompositeView {...props} />;
    case "spectrum":
      return <SpectrumView {...props} />;
    case "angle":
      return <RoseAngle {...props} />;
    case "lighthouse":
      return <LighthouseView {...props} />;
    case "hear":
      return <HearParts {...props} />;
  }
}

function CompositeView(props: PictureProps): JSX.Element | null {
  const signal = pictureSignal(props.reading, props.covers);
  const key = JSON.stringify(signal);
  const samples = useMemo(() => (signal === null ? null : compositeSamples(signal)), [key]);
  return signal === null || samples === null ? null : (
    <CompositePicture {...props} signal={signal} samples={samples} />
  );
}

function SpectrumView(props: PictureProps): JSX.Element | null {
  const signal = pictureSignal(props.reading, props.covers);
  // Without echoes the radial is all in the phases, which a spectrum leaves out; a decibel of noise is not seen.
  const key = JSON.stringify([
    signal?.modulation,
    signal?.propeller,
    Math.round(signal?.carrierToNoiseDbHz ?? 0),
    signal === null || signal.echoes.length === 0 ? null : [signal.radial, signal.echoes],
  ]);
  const spectrum = useMemo(() => (signal === null ? null : spectrumOf(signal)), [key]);
  return signal === null || spectrum === null ? null : (
    <SpectrumPicture {...props} signal={signal} spectrum={spectrum} />
  );
}
