export {
  Chart,
  ChartAircraft,
  ChartFurniture,
  ChartGround,
  ChartLines,
  type ChartProps,
  ChartStations,
} from "./chart.tsx";
export { chartDescription, chartTitle } from "./description.ts";
export { fitView } from "./fit-view.ts";
export { type ChartFrame, chartFrame, type FrameProps } from "./frame.ts";
export { type GroundLayout, layOutGround } from "./ground-layout.ts";
export { type LinesLayout, layOutLines } from "./lines-layout.ts";
export { MeasureLine, type MeasureLineProps } from "./measure.tsx";
export { type ChartProjection, type ChartView, chartProjection } from "./projection.ts";
export { reflectorsCovered } from "./reflectors.tsx";
export { WorldLand, type WorldLandProps, worldLandIsWanted } from "./world-land.tsx";
export { type LonLat, type WorldOutlines, worldOutlines } from "./world-outlines.ts";
