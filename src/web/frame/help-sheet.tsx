/** The help sheet: the three colours, what a hand does, and every key. Loaded when it is first asked for. */

import type { Signal } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { TRAINING_CAUTION } from "../../scene/index.ts";

export interface HelpSheetProps {
  readonly singleKeys: Signal<boolean>;
  readonly onClose: () => void;
}

/** One thing to do, by hand and by key. A key's name stands between backticks. */
interface Row {
  readonly what: string;
  readonly hand: string;
  readonly keys: string;
}

const PARTS: readonly { readonly title: string; readonly rows: readonly Row[] }[] = [
  {
    title: "The aircraft and its receivers",
    rows: [
      {
        what: "Move the aircraft",
        hand: "drag the dart",
        keys: "Tab to it; `arrows` half a mile, `Shift` 5, `Alt` 0.1",
      },
      {
        what: "Turn its heading",
        hand: "drag the ring before its nose, or the heading card",
        keys: "`arrows` 1°, `Shift` or `Page Up`, `Page Down` 10°",
      },
      {
        what: "Turn a course",
        hand: "drag the face's card, turn the wheel over it, or − and +",
        keys: "as the heading, or three digits typed on the card; `Backspace` mends, `Escape` drops them",
      },
      {
        what: "Tune",
        hand: "pick a station from the list",
        keys: "type a frequency or an ident, then `Enter`",
      },
      {
        what: "Ask why",
        hand: "point at a step of the reasons, or press a needle, a flag, a reading",
        keys: "Tab to it, `Enter` keeps it lit, `Escape` lets go",
      },
    ],
  },
  {
    title: "The chart",
    rows: [
      { what: "Move the paper", hand: "drag it", keys: "`arrows`, with the chart in focus" },
      { what: "Nearer, farther", hand: "wheel, pinch, + and −", keys: "`+` and `-`" },
      { what: "The whole scene again", hand: "Fit", keys: "`0`" },
      {
        what: "Measure",
        hand: "Measure, or drag with Shift held",
        keys: "Measure, then `arrows` and `Enter` or `Space`; `Escape` ends",
      },
    ],
  },
  {
    title: "The four views",
    rows: [
      { what: "Choose one, bring it back", hand: "its tab at the foot", keys: "`1` to `4`" },
      {
        what: "Put it away, or bring it back",
        hand: "Put away, above the sheet",
        keys: "`Shift` `1` to `4`",
      },
      {
        what: "Pictures of the signal",
        hand: "their tabs, or all at once with Enlarge",
        keys: "Tab to them, then `Enter`",
      },
      {
        what: "Have the signal measured, with noise, reflectors, a propeller",
        hand: "Measured, above the signal",
        keys: "`S`",
      },
      { what: "Enlarge, shrink", hand: "Enlarge, above the sheet", keys: "`E`, or `Escape` to shrink" },
      { what: "Project for the room", hand: "Project", keys: "`P`, and `Escape` to end" },
    ],
  },
  {
    title: "Time",
    rows: [
      { what: "Fly on, halt", hand: "Play", keys: "`Space`" },
      {
        what: "Step on, step back",
        hand: "1 s and 10 s",
        keys: "`.` and `,`, ten seconds with `Shift`",
      },
      { what: "Stopwatch", hand: "Start, on the panel", keys: "`T` starts and stops it, `Shift` `T` resets" },
    ],
  },
  {
    title: "Practice",
    rows: [
      { what: "Choose an answer", hand: "press it", keys: "`1` to `6`, then `Enter`" },
      {
        what: "Step a number",
        hand: "its buttons, held to go on",
        keys: "`arrows`, ten with `Page Up`, `Page Down`, or typed",
      },
      {
        what: "Mark a place",
        hand: "press the chart",
        keys: "type it; then Tab to the mark, `arrows` move it",
      },
    ],
  },
  {
    title: "The scene",
    rows: [
      { what: "Cover something", hand: "Cover", keys: "`C`" },
      {
        what: "Take back, bring again",
        hand: "Undo, Redo",
        keys: "`Ctrl` `Z`, then `Ctrl` `Shift` `Z` or `Ctrl` `Y`",
      },
      { what: "Save, open, print", hand: "Share", keys: "`Ctrl` `S`, `Ctrl` `O`, `Ctrl` `P`" },
      { what: "Practise", hand: "Practice, above the table or at Home", keys: "`Q`" },
      { what: "This sheet", hand: "Help", keys: "`?`" },
    ],
  },
];

export function HelpSheet({ singleKeys, onClose }: HelpSheetProps): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    // A press beside the sheet puts it away, as Escape does.
    const onPress = (event: MouseEvent) => {
      if (event.target === shown) shown?.close();
    };
    shown?.addEventListener("click", onPress);
    return () => shown?.removeEventListener("click", onPress);
  }, []);
  return (
    <dialog ref={dialog} class="sheet help" aria-labelledby="help-title" onClose={onClose}>
      <header class="dialog-head">
        <h2 id="help-title">Help</h2>
        <button type="button" class="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keys */}
      <section class="help-body" tabIndex={0} aria-label="What can be done, by hand and by key">
        <Colours />
        {PARTS.map(({ title, rows }) => (
          <table key={title}>
            <caption>{title}</caption>
            <thead class="unseen">
              <tr>
                <th scope="col">What</th>
                <th scope="col">By hand</th>
                <th scope="col">By key</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ what, hand, keys }) => (
                <tr key={what}>
                  <th scope="row">{what}</th>
                  <td>{hand}</td>
                  <td>{withKeys(keys)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
        <label class="help-switch">
          <input
            type="checkbox"
            checked={singleKeys.value}
            onChange={(event) => {
              singleKeys.value = event.currentTarget.checked;
            }}
          />
          Keys pressed alone act at once (E, P, C, S, T, 1 to 4, Space and the like)
        </label>
        <p class="note">{TRAINING_CAUTION}</p>
      </section>
    </dialog>
  );
}

/** What the colours mean, in every view. */
const Colours = (): JSX.Element => (
  <ul class="help-colours">
    <li data-colour="ink">
      <b>Ink</b> is you: the aircraft and its heading
    </li>
    <li data-colour="course">
      <b>Red</b> is what you set: the course, its line and its needle
    </li>
    <li data-colour="radial">
      <b>Blue-green</b> is what the station gives: its rose, your radial
    </li>
  </ul>
);

const withKeys = (text: string): (string | JSX.Element)[] =>
  text.split("`").map((part, index) => (index % 2 === 0 ? part : <kbd key={`${index}${part}`}>{part}</kbd>));
