/** The ident as it is being keyed, while it is listened to: one line of bars for each station heard, and a line of words. */

import type { JSX } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import { IdentKeyingPicture, type Theme } from "../../draw/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import { useElementSize } from "../frame/element-size.ts";
import { reducedMotionWished } from "../panel/needle-motion.ts";
import { identCaption, identSentence, toldOf } from "./ident-words.ts";
import type { Identify, Mute } from "./identify.ts";
import { keyedNow, letterNow } from "./keyed-now.ts";
import { onChannel } from "./on-channel.ts";

export interface IdentKeyingProps {
  readonly identify: Identify;
  readonly reading: ReceiverReading;
  readonly covers: readonly string[];
  readonly theme: Theme;
}

const MUTE_WORDS: Readonly<Record<Mute, string>> = {
  "no-web-audio": "This browser makes no sound; the code is shown.",
  "not-loaded": "The sound could not be loaded; the code is shown.",
  "held-back": "The browser holds the sound back; the code is shown.",
};

/** Nothing while this receiver is not listened to. */
export function IdentKeying(props: IdentKeyingProps): JSX.Element | null {
  const { name } = props.reading.settings;
  return props.identify.playing.value === name ? <Keying {...props} /> : null;
}

function Keying({ identify, reading, covers, theme }: IdentKeyingProps): JSX.Element | null {
  const holder = useRef<HTMLDivElement>(null);
  const widthPx = useElementSize(holder)?.widthPx ?? 0;
  const laidOut = widthPx > 0;
  useLayoutEffect(() => {
    // On a small screen the panel scrolls, and the press may have been at its edge.
    if (laidOut) holder.current?.scrollIntoView({ block: "nearest" });
  }, [laidOut]);
  const { ident, settings } = reading;
  const told = toldOf(settings.name, covers);
  if (told === "nothing") return null;
  const elapsedS = identify.elapsedS.value;
  const lettered = told === "everything" && ident.kind !== "test-signal";
  const still = reducedMotionWished();
  const keyed = onChannel(reading).rounds.map((round) => keyedNow(ident, round, elapsedS));
  const [first] = keyed;
  const caption = identCaption(ident, first?.moment ?? null, told);
  const named = still ? keyed.map((now) => letterNow(now, lettered)).filter((letter) => letter !== null) : [];
  const mute = identify.mute.value;
  return (
    <div class="ident-keying" ref={holder}>
      {laidOut &&
        keyed.map(({ code, sentUnits }, index) => (
          <IdentKeyingPicture
            key={index}
            code={code}
            sentUnits={sentUnits}
            moving={!still}
            lettered={lettered}
            widthPx={widthPx}
            theme={theme}
            sentence={identSentence(settings.name, ident, told)}
          />
        ))}
      <p class="note">{[caption, ...named.map((letter) => `now ${letter}`)].join(", ")}</p>
      {mute === null ? null : <p class="note">{MUTE_WORDS[mute]}</p>}
    </div>
  );
}
