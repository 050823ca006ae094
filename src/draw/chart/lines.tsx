/**
 * The lines of the receivers. What you set is solid: the course line, arrowed in its own sense, with full scale either side
 * lightly tinted. What the station gives is dashed or hatched: your radial, the abeam line, the TO side.
 */

import type { VNode } from "preact";
import type { Part } from "../../reason/index.ts";
import { fromPoint, type PaperPoint, pathThrough } from "../plain/paper.ts";
import { px } from "../plain/px.ts";
import { type ChartFrame, inset } from "./frame.ts";
import type { DrawnReceiver } from "./lines-layout.ts";
import { visibleRun } from "./receiver-lines.ts";

interface LineProps {
  readonly frame: ChartFrame;
  readonly drawn: DrawnReceiver;
  /** Whether a part is lit. */
  readonly lit: (part: Part) => boolean;
}

export function ReceiverLineParts({
  frame,
  drawn,
  lit,
  bare,
}: LineProps & {
  /** Without the hatch and the wedges. */
  readonly bare: boolean;
}): VNode {
  return (
    <g data-receiver={drawn.reading.settings.name}>
      {!bare && drawn.course && <CourseAreas frame={frame} drawn={drawn} lit={lit} />}
      {drawn.course && <CourseLine frame={frame} drawn={drawn} lit={lit} />}
      {drawn.aircraft && <RadialLine frame={frame} drawn={drawn} lit={lit} />}
      {drawn.chosen && <ServiceVolume frame={frame} drawn={drawn} lit={lit} />}
      {drawn.chosen && drawn.course && drawn.aircraft && drawn.seen.offset && lit("offset") && (
        <OffsetLine frame={frame} drawn={drawn} lit={lit} />
      )}
    </g>
  );
}

/** The TO side's hatch and the wedges of full scale. */
function CourseAreas({ frame, drawn, lit }: LineProps): VNode | null {
  const { course, halvesShown, reading } = drawn;
  const { theme, idPrefix } = frame;
  if (!course || !halvesShown) return null;
  const hatch = `${idPrefix}-to-hatch`;
  return (
    <g>
      <defs>
        <pattern id={hatch} width={8} height={8} patternUnits="userSpaceOnUse" patternTransform="rotate(62)">
          <path
            d="M4 0V8"
            stroke={theme.radial}
            stroke-width={lit("to-side") ? 1.2 : 0.9}
            stroke-opacity={lit("to-side") ? 0.34 : 0.14}
          />
        </pattern>
      </defs>
      <path
        d={pathThrough(course.toSide, true)}
        fill={`url(#${hatch})`}
        data-part="to-side"
        data-receiver={reading.settings.name}
      />
      {course.wedges.map((wedge) => (
        <path
          d={pathThrough(wedge, true)}
          fill={theme.course}
          fill-opacity={theme.name === "dark" ? 0.12 : 0.085}
          data-wedge="full-scale"
        />
      ))}
    </g>
  );
}

function CourseLine({ frame, drawn, lit }: LineProps): VNode | null {
  const { course, reading, halvesShown, arrows } = drawn;
  if (!course) return null;
  const { theme, typeScale } = frame;
  const receiver = reading.settings.name;
  const widthPx = (lit("course") ? 3.6 : 2.3) * Math.sqrt(typeScale);
  const halves = [
    ["from-side", course.fromHalf],
    ["to-side", course.toHalf],
  ] as const;
  return (
    <g stroke-linecap="round" opacity={halvesShown || !drawn.seen.halves ? undefined : 0.75}>
      {halvesShown && (
        <Stroke
          points={course.abeam}
          frame={frame}
          ink={theme.radial}
          widthPx={(lit("abeam") ? 3 : 1.7) * Math.sqrt(typeScale)}
          dashes="0.1 6"
          glow={lit("abeam")}
          data={{ "data-part": "abeam", "data-receiver": receiver }}
        />
      )}
      <g data-part="course" data-receiver={receiver}>
        {halves.map(([part, points]) => (
          <Stroke
            points={points}
            frame={frame}
            ink={theme.course}
            widthPx={lit(part) ? widthPx * 1.5 : widthPx}
            glow={lit(part) || lit("course")}
            data={halvesShown ? { "data-half": part === "to-side" ? "TO" : "FROM" } : {}}
          />
        ))}
        {arrows.map(({ at, angleDeg }) => (
          <path d={arrowhead(at, angleDeg, typeScale)} fill={theme.course} data-arrow="course" />
        ))}
      </g>
    </g>
  );
}

