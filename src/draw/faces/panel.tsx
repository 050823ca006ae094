/** The whole panel as one picture: each receiver's dial with its readouts, the heading, the altitude. */

import type { ReceiverReading } from "../../panel/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { Lit } from "../lit.ts";
import { PaperStrip } from "../plain/paper-strip.tsx";
import { px } from "../plain/px.ts";
import { TitledPicture } from "../plain/titled-picture.tsx";
import type { Theme } from "../theme.ts";
import { CourseReadout, courseReadoutPx } from "./course-readout.tsx";
import { receiverCovered } from "./covers.ts";
import { DistanceReadout, distanceReadoutPx } from "./distance-readout.tsx";
import { FrequencyReadout, frequencyReadoutPx } from "./frequency-readout.tsx";
import { HeadingIndicator } from "./heading-indicator.tsx";
import { PanelFoot } from "./panel-foot.tsx";
import { DIAL_GAP_PX, layoutPanel, type PanelLayout } from "./panel-layout.ts";
import { panelSentence } from "./panel-sentence.ts";
import { Dial } from "./receiver-face.tsx";

export interface PanelProps {
  readonly situation: Situation;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
  /** Begins every id in the picture. */
  readonly idPrefix: string;
  readonly lit?: Lit | undefined;
  /** The scene's own when not given. */
  readonly covers?: readonly string[] | undefined;
  /** 1 for 14 px text, 2 for a projector. */
  readonly typeScale?: number | undefined;
  /** Where damped needles have got to, dots, right positive, by receiver name. */
  readonly shownDots?: Readonly<Record<string, number>> | undefined;
}

/** One dial: a receiver's, two receivers' on one magnetic indicator, or the heading's. */
type Slot = readonly ReceiverReading[];

/** The heading dial joins where it costs the others little, and they stay this large at scale 1. */
const LEAST_WITH_HEADING = 0.75;
const LEAST_DIAL_WITH_HEADING_PX = 160;

export function Panel(props: PanelProps) {
  const { situation, widthPx, heightPx, theme, idPrefix, typeScale = 1 } = props;
  const covers = props.covers ?? situation.scene.covers;
  return (
    <TitledPicture
      widthPx={widthPx}
      heightPx={heightPx}
      idPrefix={idPrefix}
      title="Panel"
      words={panelSentence(situation, covers)}
    >
      {covers.includes("panel") ? (
        <PaperStrip
          middleX={widthPx / 2}
          middleY={heightPx / 2}
          widthPx={Math.min(widthPx * 0.8, 420 * typeScale)}
          heightPx={Math.min(heightPx * 0.6, 120 * typeScale)}
          covered="panel"
          theme={theme}
        />
      ) : (
        <OpenPanel {...props} covers={covers} />
      )}
    </TitledPicture>
  );
}

function OpenPanel(props: PanelProps & { readonly covers: readonly string[] }) {
  const { situation, widthPx, heightPx, theme, idPrefix, covers, lit, typeScale = 1, shownDots = {} } = props;
  const { slots, layout } = arrange(situation, { widthPx, heightPx, scale: typeScale });
  return (
    <>
      {slots.map((slot, index) => {
        const at = layout.slots[index];
        if (at === undefined) return null;
        const [reading, second] = slot;
        return (
          <g key={reading?.settings.name ?? "heading"} transform={`translate(${px(at.x)} ${px(at.y)})`}>
            {reading === undefined ? (
              <g transform={dialPlace(layout, 1)}>
                <HeadingIndicator
                  heading={situation.scene.aircraft.heading}
                  sizePx={layout.dialPx}
                  theme={theme}
                  covers={covers}
                  lit={lit}
                />
              </g>
            ) : (
              <>
                <g transform={dialPlace(layout, slot.length)}>
                  <Dial
                    reading={reading}
                    second={second}
                    sizePx={layout.dialPx}
                    theme={theme}
                    idPrefix={`${idPrefix}-${reading.settings.name}`}
                    covers={covers}
                    lit={lit}
                    shownDots={shownDots[reading.settings.name]}
                  />
                </g>
                <SlotReadouts slot={slot} layout={layout} theme={theme} covers={covers} lit={lit} />
              </>
            )}
          </g>
        );
      })}
      <PanelFoot
        situation={situation}
        layout={layout}
        widthPx={widthPx}
        theme={theme}
        covers={covers}
        lit={lit}
      />
    </>
  );
}

