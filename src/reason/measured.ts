/** What the receiver made of the signal itself, beside where it really is, and what pulls the two apart. */

import { geodesicDistanceNm, turnBetween } from "../earth/index.ts";
import type { MeasuredSignal } from "../panel/index.ts";
import { bendDeg, type Station, TONE_HZ } from "../radio/index.ts";
import { beatsWith, type Situation } from "../scene/index.ts";
import { WORTH_SAYING_DEG } from "./astray.ts";
import type { Rule } from "./step.ts";
import { course3, degrees, miles, tenths } from "./words.ts";

const PROPELLER = "FAA Aeronautical Information Manual, para 1-1-3";
const BENDS =
  "bends and scalloping: ICAO Doc 8071 Vol I (from memory); how great is derived in docs/model.md";

export const measured: Rule = ({ situation, reading }) => {
  const { measured: made, geometry, station } = reading;
  if (made === null || geometry === null || station === null || reading.radial === null) return null;
  const { radial, radialDeviationDeg, carrierToNoiseDbHz } = made.measurement;
  if (radial === null) return null;
  const offDeg = turnBetween(geometry.trueRadial, radial);
  const { title, why, source, numbers } = causeOf(made, station, offDeg, situation);
  return {
    rule: "measured",
    title,
    sentence: `The signal reads ${tenths(radial)} where ${station.kind === "VOT" ? "it is sent as" : "you are on"} ${tenths(geometry.trueRadial)}: ${why}.`,
    numbers: {
      measuredRadialDeg: radial,
      trueRadialDeg: geometry.trueRadial,
      offDeg,
      radialDeviationDeg,
      ...(Number.isFinite(carrierToNoiseDbHz) && { carrierToNoiseDbHz }),
      ...numbers,
    },
    source,
    parts: ["station", "radial", "needle"],
  };
};

interface Cause {
  readonly title: string;
  /** What stands behind the colon. */
  readonly why: string;
  readonly source: string;
  readonly numbers: Readonly<Record<string, number>>;
}

function causeOf(made: MeasuredSignal, station: Station, offDeg: number, { scene }: Situation): Cause {
  const { propeller, modulation } = made.arriving;
  const isOff = Math.abs(offDeg) >= WORTH_SAYING_DEG;
  const multiple = propeller === null ? null : beatsWith(propeller.bladePassHz);
  if (propeller !== null && multiple !== null)
    return {
      title: "The propeller chops it",
      why: `${propeller.bladePassHz.toFixed(1)} blades pass in a second, so near ${multiple === 1 ? "the signal's 30 Hz that the needle swings far" : "twice the signal's 30 Hz that the needle swings, by as much as 6° to either side"}; change the propeller's speed a little and it steadies`,
      source: PROPELLER,
      numbers: { bladePassHz: propeller.bladePassHz },
    };
  const echo = strongestEcho(made, station, scene);
  if (echo !== null && Math.abs(echo.bendDeg) >= WORTH_SAYING_DEG)
    return {
      title: "An echo pulls it",
      why: `${echo.words} pulls it by ${degrees(echo.bendDeg)}, in a second receiver too, and as you fly on the pull goes from side to side`,
      source: BENDS,
      numbers: { bendDeg: echo.bendDeg },
    };
  const { carrierToNoiseDbHz, echoes } = made.arriving;
  const noisy = carrierToNoiseDbHz !== null;
  if (isOff && propeller !== null && (!noisy || isNearTone(propeller.bladePassHz)))
    return {
      title: "The propeller chops it",
      why: `${propeller.bladePassHz.toFixed(1)} blades pass in a second, not far from the signal's 30 Hz or its double, and move it by ${degrees(offDeg)} just now; another speed of the propeller steadies it`,
      source: PROPELLER,
      numbers: { bladePassHz: propeller.bladePassHz },
    };
  if (isOff && !noisy && echoes.length > 1)
    return {
      title: "Echoes pull it",
      why: `${echoes.length} echoes together pull it by ${degrees(offDeg)}, though none does much by itself`,
      source: BENDS,
      numbers: {},
    };
  if (isOff)
    return {
      title: "Noise moves it",
      why: `noise moves it by ${degrees(offDeg)} just now, and it will wander`,
      source: "how well a bearing can be known in noise is derived in docs/model.md",
      numbers: {},
    };
  if (echo !== null && modulation.kind === "doppler")
    return {
      title: "Hardly bent",
      why: `${echo.words} arrives as well, but a Doppler station's wide ring of antennas makes little of it`,
      source: BENDS,
      numbers: { bendDeg: echo.bendDeg },
    };
  return {
    title: "As the signal has it",
    why: `its two 30 Hz tones ${station.kind === "VOT" ? "are in phase to every side" : "differ in phase by your radial"}, and nothing disturbs them here`,
    source: "ICAO Annex 10 Vol I, 3.3.1",
    numbers: {},
  };
}

/** Blades that pass within this of the 30 Hz or its double are not wholly averaged out over the half second that a receiver listens. */
const NEAR_TONE_HZ = 8;

const isNearTone = (bladePassHz: number): boolean =>
  [TONE_HZ, 2 * TONE_HZ].some((toneHz) => Math.abs(bladePassHz - toneHz) <= NEAR_TONE_HZ);

interface Echo {
  readonly bendDeg: number;
  /** Which echo, from where. */
  readonly words: string;
}

/** The reflector whose echo by itself bends the radial most: by how much, clockwise positive, and where it stands from its station. */
function strongestEcho(
  { arriving }: MeasuredSignal,
  station: Station,
  { signal }: Situation["scene"],
): Echo | null {
  const { modulation, radial, frequencyMhz, echoes } = arriving;
  if (station.kind === "VOT") return null;
  const own = (signal?.reflectors ?? []).filter(({ ident }) => ident === station.ident);
  let best: Echo | null = null;
  echoes.forEach((echo, index) => {
    const reflector = own[index];
    if (reflector === undefined) return;
    const bend = bendDeg({ kind: modulation.kind, radial, frequencyMhz, ...echo });
    if (best !== null && Math.abs(bend) <= Math.abs(best.bendDeg)) return;
    const distanceNm = geodesicDistanceNm(station.position, reflector.position);
    const from = `from a reflector on the ${course3(echo.azimuth)} radial at ${miles(distanceNm)}`;
    best = {
      bendDeg: bend,
      words:
        echoes.length === 1
          ? `an echo ${from}`
          : `the strongest of ${echoes.length} echoes, ${from}, by itself`,
    };
  });
  return best;
}
