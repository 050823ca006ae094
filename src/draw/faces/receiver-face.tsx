/** The face that a receiver's settings name, as a picture that stands alone. */

import type { ReceiverReading } from "../../panel/index.ts";
import { PaperStrip } from "../plain/paper-strip.tsx";
import { px } from "../plain/px.ts";
import { TitledPicture } from "../plain/titled-picture.tsx";
import { still } from "../still.ts";
import type { Theme } from "../theme.ts";
import { DialRing } from "./compass-card.tsx";
import { CourseIndicator } from "./course-indicator.tsx";
import { receiverCovered } from "./covers.ts";
import { dialGeometry } from "./dial-geometry.ts";
import type { DialProps } from "./dial-props.ts";
import { faceSentence } from "./face-sentence.ts";
import { HorizontalSituation } from "./horizontal-situation.tsx";
import { MagneticIndicator } from "./magnetic-indicator.tsx";

/** The dial that a receiver's settings name, as a group around (0, 0). */
export function Dial(props: DialProps & { readonly second?: ReceiverReading | undefined }) {
  const { second, ...dial } = props;
  const { reading, covers = [], sizePx, theme } = props;
  const served = second === undefined ? [reading] : [reading, second];
  if (served.every((each) => receiverCovered(each.settings.name, covers)))
    return <CoveredDial names={served.map((each) => each.settings.name)} sizePx={sizePx} theme={theme} />;
  switch (props.reading.settings.face) {
    case "cdi":
      return <CourseIndicator {...dial} />;
    case "hsi":
      return <HorizontalSituation {...dial} />;
    case "rmi":
      return <MagneticIndicator {...props} />;
  }
}

interface CoveredDialProps {
  readonly names: readonly string[];
  readonly sizePx: number;
  readonly theme: Theme;
}

/** A ring with nothing in it but the strip. */
function CoveredDial({ names, sizePx, theme }: CoveredDialProps) {
  return (
    <g data-receiver={names.join(" ")}>
      <DialRing geometry={dialGeometry(sizePx)} theme={theme} />
      <PaperStrip
        middleX={0}
        middleY={0}
        widthPx={sizePx * 0.86}
        heightPx={sizePx * 0.24}
        covered={names.join(" and ")}
        theme={theme}
      />
    </g>
  );
}

const servedBy = (reading: ReceiverReading, second: ReceiverReading | undefined) =>
  second === undefined ? [reading] : [reading, second];

const namesOf = (reading: ReceiverReading, second: ReceiverReading | undefined): string =>
  servedBy(reading, second)
    .map((each) => each.settings.name)
    .join(" and ");

type FaceWords = Pick<DialProps, "reading" | "covers"> & { readonly second: ReceiverReading | undefined };

/** What is read, and not where the needle is on its way there. */
const FaceInWords = still(function FaceInWords({ reading, second, covers }: FaceWords) {
  return servedBy(reading, second)
    .map((each) => faceSentence(each, covers))
    .join(" ");
});

/** One receiver's face as a picture; `sizePx` is its side, 120 and more. A magnetic indicator may serve a `second` receiver. */
export function ReceiverFace(props: DialProps & { readonly second?: ReceiverReading | undefined }) {
  const { reading, second, sizePx, idPrefix, covers } = props;
  const half = px(sizePx / 2);
  return (
    <TitledPicture
      widthPx={sizePx}
      heightPx={sizePx}
      idPrefix={idPrefix}
      title={namesOf(reading, second)}
      words={<FaceInWords reading={reading} second={second} covers={covers} />}
    >
      <g transform={`translate(${half} ${half})`}>
        <Dial {...props} />
      </g>
    </TitledPicture>
  );
}
