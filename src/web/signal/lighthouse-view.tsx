/** The lighthouse picture with its hands: the turn's length, play and pause, step, scrub; and what it is a picture of. */

import type { JSX } from "preact";
import { useEffect, useMemo } from "preact/hooks";
import { LIGHTHOUSE_TURNS_S, Lighthouse, lighthouseNotes, type RoseAngle } from "../../draw/index.ts";
import { createLighthouseClock } from "./lighthouse-clock.ts";

const CONTROLS_PX = 44;
/** With less height the notes are left to a screen reader, and the hands stand beside the picture. */
const LEAST_PLAN_PX = 126;
const NOTE_LINE_PX = 17;
const NOTE_LETTERS_PX = 6.2;
const BESIDE_BELOW_PX = 200;
const BESIDE_PX = 186;

export function LighthouseView(props: Parameters<typeof RoseAngle>[0]): JSX.Element {
  const { reading, covers, widthPx, heightPx, typeScale = 1 } = props;
  const clock = useMemo(createLighthouseClock, []);
  useEffect(() => clock.close, [clock]);
  const turnS = clock.turnS.value;
  const atS = clock.atS.value;
  const notes = lighthouseNotes(reading, turnS, covers);
  const lettersAcross = (widthPx - 28) / (NOTE_LETTERS_PX * typeScale);
  const noteLines = notes.reduce((sum, note) => sum + Math.ceil(note.length / lettersAcross), 0);
  const noteRoomPx = (noteLines * NOTE_LINE_PX + 6) * typeScale;
  const noted = heightPx - CONTROLS_PX - noteRoomPx >= LEAST_PLAN_PX * typeScale;
  const beside = !noted && heightPx < BESIDE_BELOW_PX && widthPx > 480;
  const notesPx = noted ? noteRoomPx : 0;
  const size = beside
    ? { widthPx: widthPx - BESIDE_PX, heightPx }
    : { widthPx, heightPx: Math.max(60, heightPx - CONTROLS_PX - notesPx) };
  return (
    <div class="lighthouse" data-beside={beside}>
      <Lighthouse {...props} {...size} atS={atS} turnS={turnS} />
      <fieldset class="lighthouse-hands" aria-label="The lighthouse's time">
        <button
          type="button"
          class="button"
          onClick={() => {
            clock.playing.value = !clock.playing.value;
          }}
        >
          {clock.playing.value ? "Pause" : "Play"}
        </button>
        <button type="button" class="button" aria-label="Step back" onClick={() => clock.step(-1)}>
          ‹
        </button>
        <button type="button" class="button" aria-label="Step on" onClick={() => clock.step(1)}>
          ›
        </button>
        <select
          aria-label="Seconds for a turn"
          value={String(turnS)}
          onChange={(event) => {
            const chosen = LIGHTHOUSE_TURNS_S.find((each) => String(each) === event.currentTarget.value);
            if (chosen !== undefined) clock.chooseTurn(chosen);
          }}
        >
          {LIGHTHOUSE_TURNS_S.map((each) => (
            <option key={each} value={String(each)}>
              {each} s a turn
            </option>
          ))}
        </select>
        <input
          type="range"
          min="0"
          max={String(turnS)}
          step="0.05"
          value={atS}
          aria-label="Time since the flash"
          aria-valuetext={`${atS.toFixed(2)} seconds`}
          onInput={(event) => clock.scrub(event.currentTarget.valueAsNumber)}
        />
      </fieldset>
      <div
        class={noted ? "lighthouse-notes" : "unseen"}
        style={noted ? { fontSize: `${12 * typeScale}px` } : undefined}
      >
        {notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </div>
    </div>
  );
}
