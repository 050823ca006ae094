/** One receiver on the panel: tuned to what, its face, its course, its distance. Touching any of it attends to this receiver. */

import { useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useMemo, useRef } from "preact/hooks";
import { coveredParts, type Lit, ReceiverFace, type Theme } from "../../draw/index.ts";
import { stationDeg, threeDigits } from "../../earth/index.ts";
import type { Face as FaceKind, ReceiverReading } from "../../panel/index.ts";
import type { Part } from "../../reason/index.ts";
import { GuessOnFace } from "../covers/guess-on-face.tsx";
import { useElementSize } from "../frame/element-size.ts";
import { readDirection, wholeDirection } from "../input/read-number.ts";
import { Stepper } from "../input/stepper.tsx";
import type { Identify } from "../sound/identify.ts";
import { IdentifyRow } from "../sound/identify-row.tsx";
import type { Bench } from "../state/bench.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";
import { CoveredNote } from "./covered-note.tsx";
import { DistanceRow } from "./distance-row.tsx";
import { FacePick } from "./face-pick.tsx";
import { useNeedle } from "./needle-motion.ts";
import { NeedleRow } from "./needle-row.tsx";
import { ReceiverMore } from "./receiver-more.tsx";
import { Tuner } from "./tuner.tsx";
import { TurningCard } from "./turning-card.tsx";

export interface ReceiverViewProps {
  readonly bench: Bench;
  readonly identify: Identify;
  readonly reading: ReceiverReading;
  /** Whose double pointer its magnetic indicator bears too. */
  readonly second: ReceiverReading | null;
  /** The receiver whose magnetic indicator bears this one's pointer; then it needs no face of its own. */
  readonly shownOn: string | null;
  readonly theme: Theme;
  readonly lit: Lit | null;
  readonly onTurned: () => void;
}

/** Where the needle is told to go: dots, right positive; null without a signal. */
const needleTargetDots = ({ needleDots, needleSide }: ReceiverReading): number | null =>
  needleDots === null ? null : needleSide === "left" ? -needleDots : needleDots;

export function ReceiverView(props: ReceiverViewProps): JSX.Element {
  const { bench, identify, reading, second, shownOn, theme, lit, onTurned } = props;
  const { name, course, face } = reading.settings;
  // Not the whole scene: a receiver that nothing has been done to is not shown anew.
  const covers = useComputed(() => bench.scene.value.covers).value;
  const stations = useComputed(() => bench.scene.value.stations).value;
  const isAttended = useComputed(() => bench.attended.value === name).value;
  const covered = coveredParts(name, covers);
  const hands = useMemo(() => handsOn(bench, name, onTurned), [bench, name, onTurned]);
  if (covers.includes(name))
    return (
      <article class="receiver" aria-label={`${name} receiver`}>
        <div class="receiver-body" data-receiver={name}>
          <p class="receiver-name">{name}</p>
          {shownOn === null ? (
            <Face bench={bench} reading={reading} second={second} theme={theme} lit={null} covers={covers}>
              {null}
            </Face>
          ) : (
            <CoveredNote what={name} />
          )}
        </div>
      </article>
    );
  const isLit = (part: Part) => lit?.receiver === name && lit.parts.includes(part);
  return (
    <article
      class="receiver"
      aria-label={`${name} receiver`}
      data-attended={isAttended}
      onPointerDown={hands.attend}
      onFocusIn={hands.attend}
    >
      <div class="receiver-body" data-receiver={name}>
        <Tuner
          name={name}
          frequencyMhz={reading.settings.frequencyMhz}
          stations={stations}
          covered={covered.has("frequency")}
          identCovered={covered.has("ident")}
          lit={isLit("frequency") || isLit("station")}
          onTune={hands.tune}
        />
        {shownOn === null ? (
          <Face
            bench={bench}
            reading={reading}
            second={second}
            theme={theme}
            lit={lit?.receiver === name || lit?.receiver === second?.settings.name ? lit : null}
            covers={covers}
          >
            {face === "rmi" || covered.has("course") ? null : (
              <TurningCard
                name={`${name} course, by the card`}
                what="course"
                valueDeg={course}
                valueText={`course ${threeDigits(course)}`}
                follows={face === "cdi" ? "card" : "pointer"}
                part="course-card"
                onSet={hands.setCourse}
                onTurn={hands.turnCourse}
              />
            )}
          </Face>
        ) : (
          <p class="shown-on note">The double pointer of {shownOn}’s dial</p>
        )}
        <div class="picks">
          <FacePick receiver={name} face={face} onPick={hands.pickFace} />
          <ReceiverMore bench={bench} settings={reading.settings} errorCovered={covered.has("needle")} />
        </div>
        <div class="rows">
          {face === "rmi" ? null : covered.has("course") ? (
            <div class="course-row">
              <CoveredNote what="course" />
            </div>
          ) : (
            <div class="course-row" data-part="course-card">
              <Stepper
                id={`${name}-course`}
                name={`${name} course`}
                caption="course"
                tone="course"
                lit={isLit("course-card") || isLit("course")}
                shown={threeDigits(course)}
                widthCh={3}
                now={Number(threeDigits(course))}
                lowest={1}
                highest={360}
                stepBy={1}
                bigStepBy={10}
                stepWords="1 degree"
                read={readCourse}
                whole={wholeDirection}
                onSet={hands.typeCourse}
                onStep={hands.stepCourse}
              />
            </div>
          )}
          <NeedleRow reading={reading} covers={covers} covered={covered} isLit={isLit} />
          {covered.has("dme") ? (
            <div class="dme-row">
              <CoveredNote what="DME" />
            </div>
          ) : (
            <DistanceRow
              reading={reading}
              named={!(covered.has("frequency") || covered.has("ident"))}
              lit={isLit("dme")}
            />
          )}
          <div class="ident-row" data-part="ident">
            <IdentifyRow
              bench={bench}
              identify={identify}
              reading={reading}
              theme={theme}
              lit={isLit("ident")}
            />
          </div>
        </div>
      </div>
    </article>
  );
}

