/** The stations: rose, symbol, and what is written about each. */

import type { VNode } from "preact";
import type { Part } from "../../reason/index.ts";
import { distancePx, type PaperPoint } from "../plain/paper.ts";
import { px } from "../plain/px.ts";
import type { ChartFrame } from "./frame.ts";
import type { GroundLayout } from "./ground-layout.ts";
import { InfoBox } from "./info-box.tsx";
import { ReceiverTag } from "./line-words.tsx";
import { clipSegment, type LabelBox } from "./placement.ts";
import { Rose } from "./rose.tsx";
import { lineStyle, TAG_STEP_PX } from "./station-labels.ts";
import { roseFiguresPx, stationReachPx } from "./station-plan.ts";
import { StationSymbol } from "./station-symbol.tsx";
import { Words } from "./words.tsx";

type StationDrawn = GroundLayout["stations"][number];

export interface StationPartsProps {
  readonly frame: ChartFrame;
  readonly ground: GroundLayout;
  /** Whether a part of that receiver is lit. */
  readonly lit: (receiver: string, part: Part) => boolean;
}

export function StationParts({ frame, ground, lit }: StationPartsProps): VNode {
  // Those nobody has tuned first, so that the tuned lie on top.
  const stations = [...ground.stations].reverse();
  const litFor = (drawn: StationDrawn) => (part: Part) => drawn.tunedBy.some(({ name }) => lit(name, part));
  return (
    <g>
      {stations.map((drawn) => (
        <StationSign frame={frame} drawn={drawn} lit={litFor(drawn)} />
      ))}
      {stations.map((drawn) => (
        <StationWords frame={frame} drawn={drawn} lit={litFor(drawn)} tagged={ground.receivers > 1} />
      ))}
    </g>
  );
}

interface SignProps {
  readonly frame: ChartFrame;
  readonly drawn: StationDrawn;
  readonly lit: (part: Part) => boolean;
}

const namesOf = ({ tunedBy }: StationDrawn): string | undefined =>
  tunedBy.length === 0 ? undefined : tunedBy.map(({ name }) => name).join(" ");

function StationSign({ frame, drawn, lit }: SignProps): VNode {
  const { station, at, roseRadiusPx, northDeg, symbolScale, tunedBy } = drawn;
  const { theme, typeScale } = frame;
  const tuned = tunedBy.length > 0;
  const receiver = namesOf(drawn);
  return (
    <g data-station={station.ident}>
      {roseRadiusPx !== null && (
        <g data-part="rose" data-receiver={receiver} data-station={station.ident}>
          {lit("rose") && (
            <circle
              cx={px(at.x)}
              cy={px(at.y)}
              r={px(roseRadiusPx)}
              fill="none"
              stroke={theme.radial}
              stroke-opacity={0.22}
              stroke-width={12}
            />
          )}
          <Rose
            at={at}
            radiusPx={roseRadiusPx}
            northDeg={northDeg}
            theme={theme}
            figuresPx={roseFiguresPx(frame)}
            strokePx={(tuned ? 1.3 : 0.9) * Math.sqrt(typeScale)}
            quiet={!tuned}
          />
        </g>
      )}
      <g data-part="station" data-receiver={receiver} data-station={station.ident}>
        {lit("station") && (
          <circle
            cx={px(at.x)}
            cy={px(at.y)}
            r={px(19 * typeScale)}
            fill={theme.radial}
            fill-opacity={0.22}
          />
        )}
        <StationSymbol
          kind={station.kind}
          at={at}
          theme={theme}
          scale={symbolScale}
          strokePx={(tuned ? 1.9 : 1.5) * Math.sqrt(typeScale)}
        />
      </g>
    </g>
  );
}

function StationWords({ frame, drawn, lit, tagged }: SignProps & { readonly tagged: boolean }): VNode | null {
  const { station, at, label, tunedBy } = drawn;
  const { theme, typeScale } = frame;
  if (!label) return null;
  const { box } = label;
  const tags = (tagged ? tunedBy : []).map(({ number }, index) => (
    <ReceiverTag
      number={number}
      x={box.x - box.widthPx / 2 - (4 + (tunedBy.length - 1 - index) * TAG_STEP_PX) * typeScale}
      y={box.y}
      ink={theme.radial}
      theme={theme}
      typeScale={typeScale}
    />
  ));
  if (label.kind === "line") {
    const style = { ...lineStyle(typeScale), fill: theme.radial, halo: theme.sea };
    return (
      <g data-label={station.ident} data-receiver={namesOf(drawn)}>
        <Words text={label.text} x={box.x + (tags.length > 0 ? 4 : 0)} y={box.y} style={style} />
        {tags}
      </g>
    );
  }
  const leader = leaderOf(at, stationReachPx(drawn), box);
  return (
    <g data-info-box={station.ident} data-receiver={namesOf(drawn)}>
      {leader && (
        <path
          d={`M${px(leader[0].x)} ${px(leader[0].y)}L${px(leader[1].x)} ${px(leader[1].y)}`}
          stroke={theme.radial}
          stroke-width={tunedBy.length > 0 ? 1.2 : 0.8}
        />
      )}
      <InfoBox
        station={station}
        box={box}
        form={label.form}
        theme={theme}
        scale={typeScale}
        tuned={tunedBy.length > 0}
        lit={{ frequency: lit("frequency"), ident: lit("ident") }}
      />
      {tags}
    </g>
  );
}

/** From the edge of the rose (or symbol) to the edge of the box; null when they touch. */
function leaderOf(at: PaperPoint, reachPx: number, box: LabelBox): readonly [PaperPoint, PaperPoint] | null {
  const inBox = clipSegment(at, box, {
    left: box.x - box.widthPx / 2,
    right: box.x + box.widthPx / 2,
    top: box.y - box.heightPx / 2,
    bottom: box.y + box.heightPx / 2,
  });
  const end = inBox?.[0];
  if (!end) return null;
  const lengthPx = distancePx(at, end);
  if (lengthPx <= reachPx + 1) return null;
  const part = reachPx / lengthPx;
  return [{ x: at.x + (end.x - at.x) * part, y: at.y + (end.y - at.y) * part }, end];
}
