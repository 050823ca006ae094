/** One receiver on the panel: tuned to what, its face, its course, its distance. Touching any of it attends to this receiver. */

import type { JSX } from "preact";
import { useMemo, useRef } from "preact/hooks";
import { coveredParts, type Lit, needleWords, ReceiverFace, type Theme } from "../../draw/index.ts";
import { stationDeg, threeDigits } from "../../earth/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import type { Part } from "../../reason/index.ts";
import { useElementSize } from "../frame/element-size.ts";
import { readDirection, wholeDirection } from "../input/read-number.ts";
import { Stepper } from "../input/stepper.tsx";
import type { Identify } from "../sound/identify.ts";
import { IdentifyRow } from "../sound/identify-row.tsx";
import type { Bench } from "../state/bench.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";
import { CoveredNote } from "./covered-note.tsx";
import { DistanceRow } from "./distance-row.tsx";
import { useNeedle } from "./needle-motion.ts";
import { Tuner } from "./tuner.tsx";
import { TurningCard } from "./turning-card.tsx";

export interface ReceiverViewProps {
  readonly bench: Bench;
  readonly identify: Identify;
  readonly reading: ReceiverReading;
  readonly theme: Theme;
  /** Null when nothing is lit, or what is lit belongs to another receiver. */
  readonly lit: Lit | null;
  readonly onTurned: () => void;
}

/** Where the needle is told to go: dots, right positive; null without a signal. */
const needleTargetDots = ({ needleDots, needleSide }: ReceiverReading): number | null =>
  needleDots === null ? null : needleSide === "left" ? -needleDots : needleDots;

export function ReceiverView(props: ReceiverViewProps): JSX.Element {
  const { bench, identify, reading, theme, lit, onTurned } = props;
  const { name, course, face } = reading.settings;
  const { covers, stations } = bench.scene.value;
  const covered = coveredParts(name, covers);
  const setCourse = (deg: number, gesture: string) => {
    bench.act({ kind: "set-course", receiver: name, course: stationDeg(deg) }, gesture);
    onTurned();
  };
  const turnCourse = (byDeg: number, gesture = stepGesture(`${name} course`)) => {
    bench.act({ kind: "turn-course", receiver: name, byDeg }, gesture);
    onTurned();
  };
  const isLit = (part: Part) => lit?.parts.includes(part) === true;
  return (
    <article
      class="receiver"
      aria-label={`${name} receiver`}
      data-attended={bench.attended.value === name}
      onPointerDown={() => bench.attend(name)}
      onFocusIn={() => bench.attend(name)}
    >
      <Tuner
        reading={reading}
        stations={stations}
        covered={covered.has("frequency")}
        lit={isLit("frequency") || isLit("station")}
        onTune={(frequencyMhz, gesture) =>
          bench.act({ kind: "tune-receiver", receiver: name, frequencyMhz }, gesture)
        }
      />
      <Face reading={reading} theme={theme} lit={lit} covers={covers}>
        {face === "rmi" || covered.has("course") ? null : (
          <TurningCard
            name={`${name} course, by the card`}
            valueDeg={course}
            valueText={`course ${threeDigits(course)}`}
            follows={face === "cdi" ? "card" : "pointer"}
            onSet={setCourse}
            onTurn={turnCourse}
          />
        )}
      </Face>
      <div class="rows">
        {face === "rmi" ? null : covered.has("course") ? (
          <CoveredNote what="course" />
        ) : (
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
            read={(text) => readDirection("course", text)}
            whole={wholeDirection}
            onSet={(deg) => setCourse(deg, newGesture())}
            onStep={(byDeg) => turnCourse(byDeg)}
          />
        )}
        {face === "rmi" || covered.has("needle") ? null : (
          <p class="row">
            <span class="caption">needle</span>
            <span>{needleWords(reading)}</span>
          </p>
        )}
        {covered.has("dme") ? (
          <CoveredNote what="DME" />
        ) : (
          <DistanceRow reading={reading} lit={isLit("dme")} />
        )}
        <IdentifyRow bench={bench} identify={identify} reading={reading} theme={theme} lit={isLit("ident")} />
      </div>
    </article>
  );
}

interface FaceProps {
  readonly reading: ReceiverReading;
  readonly theme: Theme;
  readonly lit: Lit | null;
  readonly covers: readonly string[];
  readonly children: JSX.Element | null;
}

/** The face's picture, as large as the panel has room for, under the hand that turns its card. */
function Face({ reading, theme, lit, covers, children }: FaceProps): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  const sizePx = useElementSize(holder)?.widthPx ?? 0;
  const shownDots = useNeedle(needleTargetDots(reading));
  const picture = useMemo(
    () =>
      sizePx === 0 ? null : (
        <ReceiverFace
          reading={reading}
          sizePx={sizePx}
          theme={theme}
          idPrefix={`face-${reading.settings.name}`}
          covers={covers}
          lit={lit ?? undefined}
          shownDots={shownDots ?? undefined}
        />
      ),
    [reading, theme, lit, shownDots, sizePx, covers],
  );
  return (
    <div class="face" ref={holder}>
      {picture}
      {children}
    </div>
  );
}
