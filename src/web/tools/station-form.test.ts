import { describe, expect, it } from "vitest";
import { geodesicDistanceNm, latLon, magneticDeg, trueDeg } from "../../earth/index.ts";
import type { Station } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";
import { readPlace } from "./place-field.tsx";
import { blankForm, checkStation, declinationOn, formOf, type StationForm } from "./station-form.ts";

const TXJ: Station = {
  ident: "TXJ",
  name: "Tamsel",
  kind: "VOR-DME",
  frequencyMhz: 115.6,
  dmeChannel: "103X",
  position: latLon(-10.15, 2 + 19 / 60),
  elevationFt: 22.4,
  dmeSite: { position: latLon(-10.16, 2.33), elevationFt: 30 },
  declinationDeg: -9.04,
  declinationEstimated: true,
  vorClass: "VL",
  dmeClass: "DL",
  status: "no-ident",
  eirpW: 150,
};
const SCENE: Scene = {
  title: "",
  about: "",
  date: "2026-07-01",
  stations: [TXJ],
  land: null,
  aircraft: { position: latLon(-10.3, 2), heading: magneticDeg(90), altitudeFt: 3500, tasKt: 100 },
  wind: { from: trueDeg(0), speedKt: 0 },
  receivers: [],
  signal: null,
  covers: [],
  ask: "",
};
const GOOD: StationForm = {
  ...blankForm(latLon(-10.5, 1.9), SCENE.date),
  ident: "qzx",
  name: "Halfway: the rock",
  frequency: "114.3",
};

const faultsOf = (change: Partial<StationForm>, before: Station | null = null) => {
  const checked = checkStation({ ...GOOD, ...change }, SCENE, before);
  return checked.ok ? {} : checked.faults;
};
const stationOf = (form: StationForm, before: Station | null = null): Station => {
  const checked = checkStation(form, SCENE, before);
  if (!checked.ok) throw new Error(JSON.stringify(checked.faults));
  return checked.station;
};