function RadialLine({ frame, drawn, lit }: LineProps): VNode | null {
  const { aircraft, chosen, reading } = drawn;
  if (!aircraft) return null;
  const thickness = chosen ? 2.3 : 1.5;
  return (
    <Stroke
      points={aircraft.radial}
      frame={frame}
      ink={frame.theme.radial}
      widthPx={thickness * (lit("radial") ? 1.6 : 1) * Math.sqrt(frame.typeScale)}
      dashes="8 5"
      glow={lit("radial")}
      data={{ "data-part": "radial", "data-receiver": reading.settings.name }}
    />
  );
}

/** From the aircraft square to the course line. */
function OffsetLine({ frame, drawn }: LineProps): VNode | null {
  const { aircraft, reading } = drawn;
  if (!aircraft) return null;
  return (
    <Stroke
      points={aircraft.offset}
      frame={frame}
      ink={frame.theme.course}
      widthPx={2.2 * Math.sqrt(frame.typeScale)}
      glow
      data={{ "data-part": "offset", "data-receiver": reading.settings.name }}
    />
  );
}

/** How far the published service reaches at this height; shown only while the argument speaks of it. */
function ServiceVolume({ frame, drawn, lit }: LineProps): VNode | null {
  const { reading, seen } = drawn;
  const radiusNm = reading.geometry?.serviceRadiusNm ?? null;
  if (!lit("service-volume") || !seen.station || !reading.station || radiusNm === null || radiusNm <= 0)
    return null;
  const at = frame.projection.toPaper(reading.station.position);
  return (
    <circle
      cx={px(at.x)}
      cy={px(at.y)}
      r={px(radiusNm * frame.projection.pxPerNm)}
      fill="none"
      stroke={frame.theme.radial}
      stroke-width={1.8}
      stroke-dasharray="2 5"
      data-part="service-volume"
      data-receiver={reading.settings.name}
    />
  );
}

/** A line, cut off a little beyond the sheet's edge, with a soft light under it when lit. */
function Stroke(props: {
  readonly points: readonly PaperPoint[];
  readonly frame: ChartFrame;
  readonly ink: string;
  readonly widthPx: number;
  readonly dashes?: string;
  readonly glow: boolean;
  readonly data: Readonly<Record<string, string>>;
}): VNode | null {
  const { points, frame, ink, widthPx, dashes, glow, data } = props;
  const run = visibleRun(points, inset(frame.window, -10));
  if (run.length < 2) return null;
  const d = pathThrough(run);
  return (
    <>
      {glow && (
        <path
          d={d}
          fill="none"
          stroke={ink}
          stroke-opacity={0.22}
          stroke-width={px(widthPx + 9)}
          stroke-linecap="round"
        />
      )}
      <path
        d={d}
        fill="none"
        stroke={ink}
        stroke-width={px(widthPx)}
        stroke-dasharray={dashes}
        stroke-linecap={dashes === "8 5" ? "butt" : "round"}
        {...data}
      />
    </>
  );
}

function arrowhead(at: PaperPoint, angleDeg: number, scale: number): string {
  const size = 7 * Math.sqrt(scale);
  const tip = fromPoint(at, angleDeg, size);
  const tail = fromPoint(at, angleDeg + 180, size);
  const left = fromPoint(tail, angleDeg - 90, size * 0.75);
  const right = fromPoint(tail, angleDeg + 90, size * 0.75);
  return pathThrough([tip, right, fromPoint(tail, angleDeg, size * 0.4), left], true);
}
