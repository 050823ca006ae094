/** Flag and needle in words, each to be asked about. What is covered has no words. */

import type { JSX } from "preact";
import { type CoverablePart, needleWords } from "../../draw/index.ts";
import { threeDigits, turned } from "../../earth/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import type { Part } from "../../reason/index.ts";
import { WhyButton } from "./why-button.tsx";

export interface NeedleRowProps {
  readonly reading: ReceiverReading;
  readonly covers: readonly string[];
  readonly covered: ReadonlySet<CoverablePart>;
  readonly isLit: (part: Part) => boolean;
}

export function NeedleRow({ reading, covers, covered, isLit }: NeedleRowProps): JSX.Element | null {
  const { name, face } = reading.settings;
  const pointer = face === "rmi";
  const flagSeen = !pointer && !covered.has("flag");
  const needleSeen = !covered.has("needle");
  if (!flagSeen && !needleSeen) return null;
  const words = pointer ? pointerWords(reading, covered.has("heading")) : needleWords(reading, covers);
  return (
    <div class="row needle-row">
      {flagSeen ? (
        <WhyButton receiver={name} part="flag" what="flag" words={reading.flag} lit={isLit("flag")}>
          {reading.flag}
        </WhyButton>
      ) : (
        <span class="caption">{pointer ? "pointer" : "needle"}</span>
      )}
      {needleSeen ? (
        <WhyButton
          receiver={name}
          part="needle"
          what={pointer ? "pointer" : "needle"}
          words={words}
          lit={isLit("needle")}
        >
          {words}
        </WhyButton>
      ) : null}
    </div>
  );
}

/** Where the pointer's head and tail are on the card; counted from the nose while the card's heading is covered. */
function pointerWords({ rmiPointerRelativeDeg, heading }: ReceiverReading, headingCovered: boolean): string {
  if (rmiPointerRelativeDeg === null) return "OFF";
  if (headingCovered) return `${threeDigits(rmiPointerRelativeDeg)} right of the nose`;
  const head = turned(heading, rmiPointerRelativeDeg);
  return `head ${threeDigits(head)}, tail ${threeDigits(turned(head, 180))}`;
}
