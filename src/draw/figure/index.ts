export { Figure, type FigureProps } from "./figure.tsx";
export { figureSentence } from "./figure-sentence.ts";
export { type EmbeddedFont, figureSvg, fontFaceCss } from "./figure-svg.ts";
export { figureScale } from "./layout-figure.ts";
export { TwoWaves } from "./two-waves.tsx";
export { lagMs, waveReading, wavesSentence } from "./wave-reading.ts";
