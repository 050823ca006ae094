import { describe, expect, it } from "vitest";
import { openNothing, readScene, resolveScene } from "../../scene/index.ts";
import { hissLevel, momentOf, onChannel } from "./on-channel.ts";

/** NAV1 18 NM from the first station, on 115.60. */
function reading(...stations: readonly string[]) {
  const read = readScene(
    `scene: 1
title: What is on the channel
date: 2026-07-01
aircraft: { at: 10°18.8′S 002°03.7′E, heading: 090, altitude: 3500, tas: 100 }
stations:
${stations.map((station) => `  - { ${station} }\n`).join("")}receivers:
  - { name: NAV1, tune: 115.60, course: 070 }
`,
    { path: "channel.yaml", open: openNothing },
  );
  if (!read.ok) throw new Error(read.faults[0]?.message);
  return resolveScene(read.scene).receivers[0]!;
}
const NEAR = "frequency: 115.60, at: 10°09.0′S 002°19.0′E, elevation: 20, declination: 9W";
const FAR = "frequency: 115.60, at: 10°20.0′S 001°27.0′E, elevation: 20, declination: 9W";

describe("what is keyed on the channel", () => {
  it("is three idents of the VOR and one of its DME, in 40 s", () => {
    const { rounds } = onChannel(reading(`ident: TXJ, kind: VOR-DME, ${NEAR}`));
    expect(rounds).toHaveLength(1);
    expect(rounds[0]!.roundS).toBe(40);
    expect(rounds[0]!.calls.map(({ startS, toneHz }) => [startS, toneHz])).toEqual([
      [0, 1020],
      [10, 1020],
      [20, 1020],
      [30, 1350],
    ]);
  });

  it("is one ident in 10 s where there is no DME", () => {
    const { rounds } = onChannel(reading(`ident: TXJ, kind: VOR, ${NEAR}`));
    expect(rounds).toEqual([{ roundS: 10, firstAtS: 0, calls: [{ startS: 0, text: "TXJ", toneHz: 1020 }] }]);
  });

  it("is T-E-S-T from a station on test, and nothing from a silent one or from no one", () => {
    const testing = onChannel(reading(`ident: TXJ, kind: VOR-DME, ${NEAR}, status: test`)).rounds;
    expect(testing[0]!.calls).toEqual([{ startS: 0, text: "TEST", toneHz: 1020 }]);
    expect(onChannel(reading(`ident: TXJ, kind: VOR-DME, ${NEAR}, status: silent`)).rounds).toEqual([]);
    expect(onChannel(reading(`ident: HJL, kind: VOR, ${NEAR.replace("115.60", "113.90")}`)).rounds).toEqual(
      [],
    );
  });

  it("is the DME's ident alone where the VOR has lost its own, the first at once", () => {
    const { rounds } = onChannel(reading(`ident: BJQ, kind: VOR-DME, ${NEAR}, status: no-ident`));
    expect(rounds).toEqual([{ roundS: 40, firstAtS: 0, calls: [{ startS: 0, text: "BJQ", toneHz: 1350 }] }]);
  });

  it("is a dot and a gap for ever from a test signal", () => {
    const vot = NEAR.replace("10°09.0′S 002°19.0′E", "10°18.0′S 002°03.0′E");
    const { rounds } = onChannel(reading(`ident: TXJ, kind: VOT, ${vot}`));
    expect(rounds[0]!.calls).toEqual([{ startS: 0, text: "E", toneHz: 1020 }]);
    // A dot at 7 words a minute of 50 units lasts 60/350 s.
    expect(rounds[0]!.roundS).toBeCloseTo(120 / 350, 12);
  });

  it("is two idents apart in time and tone where two stations meet", () => {
    const { rounds } = onChannel(reading(`ident: TXJ, kind: VOR, ${NEAR}`, `ident: HJL, kind: VOR, ${FAR}`));
    expect(rounds.map(({ calls }) => calls[0]!.text)).toEqual(["TXJ", "HJL"]);
    const [one, other] = rounds.map(({ calls, firstAtS }) => ({ tone: calls[0]!.toneHz, firstAtS }));
    expect(one).toEqual({ tone: 1020, firstAtS: 0 });
    // TXJ lasts 33 dots, 5.7 s: the other begins within it, with a tone inside the 50 Hz allowed.
    expect(other!.firstAtS).toBeGreaterThan(0);
    expect(other!.firstAtS).toBeLessThan(5.6);
    expect(Math.abs(other!.tone - 1020)).toBeGreaterThan(0);
    expect(Math.abs(other!.tone - 1020)).toBeLessThanOrEqual(50);
  });
});

describe("the moment in a round", () => {
  const round = {
    roundS: 40,
    firstAtS: 0,
    calls: [0, 10, 20, 30].map((startS) => ({ startS, text: "TXJ", toneHz: startS === 30 ? 1350 : 1020 })),
  };

  it.each([
    [0, 1020, 0, 10],
    [9.5, 1020, 9.5, 0.5],
    [10, 1020, 0, 10],
    [29.75, 1020, 9.75, 0.25],
    [30, 1350, 0, 10],
    [39.5, 1350, 9.5, 0.5],
    [40, 1020, 0, 10],
    [431, 1350, 1, 9],
  ])(
    "%f s after the start is of the %f Hz call, %f s in, %f s before the next",
    (elapsedS, toneHz, sinceS, nextInS) => {
      const moment = momentOf(round, elapsedS);
      expect(moment.call.toneHz).toBe(toneHz);
      expect(moment.sinceS).toBeCloseTo(sinceS, 9);
      expect(moment.nextInS).toBeCloseTo(nextInS, 9);
    },
  );

  it("before the first round waits for it", () => {
    const late = { ...round, firstAtS: 1.5 };
    expect(momentOf(late, 0.5)).toEqual({ call: round.calls[0], sinceS: -1, nextInS: 1 });
    expect(momentOf(late, 1.75)).toEqual({ call: round.calls[0], sinceS: 0.25, nextInS: 9.75 });
  });
});

it("hisses more without a carrier than with a good one", () => {
  const good = hissLevel(reading(`ident: TXJ, kind: VOR, ${NEAR}`).signal);
  const none = hissLevel({ kind: "none", why: { kind: "no-station" } });
  expect(good).toBeGreaterThan(0);
  expect(none).toBeGreaterThan(good);
  // Half of full scale is the ident.
  expect(none).toBeLessThan(0.5 / 20);
});
