/**
 * The needle field as a layer of the chart, between its ground and its lines: a canvas that is laid over the ground as ink over
 * ink. The plate comes from the worker; turning the course only prints it anew, and moving the aircraft does not touch it.
 */

import type { JSX } from "preact";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import {
  type ChartView,
  COARSE_FACTOR,
  type FieldLook,
  type FieldShown,
  inksFor,
  type Plate,
  type PlatePaper,
  type PlateSubject,
  receiversOf,
  sameSubject,
  subjectOf,
  type Theme,
} from "../../draw/index.ts";
import type { FieldReception } from "../../panel/index.ts";
import type { Scene } from "../../scene/index.ts";
import { paintByHand } from "./paint-by-hand.ts";
import { type Painter, painterFor } from "./painter.ts";
import { type PlateMaker, plateMaker } from "./plate-maker.ts";
import { coveredPart, paperShift, shiftStyle } from "./plate-place.ts";

export interface NeedleFieldProps {
  readonly scene: Scene;
  /** As `choiceFor` gives it, and under no cover (`coverOver`). */
  readonly choice: FieldShown;
  readonly view: ChartView;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
  /** Told of every full plate: which receptions occur on it, for the legend. */
  readonly onPlate: (receptions: readonly FieldReception[]) => void;
}

/** On a fine screen cells are as fine as the screen up to so many; more take the worker longer than a hand wants to wait. */
const MOST_CELLS = 1_500_000;
/** With less of the chart covered, a coarse plate of all of it is better than what there is. */
const ENOUGH_COVERED = 0.6;

export function NeedleField(props: NeedleFieldProps): JSX.Element | null {
  const { scene, choice, view, widthPx, heightPx, theme, onPlate } = props;
  const subject = useSubject(scene, choice);
  const paper = useMemo(() => ({ view, widthPx, heightPx }), [view, widthPx, heightPx]);
  const receivers = receiversOf(scene, choice);
  const course = receivers?.first.course;
  const bearingErrorDeg = receivers?.first.bearingErrorDeg;
  const look = useMemo(
    () =>
      course === undefined || bearingErrorDeg === undefined
        ? null
        : { kind: choice.kind, course, bearingErrorDeg },
    [choice.kind, course, bearingErrorDeg],
  );
  if (subject === null || look === null) return null;
  return <Printed subject={subject} paper={paper} look={look} theme={theme} onPlate={onPlate} />;
}

/** The very same object as long as nothing of it changes. */
function useSubject(scene: Scene, choice: FieldShown): PlateSubject | null {
  const held = useRef<PlateSubject | null>(null);
  const subject = subjectOf(scene, choice);
  if (!sameSubject(held.current, subject)) held.current = subject;
  return held.current;
}

interface PrintedProps {
  readonly subject: PlateSubject;
  readonly paper: PlatePaper;
  readonly look: FieldLook;
  readonly theme: Theme;
  readonly onPlate: (receptions: readonly FieldReception[]) => void;
}

/** The plate that is on the canvas. */
interface Shown {
  readonly plate: Plate;
  readonly isFull: boolean;
}

function Printed({ subject, paper, look, theme, onPlate }: PrintedProps): JSX.Element {
  const canvas = useRef<HTMLCanvasElement>(null);
  const maker = useRef<PlateMaker | null>(null);
  const painter = useRef<Painter | null>(null);
  const newest = useRef({ subject, paper, look });
  newest.current = { subject, paper, look };
  const [shown, setShown] = useState<Shown | null>(null);
  const shownNow = useRef<Shown | null>(null);
  const frame = useRef(0);
  // A graphics card may be taken away; then another canvas takes over, painted by hand.
  const [isCardGone, setCardGone] = useState(false);

  const paintSoon = () => {
    // At most once a picture, with what stands then.
    if (frame.current !== 0) return;
    frame.current = requestAnimationFrame(() => {
      frame.current = 0;
      painter.current?.paint(newest.current.look);
    });
  };
  const show = ({ plate, isFull }: Shown) => {
    painter.current?.setPlate(plate, isFull ? 1 : COARSE_FACTOR);
    painter.current?.paint(newest.current.look);
  };
  const deliver = (plate: Plate, isFull: boolean) => {
    if (!isFull && isStillGood(shownNow.current, newest.current)) return;
    shownNow.current = { plate, isFull };
    show(shownNow.current);
    setShown(shownNow.current);
    if (isFull) onPlate(plate.receptions);
  };
  useLayoutEffect(() => {
    maker.current = plateMaker(deliver);
    return () => maker.current?.close();
  }, []);
  useLayoutEffect(() => {
    const on = canvas.current;
    if (on === null) return;
    painter.current = isCardGone ? paintByHand(on) : painterFor(on);
    const lose = () => setCardGone(true);
    on.addEventListener("webglcontextlost", lose);
    return () => {
      on.removeEventListener("webglcontextlost", lose);
      cancelAnimationFrame(frame.current);
      frame.current = 0;
    };
  }, [isCardGone]);
  useLayoutEffect(() => {
    painter.current?.setInks(inksFor(look.kind, theme));
    if (shownNow.current !== null) show(shownNow.current);
  }, [look.kind, theme, isCardGone]);
  useLayoutEffect(paintSoon, [look]);
  useEffect(() => {
    maker.current?.ask({ subject, paper, cellPx: cellPx(paper) });
  }, [subject, paper]);

  const isReady = shown?.isFull && shown.plate.subject === subject && shown.plate.paper === paper;
  return (
    <div class="needle-field" data-field={look.kind} data-ready={String(isReady === true)} aria-hidden="true">
      <canvas
        key={isCardGone ? "by hand" : "any"}
        ref={canvas}
        style={
          shown === null
            ? { visibility: "hidden" }
            : {
                width: `${shown.plate.paper.widthPx}px`,
                height: `${shown.plate.paper.heightPx}px`,
                transform:
                  shown.plate.paper === paper ? "none" : shiftStyle(paperShift(shown.plate.paper, paper)),
              }
        }
      />
    </div>
  );
}

/** Whether what is on the canvas says more of the chart as it is now than a coarse plate would. */
function isStillGood(shown: Shown | null, wanted: { subject: PlateSubject; paper: PlatePaper }): boolean {
  if (shown === null || !shown.isFull || shown.plate.subject !== wanted.subject) return false;
  const made = shown.plate.paper;
  return coveredPart(made, wanted.paper, paperShift(made, wanted.paper)) > ENOUGH_COVERED;
}

/** A pixel of the page, or finer where the screen is. */
function cellPx({ widthPx, heightPx }: PlatePaper): number {
  const finest = Math.sqrt((widthPx * heightPx) / MOST_CELLS);
  return Math.min(1, Math.max(finest, 1 / globalThis.devicePixelRatio));
}
