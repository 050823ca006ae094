/** What the aircraft is told: a heading to turn to at standard rate, an altitude to climb or descend to. It obeys while time runs. */

import type { JSX } from "preact";
import { timeWords } from "../../draw/index.ts";
import { magneticDeg, STANDARD_RATE_DEG_PER_S, threeDigits, turnBetween, turned } from "../../earth/index.ts";
import { CLIMB_FT_PER_MIN } from "../../flight/index.ts";
import { isCovered } from "../../scene/index.ts";
import { inThousands, readAltitude, readDirection, wholeDirection } from "../input/read-number.ts";
import { Stepper } from "../input/stepper.tsx";
import { HIGHEST_ALTITUDE_FT, LOWEST_ALTITUDE_FT } from "../state/actions.ts";
import type { Bench } from "../state/bench.ts";
import type { Player } from "./player.ts";

export interface FlightOrdersProps {
  readonly bench: Bench;
  readonly player: Player;
}

export function FlightOrders({ bench, player }: FlightOrdersProps): JSX.Element {
  const { aircraft, covers } = bench.scene.value;
  const heading = player.turningTo.value ?? magneticDeg(Math.round(aircraft.heading));
  const altitudeFt = player.climbingToFt.value ?? aircraft.altitudeFt;
  const within = (feet: number) =>
    Math.min(HIGHEST_ALTITUDE_FT, Math.max(LOWEST_ALTITUDE_FT, Math.round(feet)));
  return (
    <div class="motion-orders">
      {isCovered(covers, null, "heading") || isCovered(covers, null, "panel") ? null : (
        <>
          <Stepper
            id="turn-to"
            name="Turn to heading"
            caption="turn to"
            shown={threeDigits(heading)}
            widthCh={3}
            now={Number(threeDigits(heading))}
            lowest={1}
            highest={360}
            stepBy={5}
            bigStepBy={30}
            stepWords="5 degrees"
            read={(text) => readDirection("heading", text)}
            whole={wholeDirection}
            onSet={(deg) => player.turnTo(magneticDeg(deg))}
            onStep={(byDeg) => player.turnTo(turned(heading, byDeg))}
          />
          <p class="note motion-order">{turnWords(player, aircraft.heading)}</p>
        </>
      )}
      <Stepper
        id="climb-to"
        name="Climb or descend to altitude"
        caption="climb to"
        shown={inThousands(altitudeFt)}
        unit="ft"
        widthCh={6}
        now={Math.round(altitudeFt)}
        lowest={LOWEST_ALTITUDE_FT}
        highest={HIGHEST_ALTITUDE_FT}
        stepBy={500}
        bigStepBy={1000}
        stepWords="500 feet"
        read={(text) => readAltitude(text, LOWEST_ALTITUDE_FT, HIGHEST_ALTITUDE_FT)}
        onSet={(feet) => player.climbTo(feet)}
        onStep={(byFeet) => player.climbTo(within(altitudeFt + byFeet))}
      />
      <p class="note motion-order">{climbWords(player, aircraft.altitudeFt)}</p>
    </div>
  );
}

/** "right, 10 s at 3° a second" */
function turnWords(player: Player, heading: Parameters<typeof turnBetween>[0]): string {
  const to = player.turningTo.value;
  if (to === null) return "holding its heading";
  const byDeg = turnBetween(heading, to);
  return `${byDeg < 0 ? "left" : "right"}, ${timeWords(Math.abs(byDeg) / STANDARD_RATE_DEG_PER_S)} at 3° a second`;
}

/** "up, 2 min at 500 ft a minute" */
function climbWords(player: Player, altitudeFt: number): string {
  const toFt = player.climbingToFt.value;
  if (toFt === null) return "in level flight";
  const timeS = (Math.abs(toFt - altitudeFt) / CLIMB_FT_PER_MIN) * 60;
  return `${toFt < altitudeFt ? "down" : "up"}, ${timeWords(timeS)} at ${CLIMB_FT_PER_MIN} ft a minute`;
}
