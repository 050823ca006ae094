/**
 * The argument as a numbered chain. Pointing at a step, or reaching it by key, lights what it speaks of in chart and panel; pointing at a
 * part of chart or panel lights the steps that made it. A click or a tap keeps it lit, Escape lets go.
 */

import { useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { chainOf, spokenSteps } from "../../draw/index.ts";
import { cautionsUnderCovers, type Reason, withheldBy } from "../../reason/index.ts";
import { askingOf } from "../covers/asking.ts";
import { WithheldSteps } from "../covers/withheld-steps.tsx";
import { CoveredNote } from "../panel/covered-note.tsx";
import type { Bench } from "../state/bench.ts";
import { type Asked, askedNote, isSameAsked, isSameLit, litBy, stepsAsked } from "./asked.ts";
import { bringIntoView } from "./bring-into-view.ts";
import type { PointedPart } from "./part-at.ts";
import { listenToPointing } from "./pointing.ts";

export interface ReasonsViewProps {
  readonly bench: Bench;
  /** Whether the sheet carries its own name; else it stands above the sheet. */
  readonly headed: boolean;
  readonly onPointedAt: () => void;
}

export function ReasonsView({ bench, headed, onPointedAt }: ReasonsViewProps): JSX.Element {
  const all = bench.reasons.value;
  const { covers } = bench.scene.value;
  const links = useMemo(() => chainOf(all, covers, false), [all, covers]);
  const reasons = useMemo(() => spokenSteps(all, covers), [all, covers]);
  const revealed = withheldBy(all, askingOf(bench).revealed.value);
  const attended = bench.attended.value;
  const covered = covers.includes("reasons");
  const { asked, kept, point, keep, letGo } = useAsked(bench);
  const lit = useMemo(() => (covered ? null : litBy(asked, reasons)), [covered, asked, reasons]);
  useEffect(() => {
    // The same light again would have every view drawn twice.
    if (!isSameLit(bench.lit.peek(), lit)) bench.lit.value = lit;
  }, [bench, lit]);
  const steps = stepsAsked(asked, reasons);
  const chain = useRef<HTMLDivElement>(null);
  const first = asked?.kind === "part" ? steps[0]?.rule : undefined;
  const wanted = isSameAsked(asked, kept);
  useEffect(() => {
    const step = first === undefined ? null : chain.current?.querySelector(`[data-rule="${first}"]`);
    if (chain.current !== null && step instanceof HTMLElement) bringIntoView(step, chain.current, wanted);
  }, [first, asked, wanted]);
  const comeToLight = revealed[0]?.rule;
  useEffect(() => {
    const step =
      comeToLight === undefined ? null : chain.current?.querySelector(`[data-rule="${comeToLight}"]`);
    if (chain.current !== null && step instanceof HTMLElement) bringIntoView(step, chain.current, true);
  }, [comeToLight]);
  const pointAt = (reason: Reason) => {
    point({ kind: "step", rule: reason.rule });
    onPointedAt();
  };
  return (
    <section class="sheet reasons" aria-label="Why it reads so" tabIndex={-1}>
      {headed ? (
        <header class="reasons-head">
          <h2>Why it reads so</h2>
          <ReceiverTabs bench={bench} />
        </header>
      ) : null}
      {covered ? (
        <div class="covered-sheet">
          <CoveredNote what="reasons" />
        </div>
      ) : (
        <div class="argument" ref={chain}>
          <ol class="chain" aria-label={`Why ${attended} reads so`} onPointerLeave={() => point(null)}>
            {links.map((item, index) => {
              if (item.kind === "receiver") return null;
              if (item.kind === "withheld")
                return <WithheldSteps key={`withheld ${index}`} extent={item.extent} />;
              const { reason, shownNumber } = item;
              const isRevealed = revealed.includes(reason);
              return (
                <li
                  key={reason.rule}
                  data-rule={reason.rule}
                  data-lit={steps.includes(reason)}
                  data-revealed={isRevealed}
                >
                  <button
                    type="button"
                    class="link"
                    aria-pressed={kept?.kind === "step" && kept.rule === reason.rule}
                    onPointerEnter={(event) => {
                      if (event.pointerType === "mouse") pointAt(reason);
                    }}
                    onFocus={(event) => {
                      if (event.currentTarget.matches(":focus-visible")) pointAt(reason);
                    }}
                    onBlur={() => point(null)}
                    onClick={() => {
                      keep({ kind: "step", rule: reason.rule });
                      onPointedAt();
                    }}
                    onKeyDown={(event) => {
                      if (event.key !== "Escape" || asked === null) return;
                      event.preventDefault();
                      letGo();
                    }}
                  >
                    <span class="bead" aria-hidden="true">
                      {shownNumber}
                    </span>
                    <span class="link-words">
                      <strong>{reason.title}</strong>{" "}
                      {isRevealed ? <span class="was-covered">was covered</span> : null}{" "}
                      <span class="sentence">{reason.sentence}</span>
                    </span>
                  </button>
                </li>
              );
            })}
          </ol>
          <Cautions bench={bench} />
        </div>
      )}
      {covered ? null : (
        <p class="source" role="status">
          {askedNote(asked, reasons)}
        </p>
      )}
    </section>
  );
}

interface AskedState {
  /** Pointed at, or else kept. */
  readonly asked: Asked | null;
  readonly kept: Asked | null;
  readonly point: (at: Asked | null) => void;
  /** Keeps it lit; lets it go when it is kept already. */
  readonly keep: (what: Asked) => void;
  readonly letGo: () => void;
}

function useAsked(bench: Bench): AskedState {
  const [kept, setKept] = useState<Asked | null>(null);
  const [pointed, setPointed] = useState<Asked | null>(null);
  const point = (at: Asked | null) => setPointed((before) => (isSameAsked(before, at) ? before : at));
  const keep = (what: Asked) => setKept((before) => (isSameAsked(before, what) ? null : what));
  useEffect(() => {
    /** The receiver that the part belongs to is argued about from now on; a part of all belongs to the one argued about already. */
    const askedOf = (found: PointedPart | null): Asked | null => {
      if (found === null) return null;
      const attended = bench.attended.peek();
      const receiver = found.receivers.includes(attended) ? attended : (found.receivers[0] ?? attended);
      bench.attend(receiver);
      return { kind: "part", receiver, part: found.part };
    };
    return listenToPointing({
      // A step that is pointed at is let go by the chain itself.
      point: (found) => {
        const asked = askedOf(found);
        if (asked !== null) point(asked);
        else setPointed((before) => (before?.kind === "part" ? null : before));
      },
      keep: (found) => {
        const asked = askedOf(found);
        if (asked !== null) keep(asked);
        else setKept((before) => (before?.kind === "part" ? null : before));
      },
    });
  }, [bench]);
  return {
    asked: pointed ?? kept,
    kept,
    point,
    keep,
    letGo: () => {
      setKept(null);
      setPointed(null);
    },
  };
}

/** What a good-looking panel does not say. */
function Cautions({ bench }: { readonly bench: Bench }): JSX.Element | null {
  const { cautions: all, scene } = bench.situation.value;
  const cautions = cautionsUnderCovers(all, scene.covers);
  if (cautions.length === 0) return null;
  return (
    <ul class="cautions" aria-label="Cautions">
      {cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}

/** Whose argument is shown. Touching a receiver's controls chooses it too. */
export function ReceiverTabs({ bench }: { readonly bench: Bench }): JSX.Element | null {
  const receivers = useComputed(() => bench.scene.value.receivers).value;
  if (receivers.length < 2) return null;
  return (
    <fieldset class="tabs" aria-label="Receiver argued about">
      {receivers.map(({ name }) => (
        <button
          key={name}
          type="button"
          aria-pressed={name === bench.attended.value}
          onClick={() => bench.attend(name)}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}
