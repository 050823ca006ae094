import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread } from "../../../test/spread.ts";
import { geodesicDistanceNm, latLon, magneticDeg, stationDeg, trueDeg } from "../../earth/index.ts";
import { placeOfPoint, type Station } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";
import {
  blankReflector,
  checkReflector,
  formOfReflector,
  reflectorPlace,
  stationNamedIn,
} from "./reflector-form.ts";

const ABC: Station = {
  ident: "ABC",
  name: "Abcot",
  kind: "VOR",
  frequencyMhz: 115.6,
  dmeChannel: null,
  position: latLon(-10, 2),
  elevationFt: 0,
  dmeSite: null,
  declinationDeg: -9,
  declinationEstimated: false,
  vorClass: null,
  dmeClass: null,
  status: "on-air",
  eirpW: 200,
};
const SCENE: Scene = {
  title: "",
  about: "",
  date: "2026-07-01",
  stations: [ABC],
  land: null,
  aircraft: { position: latLon(-10.3, 2), heading: magneticDeg(90), altitudeFt: 3500, tasKt: 100 },
  wind: { from: trueDeg(0), speedKt: 0 },
  receivers: [],
  signal: null,
  covers: [],
  ask: "",
};
const blank = blankReflector("ABC");
const checked = (form: Partial<typeof blank>) => checkReflector({ ...blank, ...form }, SCENE, null);
const faultsOf = (form: Partial<typeof blank>) => {
  const read = checked(form);
  return read.ok ? {} : read.faults;
};

describe("a reflector's place", () => {
  it("is told from its station by radial and miles, as it is typed", () => {
    const hangar = { ident: "ABC", position: placeOfPoint({ radial: stationDeg(300), distanceNm: 2 }, ABC) };
    expect(reflectorPlace(hangar, [ABC])).toBe("ABC 300/2");
    expect(reflectorPlace({ ...hangar, position: ABC.position }, [ABC])).toBe("ABC 360/0");
    expect(reflectorPlace({ ...hangar, ident: "XYZ" }, [ABC])).toMatch(/^09°5\d\.\d′S 001°5\d\.\d′E$/);
  });

  it("comes back from its words within half a degree and half a tenth of a mile", () => {
    fc.assert(
      fc.property(spread(0, 360), spread(0.1, 200), (radial, distanceNm) => {
        const position = placeOfPoint({ radial: stationDeg(radial % 360), distanceNm }, ABC);
        const read = checked({ at: reflectorPlace({ ident: "ABC", position }, [ABC]) });
        const again = read.ok ? read.reflector.position : latLon(0, 0);
        const sidewaysNm = (distanceNm + 0.05) * Math.sin((0.5 * Math.PI) / 180);
        expect(geodesicDistanceNm(again, position)).toBeLessThanOrEqual(Math.hypot(sidewaysNm, 0.05) * 1.01);
      }),
    );
  });

  it("that was not retyped keeps its digits", () => {
    const before = { ident: "ABC", position: latLon(-9.98765432, 1.97654321), amplitude: 0.2 };
    const form = { ...formOfReflector(before, [ABC]), amplitude: "0.4" };
    const read = checkReflector(form, SCENE, before);
    expect(read).toEqual({ ok: true, reflector: { ...before, amplitude: 0.4 } });
  });

  it("names the station it is counted from, where that can be thrown back", () => {
    expect(stationNamedIn("abc 300/2", ["ABC"])).toBe("ABC");
    expect(stationNamedIn("ABC", ["ABC"])).toBeNull();
    expect(stationNamedIn("VVV 300/2", ["ABC"])).toBeNull();
    expect(stationNamedIn("10°S 002°E", ["ABC"])).toBeNull();
  });
});

describe("what is wrong with a reflector", () => {
  it("is said in one sentence for each field, with what would be right", () => {
    expect(faultsOf({ at: "ABC 300/2" })).toEqual({});
    expect(faultsOf({ at: "ABC 300/2", amplitude: ",5" })).toEqual({});
    expect(faultsOf({ at: " ", amplitude: "" })).toEqual({
      at: "Where it stands is missing; write a station's radial and miles such as TXJ 300/2, or latitude and longitude.",
      amplitude: "Nothing will not do: an amplitude is 0 to 0.9 of the direct signal, such as 0.1.",
    });
    expect(faultsOf({ at: "ABD 300/2", amplitude: "-0.1" })).toEqual({
      at: "No station of this scene has the ident ABD; did you mean ABC?",
      amplitude: "“-0.1” will not do: an amplitude is 0 to 0.9 of the direct signal, such as 0.1.",
    });
    expect(faultsOf({ at: "yonder", amplitude: "0.91" })).toEqual({
      at: '"yonder" is not a position; write it like 10°18.8′S 002°03.7′E or -10.313, 2.062.',
      amplitude: "“0.91” will not do: an amplitude is 0 to 0.9 of the direct signal, such as 0.1.",
    });
  });
});