describe("the form of a station", () => {
  it("offers today's variation to the whole degree", () => {
    // The demo's table gives 7.16 W at Tamsel on this day, and 8.18 W at Brevane.
    expect(declinationOn(TXJ.position, "2026-07-01")).toBe("7W");
    expect(declinationOn(latLon(-10.683, 0.65), "2026-07-01")).toBe("8W");
    expect(blankForm(latLon(51, 30), "2026-07-01").declination).toMatch(/^\d+E$/);
  });

  it("makes the station that the file's reader would", () => {
    expect(stationOf(GOOD)).toMatchObject({
      ident: "QZX",
      name: "Halfway: the rock",
      kind: "VOR-DME",
      frequencyMhz: 114.3,
      dmeChannel: "90X",
      elevationFt: 0,
      declinationDeg: -8,
      declinationEstimated: false,
      vorClass: null,
      status: "on-air",
    });
    expect(stationOf({ ...GOOD, name: "  " }).name).toBe("QZX");
  });

  it("takes a place by another station's radial as well as by coordinates", () => {
    const station = stationOf({ ...GOOD, at: "TXJ 246/18" });
    expect(geodesicDistanceNm(station.position, TXJ.position)).toBeCloseTo(18, 6);
    expect(stationOf({ ...GOOD, at: "-10.25, 2.5" }).position).toEqual(latLon(-10.25, 2.5));
  });

  it("says at each field what is wrong, in the reader's words", () => {
    expect(faultsOf({ ident: "TOOLONG" })).toEqual({
      ident: expect.stringContaining("an ident is one to four capital letters or digits, such as HJL."),
    });
    expect(faultsOf({ frequency: "108.10" })).toEqual({
      frequency: expect.stringMatching(/^QZX frequency 108\.10 is a localizer channel; .*\.$/),
    });
    expect(faultsOf({ frequency: "" })).toEqual({ frequency: expect.stringContaining("no value") });
    expect(faultsOf({ elevation: "high" })).toEqual({ elevation: expect.stringContaining("feet above") });
    expect(faultsOf({ declination: "200W" })).toEqual({
      declination: expect.stringContaining("out of range"),
    });
    expect(faultsOf({ at: "over there" })).toEqual({ at: expect.stringContaining("is not a position") });
    expect(faultsOf({ at: "" })).toEqual({ at: expect.stringMatching(/^Where it stands is missing/) });
    expect(faultsOf({ at: "82°00.0′S 010°00.0′E" })).toEqual({
      at: expect.stringContaining("too near a pole for radials"),
    });
    expect(Object.keys(faultsOf({ ident: "", frequency: "1", at: "QQ 1/1" })).sort()).toEqual([
      "at",
      "frequency",
      "ident",
    ]);
  });

  it("does not let a typed text become more of the file than its value", () => {
    const sly = stationOf({ ...GOOD, name: 'x\n    status: silent # "' });
    expect(sly.status).toBe("on-air");
    expect(sly.name).toBe('x status: silent # "');
    expect(faultsOf({ frequency: "114.3\n    power: 5" })).toHaveProperty("frequency");
  });

  it("gives no two stations of a scene one ident, and lets one keep its own", () => {
    expect(faultsOf({ ident: "txj" })).toEqual({
      ident: "TXJ is another station of this scene; give each its own ident.",
    });
    expect(faultsOf({ ...formOf(TXJ) }, TXJ)).toEqual({});
  });

  it("changes only what was retyped", () => {
    expect(stationOf(formOf(TXJ), TXJ)).toEqual(TXJ);
    const renamed = stationOf({ ...formOf(TXJ), name: "Tamsel Rock", elevation: "30" }, TXJ);
    expect(renamed).toEqual({ ...TXJ, name: "Tamsel Rock", elevationFt: 30 });
    const surveyed = stationOf({ ...formOf(TXJ), declination: "7W" }, TXJ);
    expect(surveyed).toMatchObject({ declinationDeg: -7, declinationEstimated: false });
  });

  it("takes a DME that stands apart along, and away with the distance part", () => {
    const moved = stationOf({ ...formOf(TXJ), at: "-11, 3" }, TXJ);
    expect(geodesicDistanceNm(moved.position, moved.dmeSite!.position)).toBeCloseTo(
      geodesicDistanceNm(TXJ.position, TXJ.dmeSite!.position),
      6,
    );
    expect(stationOf({ ...formOf(TXJ), kind: "VOR" }, TXJ)).toMatchObject({
      dmeSite: null,
      dmeClass: null,
      dmeChannel: null,
    });
  });
});

describe("a place that is typed", () => {
  it("is taken however it is written", () => {
    const spoken = readPlace("txj 246/18", SCENE);
    expect(readPlace("TXJ246018", SCENE)).toEqual(spoken);
    const written = ["10°18.8′S 002°03.7′E", "10-18-48S 002-03-42E", "S10 18.8 E2 3.7"].map((text) => {
      const place = readPlace(text, SCENE);
      return typeof place === "string"
        ? place
        : geodesicDistanceNm(place, latLon(-10.313333333, 2.061666667));
    });
    expect(written.every((awayNm) => typeof awayNm === "number" && awayNm < 1e-5)).toBe(true);
    expect(readPlace("-10.25, 2.5", SCENE)).toEqual(latLon(-10.25, 2.5));
  });

  it.each([
    ["", "Write where: a station's radial and miles, or latitude and longitude."],
    ["HJL 100/10", "No station of this scene has the ident HJL; its stations are TXJ."],
    ["TXJ 400/18", 'The radial in "TXJ 400/18" is 400; it must be 001 to 360.'],
    ["TXJ 246/400", "400 NM is too far; a position is at most 300 NM from its station."],
    ["95N 2E", "Latitude 95N lies outside 90 S to 90 N."],
  ])("%s is explained in one sentence", (text, sentence) => {
    expect(readPlace(text, SCENE)).toBe(sentence);
  });
});
