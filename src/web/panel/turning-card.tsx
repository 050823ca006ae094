/**
 * The hand on a card: a round, invisible slider over a face. Drag turns the card under the hand, the wheel and the arrow keys turn it
 * by whole degrees, and three digits typed set it.
 */

import type { JSX } from "preact";
import { still } from "../../draw/index.ts";
import { threeDigits, wrap360 } from "../../earth/index.ts";
import type { Part } from "../../reason/index.ts";
import { arrowStep } from "../input/arrow-step.ts";
import { followPointer } from "../input/drag.ts";
import { readDirection } from "../input/read-number.ts";
import { turnFollower } from "../input/turn.ts";
import { useTypedDigits } from "../input/typed-digits.ts";
import { useWheel } from "../input/use-wheel.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";

export interface TurningCardProps {
  /** "NAV1 course card". */
  readonly name: string;
  /** "course", as a fault calls what was typed. */
  readonly what: string;
  readonly valueDeg: number;
  /** "course 070". */
  readonly valueText: string;
  /**
   * What follows the hand: the card, whose numbers then pass a fixed index, so that turning it right lowers the value;
   * or a pointer on the card, which raises it.
   */
  readonly follows: "card" | "pointer";
  /** What the argument calls it. */
  readonly part: Part;
  readonly onSet: (deg: number, gesture: string) => void;
  readonly onTurn: (byDeg: number, gesture: string) => void;
}

const BIG_STEP_DEG = 10;
const DIGITS = 3;

export const TurningCard = still(function TurningCard(props: TurningCardProps): JSX.Element {
  const { name, what, valueDeg, valueText, follows, part, onSet, onTurn } = props;
  const onWheel = useWheel({ stepBy: 1, bigStepBy: BIG_STEP_DEG }, (byDeg) =>
    onTurn(byDeg, stepGesture(name)),
  );
  const typed = useTypedDigits(DIGITS, (text) => {
    const read = readDirection(what, text);
    if (typeof read === "string") return read;
    onSet(read, newGesture());
    return "";
  });
  return (
    <>
      <div
        class="turning-card"
        role="slider"
        tabIndex={0}
        data-part-by-key={part}
        aria-label={name}
        aria-valuemin={1}
        aria-valuemax={360}
        aria-valuenow={Number(threeDigits(valueDeg))}
        aria-valuetext={valueText}
        onPointerDown={(press) => {
          if (press.button !== 0 || !press.isPrimary) return;
          const box = press.currentTarget.getBoundingClientRect();
          const centre = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
          const turnedDeg = turnFollower(centre, { x: press.clientX, y: press.clientY });
          const sense = follows === "card" ? -1 : 1;
          const gesture = newGesture();
          followPointer(press, (hand) => onSet(wrap360(valueDeg + sense * turnedDeg(hand)), gesture));
        }}
        onWheel={onWheel}
        onKeyDown={(event) => {
          if (typed.key(event)) return;
          const by = arrowStep(event, 1, BIG_STEP_DEG);
          if (by === null) return;
          event.preventDefault();
          onTurn(by, stepGesture(name));
        }}
        onBlur={typed.clear}
      />
      <p class="typed digits" aria-hidden={typed.fault === ""} role="status" hidden={!typed.going}>
        {typed.fault === "" ? typed.text.padEnd(DIGITS, "–") : typed.fault}
      </p>
    </>
  );
});
