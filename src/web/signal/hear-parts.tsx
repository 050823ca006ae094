/** Hear it: the 30 Hz raised and the 9960 Hz lowered into hearing, on request. It ends when it leaves the page or is covered. */

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { RoseAngle } from "../../draw/index.ts";
import { HEARD_FACTOR, SUBCARRIER_HZ, TONE_HZ } from "../../radio/index.ts";
import { IdentVolume } from "../sound/ident-volume.tsx";
import { soundVolume } from "../sound/sound-volume.ts";
import { createPartSpeaker, type HeardPart, type PartSpeaker } from "./part-speaker.ts";

const PARTS: readonly { readonly part: HeardPart; readonly name: string; readonly words: string }[] = [
  {
    part: "tones",
    name: `${TONE_HZ} Hz × ${HEARD_FACTOR}`,
    words: `The two ${TONE_HZ} Hz waves raised ${HEARD_FACTOR} times to ${TONE_HZ * HEARD_FACTOR} Hz: the reference left, the variable right and later by the radial. Wear headphones.`,
  },
  {
    part: "subcarrier",
    name: `${SUBCARRIER_HZ} Hz ÷ ${HEARD_FACTOR}`,
    words: `The ${SUBCARRIER_HZ} Hz lowered ${HEARD_FACTOR} times to ${SUBCARRIER_HZ / HEARD_FACTOR} Hz: its swing of 480 Hz is 30 Hz here, 30 times a second.`,
  },
];
const BEFORE = "The ident is heard with Identify, on the panel.";
/** A radial that still changes is followed when it has stood for so long, ms. */
const FOLLOWS_AFTER_MS = 200;

/** With so much height both are told of at once. */
const TALL_FROM_PX = 110;

export function HearParts({ reading, heightPx }: Parameters<typeof RoseAngle>[0]): JSX.Element {
  const [part, setPart] = useState<HeardPart | null>(null);
  const [mute, setMute] = useState(false);
  const speaker = useRef<PartSpeaker | null>(null);
  const volumePercent = soundVolume();
  const percent = volumePercent.value;
  const radial = reading.radial;
  const wholeDeg = radial === null ? null : Math.round(radial);
  const heard = useRef<number | null>(null);
  useEffect(() => () => speaker.current?.close(), []);
  useEffect(() => speaker.current?.setVolume(percent), [percent]);
  useEffect(() => {
    if (part !== "tones" || radial === null || wholeDeg === heard.current) return;
    const timer = setTimeout(() => {
      heard.current = wholeDeg;
      speaker.current?.play(part, radial);
    }, FOLLOWS_AFTER_MS);
    return () => clearTimeout(timer);
  }, [part, wholeDeg]);
  const press = (pressed: HeardPart) => {
    if (pressed === part || radial === null) {
      speaker.current?.hush();
      setPart(null);
      return;
    }
    speaker.current ??= createPartSpeaker(volumePercent.peek());
    setMute(speaker.current === null);
    heard.current = wholeDeg;
    speaker.current?.play(pressed, radial);
    setPart(pressed);
  };
  const words = mute
    ? "This browser makes no sound: it has no Web Audio."
    : (PARTS.find((each) => each.part === part)?.words ?? BEFORE);
  const tall = heightPx > TALL_FROM_PX;
  return (
    <div class="hear-parts" data-tall={tall}>
      <fieldset class="hear-buttons" aria-label="Hear the signal">
        {PARTS.map(({ part: each, name, words: told }) => (
          <div key={each} class="hear-line">
            <button type="button" class="button" aria-pressed={part === each} onClick={() => press(each)}>
              {name}
            </button>
            {tall ? <p class="hear-words">{told}</p> : null}
          </div>
        ))}
      </fieldset>
      <div class="hear-said">
        <p class="hear-words" role="status">
          {tall && !mute ? BEFORE : words}
        </p>
        {part === null ? null : <IdentVolume identify={{ volumePercent }} />}
      </div>
    </div>
  );
}
