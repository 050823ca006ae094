/**
 * The chart: where you are. A pure picture of a situation; the same arguments give the same bytes anywhere. It is drawn in parts,
 * so that a drag redraws only what moves: ground, lines, stations, aircraft, furniture, from below to above.
 */

import type { ComponentChild, VNode } from "preact";
import type { Part } from "../../reason/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { Lit } from "../lit.ts";
import { PaperStrip } from "../plain/paper-strip.tsx";
import { px } from "../plain/px.ts";
import { TitledPicture } from "../plain/titled-picture.tsx";
import { AircraftSign } from "./aircraft.tsx";
import { chartDescription, chartTitle } from "./description.ts";
import { type ChartFrame, chartFrame, type FrameProps } from "./frame.ts";
import { FurnitureParts } from "./furniture.tsx";
import { GraticuleBorder, GraticuleLines } from "./graticule.tsx";
import { type GroundLayout, layOutGround } from "./ground-layout.ts";
import { LandAreas, LandNames } from "./land.tsx";
import { AircraftWords, LineWords } from "./line-words.tsx";
import { ReceiverLineParts } from "./lines.tsx";
import { type LinesLayout, layOutLines } from "./lines-layout.ts";
import { ReflectorSigns } from "./reflectors.tsx";
import { seenOnChart } from "./seen.ts";
import { StationParts } from "./stations.tsx";
import { WorldLand } from "./world-land.tsx";
import type { WorldOutlines } from "./world-outlines.ts";

export interface ChartProps extends FrameProps {
  readonly situation: Situation;
  readonly lit?: Lit | null;
  /** Whose lines are drawn in full; the first receiver when left out. */
  readonly receiver?: string;
  /** Outlines of the world's land, for a scene that has none of its own there. */
  readonly world?: WorldOutlines | null;
  /** What lies between the ground and the lines, such as a needle field; then the lines' own hatch and wedge are left out. */
  readonly overGround?: ComponentChild;
  /** What lies under the stations and the aircraft, such as a trail. */
  readonly underStations?: ComponentChild;
}

interface PartProps {
  readonly frame: ChartFrame;
  readonly situation: Situation;
  readonly ground: GroundLayout;
  readonly lit?: Lit | null | undefined;
}

/** The whole sheet as one SVG element, with its title and description. */
export function Chart(props: ChartProps): VNode {
  const { situation, widthPx, heightPx, theme, idPrefix, lit, receiver, world } = props;
  const { overGround = null, underStations = null } = props;
  const frame = chartFrame(props);
  return (
    <TitledPicture
      widthPx={widthPx}
      heightPx={heightPx}
      idPrefix={idPrefix}
      title={chartTitle(situation)}
      words={chartDescription(situation)}
    >
      {seenOnChart(situation).chart ? (
        <ChartParts
          frame={frame}
          situation={situation}
          lit={lit}
          receiver={receiver}
          world={world}
          overGround={overGround}
          underStations={underStations}
        />
      ) : (
        <>
          <rect width={px(widthPx)} height={px(heightPx)} rx={2} fill={theme.paper} />
          <PaperStrip
            middleX={widthPx / 2}
            middleY={heightPx / 2}
            widthPx={Math.min(widthPx * 0.7, 520 * frame.typeScale)}
            heightPx={Math.min(heightPx * 0.3, 96 * frame.typeScale)}
            covered="chart"
            theme={theme}
          />
        </>
      )}
    </TitledPicture>
  );
}

/** Everything on an uncovered sheet. The bench composes the same parts itself, to hold the still ones while dragging. */
function ChartParts(props: {
  readonly frame: ChartFrame;
  readonly situation: Situation;
  readonly lit: Lit | null | undefined;
  readonly receiver: string | undefined;
  readonly world: WorldOutlines | null | undefined;
  readonly overGround: ComponentChild;
  readonly underStations: ComponentChild;
}): VNode {
  const { frame, situation, lit, receiver, world, overGround, underStations } = props;
  const ground = layOutGround(frame, situation, receiver);
  const offsetShown = lit?.parts.includes("offset") ?? false;
  const lines = layOutLines(frame, situation, ground, { receiver, offsetShown });
  const shared = { frame, situation, ground, lit };
  return (
    <>
      <ChartGround {...shared} world={world} />
      {overGround}
      <ChartLines {...shared} lines={lines} bare={overGround !== null} />
      {underStations && <g clip-path={`url(#${frame.idPrefix}-window)`}>{underStations}</g>}
      <ChartStations {...shared} />
      <ChartAircraft {...shared} lines={lines} />
      <ChartFurniture {...shared} />
    </>
  );
}

