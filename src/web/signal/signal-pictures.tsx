/** One picture of the signal or all of them; or, where no bearing arrives, why. */

import type { JSX } from "preact";
import { noBearingSentence, pictureSignal, TwoWaves } from "../../draw/index.ts";
import type { SignalPicture } from "./picture-choice.ts";
import { placePictures } from "./picture-places.ts";
import { type PictureProps, PictureView } from "./picture-view.tsx";

export interface SignalPicturesProps extends PictureProps {
  readonly picture: SignalPicture | "all";
}

export function SignalPictures({ picture, ...props }: SignalPicturesProps): JSX.Element {
  const { reading, covers, widthPx, heightPx, typeScale = 1 } = props;
  if (pictureSignal(reading, covers) === null) return <WhyNone {...props} />;
  if (picture !== "all") return <OnePicture {...props} picture={picture} />;
  const { scale, places } = placePictures({ widthPx, heightPx }, typeScale);
  return (
    <div class="signal-all">
      {places.map(({ picture: each, x, y, ...size }) => (
        <div
          key={each}
          class="signal-place"
          data-place={each}
          style={{ left: `${x}px`, top: `${y}px`, width: `${size.widthPx}px`, height: `${size.heightPx}px` }}
        >
          <OnePicture {...props} {...size} typeScale={scale} picture={each} />
        </div>
      ))}
    </div>
  );
}

function OnePicture({ picture, ...props }: PictureProps & { readonly picture: SignalPicture }): JSX.Element {
  // What arrives can be looked at even where the receiver makes nothing of it.
  const compares = picture !== "composite" && picture !== "spectrum";
  if (compares && props.reading.radial === null) return <WhyNone {...props} />;
  if (picture === "waves") return <TwoWaves {...props} />;
  const { name } = props.reading.settings;
  return (
    <PictureView {...props} key={`${picture} ${name}`} idPrefix={`signal-${picture}`} picture={picture} />
  );
}

const WhyNone = ({ reading, covers }: PictureProps): JSX.Element => (
  <p class="signal-none">{noBearingSentence(reading, covers)}</p>
);