const readCourse = (text: string) => readDirection("course", text);

/** What hands do to one receiver: the very same functions as long as the receiver is there. */
function handsOn(bench: Bench, receiver: string, onTurned: () => void) {
  const setCourse = (deg: number, gesture: string) => {
    bench.act({ kind: "set-course", receiver, course: stationDeg(deg) }, gesture);
    onTurned();
  };
  const turnCourse = (byDeg: number, gesture: string) => {
    bench.act({ kind: "turn-course", receiver, byDeg }, gesture);
    onTurned();
  };
  return {
    setCourse,
    turnCourse,
    typeCourse: (deg: number) => setCourse(deg, newGesture()),
    stepCourse: (byDeg: number) => turnCourse(byDeg, stepGesture(`${receiver} course`)),
    tune: (frequencyMhz: number, gesture: string) =>
      bench.act({ kind: "tune-receiver", receiver, frequencyMhz }, gesture),
    pickFace: (face: FaceKind) => bench.act({ kind: "set-face", receiver, face }),
    attend: () => bench.attend(receiver),
  };
}

interface FaceProps {
  readonly bench: Bench;
  readonly reading: ReceiverReading;
  readonly second: ReceiverReading | null;
  readonly theme: Theme;
  readonly lit: Lit | null;
  readonly covers: readonly string[];
  readonly children: JSX.Element | null;
}

/** The face's picture, as large as the panel has room for, under the hand that turns its card. */
function Face({ bench, reading, second, theme, lit, covers, children }: FaceProps): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  const sizePx = useElementSize(holder)?.widthPx ?? 0;
  const shownDots = useNeedle(needleTargetDots(reading));
  const picture = useMemo(
    () =>
      sizePx === 0 ? null : (
        <ReceiverFace
          reading={reading}
          second={second ?? undefined}
          sizePx={sizePx}
          theme={theme}
          idPrefix={`face-${reading.settings.name}`}
          covers={covers}
          lit={lit ?? undefined}
          shownDots={shownDots ?? undefined}
        />
      ),
    [reading, second, theme, lit, shownDots, sizePx, covers],
  );
  return (
    <div class="face" ref={holder}>
      {picture}
      {sizePx === 0 ? null : <GuessOnFace bench={bench} reading={reading} sizePx={sizePx} theme={theme} />}
      {children}
    </div>
  );
}
