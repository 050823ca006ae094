import {
  bankForRateDeg,
  ftFromNm,
  mFromNm,
  rateOfTurnDegPerS,
  rollOutLeadDeg,
  ruleOfThumbBankDeg,
  STANDARD_RATE_DEG_PER_S,
  turnRadiusAtRateNm,
  turnRadiusNm,
  turnTimeS,
} from "../../src/earth/index.ts";
import { checkRows, type Solve, solvedBy } from "./published-rows.ts";
import turnRows from "./rows/turn.json" with { type: "json" };

const fromBank: Solve = (i) => {
  const given = { tasKt: i.tas_kt!, bankDeg: i.bank_deg! };
  const radiusNm = turnRadiusNm(given);
  return {
    radius_m: mFromNm(radiusNm),
    radius_ft: ftFromNm(radiusNm),
    rate_deg_per_s: rateOfTurnDegPerS(given),
  };
};

checkRows({
  name: "turn",
  rows: turnRows,
  knownRows: 11,
  ours: solvedBy({
    "Bank for a standard-rate turn, 15 percent rule": (i) => ({ bank_deg: ruleOfThumbBankDeg(i.tas_kt!) }),
    "Turn radius": fromBank,
    "Turn radius and rate": fromBank,
    "Time for half a circle at standard rate": (i) => ({ time_s: turnTimeS(i.turn_deg!) }),
    "Roll-out lead": (i) => ({ lead_deg: rollOutLeadDeg(i.bank_deg!) }),
    "Standard-rate turn, exact": (i) => ({
      bank_deg: bankForRateDeg({ tasKt: i.tas_kt! }),
      radius_nm: turnRadiusAtRateNm({ tasKt: i.tas_kt!, rateDegPerS: STANDARD_RATE_DEG_PER_S }),
      time_for_90_deg_s: turnTimeS(90),
    }),
  }),
  disagreements: {
    "turn-t010": {
      key: "radius_ft",
      reason:
        "the handbook's constant 11.26 stands for a gravity of 32.08 ft/s2; at 9.80665 m/s2 it is 11.294 and the radius 2,208 ft",
    },
  },
});
