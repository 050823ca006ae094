/** The wind of a scene: `140/18`, where it blows from in degrees true and its knots, or `calm`. */

import { trueDeg, type Wind } from "../earth/index.ts";
import { addFault, cited, type Reading } from "./reading.ts";
import { type FileRecord, readField } from "./record.ts";
import { sceneLeaves } from "./scene-shape.ts";

export const CALM: Wind = { from: trueDeg(0), speedKt: 0 };
const STRONGEST_KT = 250;

/** The wind; calm where none is given or it is at fault. */
export function readWind(reading: Reading, record: FileRecord): Wind {
  const written = readField(reading, record, "wind", sceneLeaves.wind);
  const parts = /^([\d.]+)\/([\d.]+)$/.exec(written?.value ?? "");
  if (!written || !parts) return CALM;
  const fromDeg = Number(parts[1]);
  const speedKt = Number(parts[2]);
  const refuse = (what: string): Wind => {
    addFault(reading, "out-of-range", written.offset, `wind ${cited(written.text)} ${what}, such as 140/18`);
    return CALM;
  };
  if (fromDeg > 360) return refuse(`blows from ${parts[1]}; a direction is 000 to 360 degrees true`);
  if (speedKt > STRONGEST_KT) return refuse(`is too strong; a speed is 0 to ${STRONGEST_KT} knots`);
  return { from: trueDeg(fromDeg), speedKt };
}
