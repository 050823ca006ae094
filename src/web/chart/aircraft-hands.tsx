/** The hands on the aircraft: one on the dart moves it, one before its nose turns its heading. By pointer or by arrow keys. */

import type { JSX } from "preact";
import { useRef } from "preact/hooks";
import type { ChartProjection } from "../../draw/index.ts";
import { direct, magneticFromTrue, type TrueDeg, threeDigits, trueDeg } from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import { arrowStep } from "../input/arrow-step.ts";
import { followPointer } from "../input/drag.ts";
import { screenDirectionDeg } from "../input/turn.ts";
import type { Bench } from "../state/bench.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";

export interface AircraftHandsProps {
  readonly bench: Bench;
  readonly situation: Situation;
  readonly projection: ChartProjection;
  /** 1 on a screen, up to 2 when projecting. */
  readonly typeScale: number;
  /** The element whose top left corner is the paper's. */
  readonly paper: () => DOMRect | null;
  readonly onMoved: () => void;
}

/** Just before the head of the heading line, at type scale 1. */
const NOSE_REACH_PX = 80;

const ARROW_DIRECTIONS: Readonly<Record<string, TrueDeg>> = {
  ArrowUp: trueDeg(0),
  ArrowRight: trueDeg(90),
  ArrowDown: trueDeg(180),
  ArrowLeft: trueDeg(270),
};

/** How far one press moves the aircraft, NM: a small step by default, far with Shift, finely with Alt. */
const keyStepNm = (event: KeyboardEvent): number => (event.shiftKey ? 5 : event.altKey ? 0.1 : 0.5);

export function AircraftHands(props: AircraftHandsProps): JSX.Element {
  const { bench, situation, projection, typeScale, paper, onMoved } = props;
  const { aircraft } = situation.scene;
  const sheet = useRef(projection);
  sheet.current = projection;
  const at = projection.toPaper(aircraft.position);
  const nose = ((projection.trueNorthAngle(aircraft.position) + situation.headingTrue) * Math.PI) / 180;
  const reachPx = NOSE_REACH_PX * typeScale;
  const noseAt = { x: at.x + Math.sin(nose) * reachPx, y: at.y - Math.cos(nose) * reachPx };

  const dragAircraft = (press: PointerEvent) => {
    const box = paper();
    if (press.button !== 0 || !press.isPrimary || box === null) return;
    const gesture = newGesture();
    const grabbed = { x: press.clientX - box.left - at.x, y: press.clientY - box.top - at.y };
    followPointer(press, (hand) => {
      // The sheet may have been brought nearer meanwhile.
      const to = sheet.current.toWorld(hand.x - box.left - grabbed.x, hand.y - box.top - grabbed.y);
      bench.act({ kind: "move-aircraft", to }, gesture);
      onMoved();
    });
  };
  const dragNose = (press: PointerEvent) => {
    const box = paper();
    if (press.button !== 0 || !press.isPrimary || box === null) return;
    const gesture = newGesture();
    followPointer(press, (hand) => {
      const from = sheet.current.toPaper(aircraft.position);
      const onPaperDeg = screenDirectionDeg(from, { x: hand.x - box.left, y: hand.y - box.top });
      const upDeg = sheet.current.trueNorthAngle(aircraft.position);
      const heading = magneticFromTrue(trueDeg(onPaperDeg - upDeg), situation.variationDeg);
      bench.act({ kind: "set-heading", heading }, gesture);
    });
  };
  return (
    <>
      <button
        type="button"
        class="hand hand-aircraft"
        style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
        aria-label={`Aircraft, ${placeWords(situation)}. Arrow keys move it half a mile, with Shift five miles`}
        onPointerDown={dragAircraft}
        onKeyDown={(event) => {
          const azimuth = ARROW_DIRECTIONS[event.key];
          if (azimuth === undefined || event.ctrlKey || event.metaKey) return;
          event.preventDefault();
          event.stopPropagation();
          const to = direct(aircraft.position, azimuth, keyStepNm(event));
          bench.act({ kind: "move-aircraft", to }, stepGesture("aircraft"));
          onMoved();
        }}
      />
      {situation.scene.covers.includes("heading") ? null : (
        <div
          class="hand hand-nose"
          role="slider"
          tabIndex={0}
          style={{ transform: `translate(${noseAt.x}px, ${noseAt.y}px)` }}
          aria-label="Heading, by the nose"
          aria-valuemin={1}
          aria-valuemax={360}
          aria-valuenow={Number(threeDigits(aircraft.heading))}
          aria-valuetext={`heading ${threeDigits(aircraft.heading)}`}
          onPointerDown={dragNose}
          onKeyDown={(event) => {
            const byDeg = arrowStep(event, 1, 10);
            if (byDeg === null) return;
            event.preventDefault();
            event.stopPropagation();
            bench.act({ kind: "turn-heading", byDeg }, stepGesture("nose"));
          }}
        />
      )}
    </>
  );
}

/** Where the aircraft is, from the stations it is tuned to: "radial 246 of TXJ, 18.0 miles". */
function placeWords({ receivers, scene }: Situation): string {
  // With anything covered, the words must not do what the picture does not.
  if (scene.covers.length > 0) return "where the chart shows it";
  const places = receivers.flatMap(({ station, geometry }) =>
    station === null || geometry === null
      ? []
      : [
          `radial ${threeDigits(geometry.trueRadial)} of ${station.ident}, ${geometry.distanceNm.toFixed(1)} miles`,
        ],
  );
  return [...new Set(places)].slice(0, 2).join(", ") || "no station tuned";
}