/** Sea, land, relief, graticule, airfields and names. */
export function ChartGround(props: PartProps & { readonly world?: WorldOutlines | null | undefined }): VNode {
  const { frame, situation, ground, world } = props;
  const { theme, idPrefix, widthPx, heightPx, window } = frame;
  const land = situation.scene.land;
  return (
    <g>
      <defs>
        <clipPath id={`${idPrefix}-window`}>
          <rect
            x={px(window.left)}
            y={px(window.top)}
            width={px(window.right - window.left)}
            height={px(window.bottom - window.top)}
          />
        </clipPath>
      </defs>
      <rect width={px(widthPx)} height={px(heightPx)} rx={2} fill={theme.sea} />
      <g clip-path={`url(#${idPrefix}-window)`}>
        {world && <WorldLand frame={frame} outlines={world} />}
        {land && <LandAreas frame={frame} land={land} />}
        <GraticuleLines frame={frame} />
        {land && <LandNames frame={frame} names={ground.names} />}
      </g>
    </g>
  );
}

/** The receivers' lines, without their words. */
export function ChartLines({
  frame,
  lines,
  lit,
  bare = false,
}: PartProps & {
  readonly lines: LinesLayout;
  /** Leaves out the hatch of the TO side and the wedges of full scale: over a needle field they would be ink upon ink. */
  readonly bare?: boolean;
}): VNode {
  // The chosen receiver's lines lie over the others'.
  const receivers = [...lines.receivers].sort((a, b) => Number(a.chosen) - Number(b.chosen));
  return (
    <g clip-path={`url(#${frame.idPrefix}-window)`}>
      {receivers.map((drawn) => (
        <ReceiverLineParts
          frame={frame}
          drawn={drawn}
          bare={bare}
          lit={(part) => isLit(lit, part, drawn.reading.settings.name)}
        />
      ))}
    </g>
  );
}

/** Reflectors; roses, symbols and information boxes. */
export function ChartStations({ frame, situation, ground, lit }: PartProps): VNode {
  return (
    <g clip-path={`url(#${frame.idPrefix}-window)`}>
      <ReflectorSigns frame={frame} situation={situation} />
      <StationParts frame={frame} ground={ground} lit={(receiver, part) => isLit(lit, part, receiver)} />
    </g>
  );
}

/** The aircraft, and the words that move with it: its own and those on the lines. */
export function ChartAircraft({ frame, lines, lit }: PartProps & { readonly lines: LinesLayout }): VNode {
  const { aircraft, block } = lines;
  return (
    <g clip-path={`url(#${frame.idPrefix}-window)`}>
      <LineWords frame={frame} layout={lines} lit={lit ?? null} />
      {aircraft && (
        <AircraftSign
          frame={frame}
          aircraft={aircraft}
          lit={{
            aircraft: isLit(lit, "aircraft"),
            heading: isLit(lit, "heading"),
            track: isLit(lit, "track"),
          }}
        />
      )}
      {block && <AircraftWords frame={frame} block={block} lit={lit ?? null} />}
    </g>
  );
}

/** Norths, wind, scale and the border. */
export function ChartFurniture({ frame, situation, ground, lit }: PartProps): VNode {
  return (
    <g>
      <FurnitureParts
        frame={frame}
        situation={situation}
        furniture={ground.furniture}
        variationDeg={ground.variationDeg}
        lit={{ north: isLit(lit, "north"), wind: isLit(lit, "wind") }}
      />
      <GraticuleBorder frame={frame} />
    </g>
  );
}

/** Whether a part is lit; aircraft, wind and north belong to no receiver. */
function isLit(lit: Lit | null | undefined, part: Part, receiver?: string): boolean {
  if (!lit?.parts.includes(part)) return false;
  return receiver === undefined || lit.receiver === receiver;
}
