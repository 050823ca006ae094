export { CompositePicture, compositeSentence } from "./composite-picture.tsx";
export { compositeSamples } from "./composite-samples.ts";
export { Lighthouse, lighthouseNotes, lighthouseSentence } from "./lighthouse.tsx";
export {
  afterFlashS,
  beamDeg,
  isFlash,
  LIGHTHOUSE_TURNS_S,
  type LighthouseTurnS,
  lighthouseTimes,
} from "./lighthouse-times.ts";
export { noBearingSentence } from "./no-bearing.ts";
export { disturbances, pictureSignal } from "./picture-signal.ts";
export { RoseAngle, roseSentence } from "./rose-angle.tsx";
export { spectrumOf } from "./spectrum-of.ts";
export { SpectrumPicture, spectrumSentence } from "./spectrum-picture.tsx";