interface SlotReadoutsProps {
  readonly slot: Slot;
  readonly layout: PanelLayout;
  readonly theme: Theme;
  readonly covers: readonly string[];
  readonly lit: Lit | undefined;
}

function SlotReadouts({ slot, layout, theme, covers, lit }: SlotReadoutsProps) {
  const { scale, readoutPx, beside, dialPx, slotHeightPx } = layout;
  const common = { x: beside ? slotRight(layout) : 0, widthPx: readoutPx, scale, theme, covers, lit };
  const headPx = frequencyReadoutPx(scale);
  const dmePx = distanceReadoutPx(readoutPx, scale);
  const afterHeads = beside
    ? Math.max(0, (slotHeightPx - slot.length * (headPx + dmePx) - courseReadoutPx(scale)) / 2) +
      slot.length * headPx
    : slot.length * headPx + dialPx + 2 * DIAL_GAP_PX * scale;
  const headsTop = beside ? afterHeads - slot.length * headPx : 0;
  const [reading] = slot;
  const open = slot.filter((each) => !receiverCovered(each.settings.name, covers));
  return (
    <>
      {open.map((each, index) => (
        <FrequencyReadout key={each.settings.name} reading={each} y={headsTop + index * headPx} {...common} />
      ))}
      {reading !== undefined && open.length > 0 && (
        <CourseReadout reading={reading} y={afterHeads} {...common} />
      )}
      {open.map((each, index) => (
        <DistanceReadout
          key={each.settings.name}
          reading={each}
          y={afterHeads + courseReadoutPx(scale) + index * dmePx}
          {...common}
        />
      ))}
    </>
  );
}

const slotRight = (layout: PanelLayout): number => layout.dialPx + layout.gapPx / 2;

/** Puts a dial's middle where the slot wants it. */
function dialPlace(layout: PanelLayout, receivers: number): string {
  const { dialPx, beside, scale, readoutPx, slotHeightPx } = layout;
  const x = beside ? dialPx / 2 : readoutPx / 2;
  const y = beside
    ? slotHeightPx / 2
    : receivers * frequencyReadoutPx(scale) + DIAL_GAP_PX * scale + dialPx / 2;
  return `translate(${px(x)} ${px(y)})`;
}

/** One slot a receiver; two magnetic indicators share a dial; the heading dial where no other card shows the heading. */
function arrange(situation: Situation, box: { widthPx: number; heightPx: number; scale: number }) {
  const pointers = situation.receivers.filter((reading) => reading.settings.face === "rmi");
  const slots: Slot[] = [];
  for (const reading of situation.receivers)
    if (pointers.length !== 2 || !pointers.includes(reading)) slots.push([reading]);
    else if (reading === pointers[0]) slots.push(pointers);
  const layout = layoutPanel({ receiversOnDial: slots.map((slot) => slot.length), ...box });
  if (situation.receivers.some((reading) => reading.settings.face !== "cdi")) return { slots, layout };
  const wider = layoutPanel({ receiversOnDial: [...slots.map((slot) => slot.length), 0], ...box });
  const worthIt =
    wider.fits &&
    !wider.beside &&
    wider.dialPx >= LEAST_DIAL_WITH_HEADING_PX * wider.scale &&
    wider.scale >= layout.scale * LEAST_WITH_HEADING &&
    wider.dialPx >= layout.dialPx * LEAST_WITH_HEADING;
  return worthIt ? { slots: [...slots, []], layout: wider } : { slots, layout };
}
