/**
 * Why: what the attended receiver hears and compares, with its selected course, in step with chart and panel. Where there is room all
 * pictures stand together, else the chosen one.
 */

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useLayoutEffect, useRef } from "preact/hooks";
import { type Theme, TwoWaves } from "../../draw/index.ts";
import { isCovered, isReceiverCovered } from "../../scene/index.ts";
import { type ElementSize, useElementSize } from "../frame/element-size.ts";
import { later } from "../frame/later.tsx";
import { CoveredNote } from "../panel/covered-note.tsx";
import type { Bench } from "../state/bench.ts";
import { hasRoomForAll, pictureChoice } from "./picture-choice.ts";
import { PictureTabs } from "./picture-tabs.tsx";
import type { SignalPicturesProps } from "./signal-pictures.tsx";

/** All but the two waves come when they are first looked at. */
const pictures = later<SignalPicturesProps>(
  async () => (await import("./signal-pictures.tsx")).SignalPictures,
);

export interface SignalViewProps {
  readonly bench: Bench;
  readonly theme: Theme;
  /** 1 on a screen, up to 2 when projecting. */
  readonly typeScale: number;
  /** Whether the tabs stand on the sheet; else above it. */
  readonly headed: boolean;
  /** Beside the tabs on the sheet. */
  readonly children: ComponentChildren;
}

export function SignalView(props: SignalViewProps): JSX.Element {
  const { bench, theme, typeScale } = props;
  const holder = useRef<HTMLDivElement>(null);
  const size = useElementSize(holder);
  const { several } = pictureChoice();
  const all = size !== null && hasRoomForAll(size);
  const section = useRef<HTMLElement>(null);
  // The tie comes once the page stands; it is nothing to wait for.
  useEffect(() => {
    let end: (() => void) | null = null;
    let over = false;
    void import("./tie-line.ts").then(({ tieLine }) => {
      if (!over && section.current !== null) end = tieLine(section.current, bench);
    });
    return () => {
      over = true;
      end?.();
    };
  }, [bench]);
  useLayoutEffect(() => {
    several.value = all;
  }, [several, all]);
  return (
    <section ref={section} class="sheet signal" aria-label="Signal" tabIndex={-1}>
      {props.headed ? <PictureTabs /> : null}
      {props.children}
      <div class="signal-plot" ref={holder}>
        {size === null ? null : <Compared {...{ bench, theme, typeScale, size, all }} />}
      </div>
    </section>
  );
}

interface ComparedProps extends Omit<SignalViewProps, "children" | "headed"> {
  readonly size: ElementSize;
  readonly all: boolean;
}

/** What the receiver compares, or why there is nothing to compare. */
function Compared({ bench, theme, typeScale, size, all }: ComparedProps): JSX.Element {
  const { scene, receivers } = bench.situation.value;
  const { covers } = scene;
  const name = bench.attended.value;
  const picture = all ? "all" : pictureChoice().picture.value;
  const reading = receivers.find(({ settings }) => settings.name === name);
  if (isCovered(covers, null, "signal")) return <CoveredNote what="signal" />;
  if (isReceiverCovered(covers, name)) return <CoveredNote what={name} />;
  if (reading === undefined) return <p class="signal-none">{name} is not in this scene.</p>;
  const common = { reading, ...size, theme, typeScale, covers, lit: bench.lit.value ?? undefined };
  return picture === "waves" && reading.radial !== null ? (
    <TwoWaves {...common} idPrefix="signal" />
  ) : (
    <pictures.Part {...common} idPrefix="signal" picture={picture} />
  );
}
