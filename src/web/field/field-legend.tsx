/** The legend of the needle field: what its inks mean, and what is not shown and why. */

import type { ComponentChildren, JSX } from "preact";
import { useMemo } from "preact/hooks";
import {
  coverOver,
  FIX_INKS,
  FIX_WORDS,
  type FieldKind,
  type FieldShown,
  fieldTitle,
  inksFor,
  RECEPTION_INKS,
  RECEPTION_WORDS,
  still,
  type Theme,
} from "../../draw/index.ts";
import {
  type FieldReception,
  receptionCode,
  SHADE_OFF,
  STEPS_EACH_SIDE,
  shadeNumber,
} from "../../panel/index.ts";
import type { Scene } from "../../scene/index.ts";
import { InkSwatch } from "./ink-swatch.tsx";

export interface FieldLegendProps {
  readonly scene: Scene;
  readonly choice: FieldShown;
  /** What occurs on the chart as it is. */
  readonly receptions: readonly FieldReception[];
  readonly theme: Theme;
}

export function FieldLegend({ scene, choice, receptions, theme }: FieldLegendProps): JSX.Element {
  const inks = useMemo(() => inksFor(choice.kind, theme), [choice.kind, theme]);
  const covered = coverOver(scene, choice);
  return (
    <section class="field-legend" aria-label="Legend of the needle field">
      <h2>{fieldTitle(choice, scene.aircraft.altitudeFt)}</h2>
      {covered === null ? (
        <Entries kind={choice.kind} receptions={receptions} inks={inks} />
      ) : (
        <p class="note">Not shown: {covered} is covered.</p>
      )}
    </section>
  );
}

interface EntriesProps {
  readonly kind: FieldKind;
  readonly receptions: readonly FieldReception[];
  readonly inks: Uint8Array;
}

const STEPS = Array.from({ length: 2 * STEPS_EACH_SIDE + 1 }, (_, index) => index - STEPS_EACH_SIDE);

const Entries = still(function Entries({ kind, receptions, inks }: EntriesProps): JSX.Element {
  const noBearing = receptions.every((reception) => !/^(good|weak)/.test(reception));
  if (receptions.length > 0 && noBearing && kind !== "reception")
    return <p class="note">No bearing here: {receptions.map((each) => RECEPTION_WORDS[each]).join(", ")}.</p>;
  switch (kind) {
    case "needle":
      return (
        <div class="needle-ramp">
          <InkSwatch
            inks={inks}
            rows={[
              STEPS.map((step) => shadeNumber({ flag: "TO", step })),
              STEPS.map((step) => shadeNumber({ flag: "FROM", step })),
            ]}
            widthPx={5}
            heightPx={14}
          />
          <span class="ramp-rows">
            <span>TO, hatched</span>
            <span>FROM</span>
          </span>
          <span class="ramp-ends">
            <span>full left</span>
            <span>centred</span>
            <span>full right</span>
          </span>
          <span>blank: OFF</span>
        </div>
      );
    case "to-from":
      return (
        <ul>
          <Entry inks={inks} ink={shadeNumber({ flag: "TO", step: 0 })}>
            TO, hatched
          </Entry>
          <Entry inks={inks} ink={shadeNumber({ flag: "FROM", step: 0 })}>
            FROM
          </Entry>
          <Entry inks={inks} ink={SHADE_OFF}>
            OFF
          </Entry>
        </ul>
      );
    case "reception":
      return (
        <ul>
          {withoutRepeats(receptions).map((reception) => (
            <Entry key={reception} inks={inks} ink={RECEPTION_INKS + receptionCode(reception)}>
              {RECEPTION_WORDS[reception]}
            </Entry>
          ))}
        </ul>
      );
    case "fix":
      return (
        <ul>
          {FIX_WORDS.map((words, band) => (
            <Entry key={words} inks={inks} ink={FIX_INKS + band}>
              {words}
            </Entry>
          ))}
        </ul>
      );
  }
});

/** Weak is weak, inside the volume or not: one entry for all that is called the same. */
const withoutRepeats = (receptions: readonly FieldReception[]): FieldReception[] =>
  receptions.filter(
    (reception, index) =>
      receptions.findIndex((other) => RECEPTION_WORDS[other] === RECEPTION_WORDS[reception]) === index,
  );

interface EntryProps {
  readonly inks: Uint8Array;
  readonly ink: number;
  readonly children: ComponentChildren;
}

function Entry({ inks, ink, children }: EntryProps): JSX.Element {
  return (
    <li>
      <InkSwatch inks={inks} rows={[[ink]]} widthPx={24} heightPx={16} />
      {children}
    </li>
  );
}
