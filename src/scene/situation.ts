/** A scene resolved by the engine: every computed quantity. Plain data, derived, never stored. */

import type { MagneticDeg, TrueDeg } from "../earth/index.ts";
import type { ReceiverReading } from "../panel/index.ts";
import type { Scene } from "./scene.ts";

export interface Situation {
  readonly scene: Scene;
  /** Magnetic variation at the aircraft on the scene's date, degrees east positive. */
  readonly variationDeg: number;
  readonly magneticModel: {
    readonly name: string;
    readonly validFrom: string;
    readonly validTo: string;
    /** False: the date lies outside the model's life, and the reasons say so. */
    readonly dateInside: boolean;
  };
  readonly headingTrue: TrueDeg;
  readonly track: MagneticDeg;
  readonly trackTrue: TrueDeg;
  /** Right positive. */
  readonly driftDeg: number;
  readonly groundspeedKt: number;
  readonly receivers: readonly ReceiverReading[];
  /** Sentences that warn: beyond the published volume, estimated declination, a date outside the model, ... */
  readonly cautions: readonly string[];
}
