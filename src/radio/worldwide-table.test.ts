import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { variation } from "../earth/index.ts";
import { serviceOf } from "./channel-plan.ts";
import { readDmeChannel } from "./dme-pairing.ts";
import { givesBearing, type Station } from "./station.ts";
import { type NotTheTable, readWorldwideTable, type WorldwideTable } from "./worldwide-table.ts";

const DATE = "2026-06-01";
const EXCERPT = readFileSync(new URL("../../test/data/navaids-excerpt.csv", import.meta.url), "utf8");
const [HEADER = "", ...BODY] = EXCERPT.trimEnd().split("\n");

function read(text: string, date = DATE): WorldwideTable {
  const table = readWorldwideTable(text, date);
  if (table.kind !== "table") throw new Error(table.message);
  return table;
}
const readRows = (...rows: string[]): WorldwideTable => read([HEADER, ...rows].join("\n"));
const rowOf = (ident: string, type: string): string => {
  const row = BODY.find((line) => line.includes(`"${ident}"`) && line.includes(`"${type}"`));
  if (row === undefined) throw new Error(`no ${type} ${ident} in the excerpt`);
  return row;
};
const station = (ident: string, table = read(EXCERPT)): Station => {
  const found = table.stations.find((one) => one.ident === ident);
  if (found === undefined) throw new Error(`${ident} was not read`);
  return found;
};

/** A made-up row, its values by column; the rest empty. */
function row(values: Record<string, string | number>): string {
  const columns = HEADER.replaceAll('"', "").split(",");
  const given = {
    id: 1,
    ident: "TXJ",
    name: "Teltrax",
    type: "VOR-DME",
    frequency_khz: 115600,
    latitude_deg: -10,
    longitude_deg: 2,
    elevation_ft: 300,
    ...values,
  } as Record<string, string | number>;
  return columns.map((column) => given[column] ?? "").join(",");
}

describe("the excerpt of the worldwide table", () => {
  const table = read(EXCERPT);

  test("loses no row: stations, beacons left out and skipped rows are all there are", () => {
    const { counts } = table;
    expect(counts.rows).toBe(BODY.length);
    expect(table.stations.length + counts.ndb + table.skipped.length).toBe(BODY.length);
    expect(Object.values(counts.byKind).reduce((sum, count) => sum + count, 0)).toBe(table.stations.length);
    expect(counts).toMatchObject({ ndb: 2, ndbDme: 2 });
  });

  test("gives only stations a receiver can tune, bearings on VOR channels, distances on the paired channel", () => {
    for (const one of table.stations) {
      expect(one.ident).toMatch(/^[A-Z0-9]{1,4}$/);
      if (givesBearing(one)) expect(serviceOf(one.frequencyMhz)).toBe("vor");
      if (one.dmeChannel !== null) {
        const channel = readDmeChannel(one.dmeChannel);
        expect(channel).toMatchObject({ kind: "read", channel: { vhfMhz: one.frequencyMhz } });
      }
      expect(one.declinationDeg).toBeGreaterThanOrEqual(-180);
      expect(one.declinationDeg).toBeLessThanOrEqual(180);
      // The table tells power and airway use, not the published service volume.
      expect([one.vorClass, one.dmeClass]).toEqual([null, null]);
    }
  });

  test("reads a plain row whole", () => {
    expect(station("ZZV")).toEqual({
      ident: "ZZV",
      name: "Zanesville",
      kind: "VOR-DME",
      frequencyMhz: 111.4,
      dmeChannel: "51X",
      position: { latDeg: 39.94089889526367, lonDeg: -81.8926010131836 },
      elevationFt: 900,
      dmeSite: null,
      declinationDeg: -6.001,
      declinationEstimated: false,
      vorClass: null,
      dmeClass: null,
      status: "on-air",
      eirpW: 200,
    });
    expect(station("CTL").name).toBe("Châtillon-sur-Marne");
  });

  test("keeps a declination of zero: Thule's radials are counted from true north", () => {
    expect(station("THT")).toMatchObject({ declinationDeg: 0, declinationEstimated: false });
  });

  test("puts the model's variation on the date where the declination is missing, and says so", () => {
    const ayaguz = station("AGZ");
    const { position, elevationFt } = ayaguz;
    expect(ayaguz.declinationEstimated).toBe(true);
    expect(ayaguz.declinationDeg).toBe(
      variation({ position, altitudeFt: elevationFt, date: DATE }).variationDeg,
    );
    expect(station("AGZ", read(EXCERPT, "2020-06-01")).declinationDeg).not.toBe(ayaguz.declinationDeg);
    expect(table.counts.declinationEstimated).toBe(
      table.stations.filter((one) => one.declinationEstimated).length,
    );
    expect(table.declinationModel.dateInside).toBe(true);
    expect(read(EXCERPT, "2050-01-01").declinationModel.dateInside).toBe(false);
  });

  test("gives a DME on a mast of its own its own site, and one beside the VOR none", () => {
    expect(station("KOK").dmeSite).toEqual({
      position: { latDeg: 51.0992, lonDeg: 2.65472 },
      elevationFt: 20,
    });
    expect(station("LB").dmeSite).toBeNull();
    // A hundredth of a minute apart is the same mast written with other decimals; a tenth is not.
    const near = readRows(row({ dme_latitude_deg: -10.0002, dme_longitude_deg: 2 }));
    expect(near.stations[0]?.dmeSite).toBeNull();
    const apart = readRows(row({ dme_latitude_deg: -10.002, dme_longitude_deg: 2 }));
    expect(apart.stations[0]?.dmeSite).toEqual({
      position: { latDeg: -10.002, lonDeg: 2 },
      elevationFt: 300,
    });
  });

  test("gives the channel by the frequency where the row names none", () => {
    expect(station("AGJ")).toMatchObject({ kind: "VORTAC", frequencyMhz: 112.5, dmeChannel: "72X" });
  });

  test("keeps a VOR whose DME answers on another channel, without distance and with a note", () => {
    expect(station("BOA")).toMatchObject({
      kind: "VOR",
      frequencyMhz: 117.1,
      dmeChannel: null,
      dmeSite: null,
    });
    const line = BODY.indexOf(rowOf("BOA", "VOR-DME")) + 2;
    expect(table.notes).toContainEqual({
      line,
      ident: "BOA",
      note: "its DME channel 59X goes with 112.20, not with 117.10; kept as a VOR without distance",
    });
  });

  test("keeps DME and TACAN alone, on localizer frequencies too, and the DME of a beacon at its own place", () => {
    expect(station("1CD")).toMatchObject({ kind: "DME", frequencyMhz: 111.45, dmeChannel: "51Y" });
    expect(station("ULT")).toMatchObject({ kind: "TACAN", frequencyMhz: 110.7, dmeChannel: "44X" });
    expect(station("2S")).toMatchObject({
      kind: "DME",
      frequencyMhz: 110.2,
      dmeChannel: "39X",
      position: { latDeg: 55.3958, lonDeg: -116.482 },
    });
  });

  test("lists each row it cannot use with its line and the reason", () => {
    const reasons = table.skipped.map(({ line, reason }) => [BODY[line - 2]?.split(",")[2], reason]);
    expect(reasons).toEqual([
      ['"AFM"', "channel 67X has no VHF partner, so a VOR receiver cannot tune it"],
      ['"AML"', "channel 61X has no VHF partner, so a VOR receiver cannot tune it"],
      ['"BEG"', "11.495 is outside the navigation band, 108.00 to 117.95 MHz"],
      ['"DZF"', "frequency 112.50 and DME channel 115X (paired with 116.80) contradict each other"],
      ['"GCO"', "frequency 108.25 and DME channel 86X (paired with 113.90) contradict each other"],
      [
        '"KVY"',
        "111.55 is a localizer channel; VOR channels below 112 MHz have an even tenth, the nearest are 111.45 and 111.60",
      ],
      ['"MQD"', "frequency_khz -1 is not a frequency in kHz"],
      ['"NJW"', "channel 61Y has no VHF partner, so a VOR receiver cannot tune it"],
    ]);
  });

  test("says where it took sea level for a missing elevation", () => {
    expect(station("AGZ").elevationFt).toBe(0);
    expect(table.notes).toContainEqual(
      expect.objectContaining({ ident: "AGZ", note: "no elevation in the table; sea level assumed" }),
    );
    expect(station("AKT").elevationFt).toBe(-10);
  });
});

describe("a broken row", () => {
  const GOOD = row({ id: 99, ident: "HJL" });
  test.each<[string, Record<string, string | number>, string]>([
    ["no coordinates", { latitude_deg: "", longitude_deg: "" }, "latitude and longitude are missing"],
    ["no longitude", { longitude_deg: "" }, "longitude_deg is missing"],
    ["a latitude of 95", { latitude_deg: 95 }, "latitude_deg 95 lies outside -90 to 90"],
    ["a longitude of 181", { longitude_deg: 181 }, "longitude_deg 181 lies outside -180 to 180"],
    ["a word for a number", { latitude_deg: "ten" }, 'latitude_deg "ten" is not a number'],
    ["a number with a tail", { elevation_ft: "300ft" }, 'elevation_ft "300ft" is not a number'],
    ["a hexadecimal number", { elevation_ft: "0x1f" }, 'elevation_ft "0x1f" is not a number'],
    ["an elevation in orbit", { elevation_ft: 99999 }, "elevation_ft 99999 lies outside -1500 to 30000"],
    ["no frequency", { frequency_khz: "" }, "frequency_khz is missing"],
    ["a frequency in MHz", { frequency_khz: 115.6 }, "0.1156 is outside the navigation band"],
    ["a frequency off the steps", { frequency_khz: 115625 }, "115.625 is not on the 50 kHz steps"],
    ["no ident", { ident: "" }, 'ident "" is not one to four letters or figures'],
    ["a long ident", { ident: "TXJTXJ" }, 'ident "TXJTXJ" is not one to four'],
    ["an unknown type", { type: "ILS" }, 'type "ILS" is none of VOR'],
    ["a wrong channel", { dme_channel: "127X" }, '"127X" is not a DME channel'],
    [
      "a declination of 200",
      { slaved_variation_deg: 200 },
      "slaved_variation_deg 200 lies outside -180 to 180",
    ],
    ["half a DME site", { dme_latitude_deg: -10 }, "dme_longitude_deg is missing"],
    ["a DME at the antipodes", { dme_latitude_deg: 10, dme_longitude_deg: 2 }, "NM away from it"],
    ["a DME of no channel", { type: "DME", frequency_khz: "" }, "neither a DME channel nor its frequency"],
  ])("with %s is listed with its line, and the rest is read", (_case, values, reason) => {
    const { stations, skipped } = readRows(row({ id: 98, ident: "AAA" }), row(values), GOOD);
    expect(stations.map((one) => one.ident)).toEqual(["AAA", "HJL"]);
    expect(skipped).toEqual([{ line: 3, reason: expect.stringContaining(reason) }]);
  });

  test("of another number of values, an id used twice and an open quote are each one line", () => {
    const { stations, skipped, counts } = readRows(
      GOOD,
      "1,TXJ,too,short",
      GOOD,
      row({ id: 3, name: '"Teltrax' }),
      row({ id: 4, ident: "BBB" }),
    );
    expect(stations.map((one) => one.ident)).toEqual(["HJL", "BBB"]);
    expect(skipped).toEqual([
      { line: 3, reason: "the row has 4 values, the header names 20" },
      { line: 4, reason: "id 99 is already used on line 2" },
      { line: 5, reason: expect.stringContaining("quotation mark") },
    ]);
    expect(counts.rows).toBe(5);
  });
});

describe("the file as a whole", () => {
  test.each([
    ["", "worldwide-table-empty", "the file holds no rows"],
    ["scene: 1\ntitle: none\n", "worldwide-table-header", "does not name any of its columns"],
    [
      "id,ident,name,type\n1,TXJ,Teltrax,VOR\n",
      "worldwide-table-header",
      "does not name frequency_khz, latitude_deg",
    ],
    ["\0\x01\x02PNG", "worldwide-table-header", "this is not the worldwide navaid table"],
  ])("%j is one fault", (text, code, message) => {
    const fault = readWorldwideTable(text, DATE) as NotTheTable;
    expect(fault).toEqual({
      kind: "not-the-table",
      code,
      line: 1,
      column: 1,
      message: expect.stringContaining(message),
    });
  });

  test("is the same with other line ends, a byte order mark, and columns in another order", () => {
    const table = read(EXCERPT);
    expect(read(`\ufeff${EXCERPT.replaceAll("\n", "\r\n")}`)).toEqual(table);
    const turned = [HEADER, ...BODY].map(
      (line) => `${line.match(/^[^,]*,(.*)$/)?.[1]},${line.split(",")[0]}`,
    );
    expect(read(turned.join("\n"))).toEqual(table);
  });

  test("of 11,000 rows is read in well under a second", () => {
    const copies = Array.from({ length: Math.ceil(11_000 / BODY.length) }, (_, copy) =>
      BODY.map((line) => line.replace(/^\d+/, (id) => `${copy}${id}`)),
    ).flat();
    const text = [HEADER, ...copies].join("\n");
    // Work of the processor, not the clock's time, and the best of three: other work shares the machine.
    const times = [1, 2, 3].map(() => {
      const started = process.cpuUsage();
      expect(read(text).counts.rows).toBe(copies.length);
      const { user, system } = process.cpuUsage(started);
      return (user + system) / 1000;
    });
    expect(Math.min(...times)).toBeLessThan(1000);
  });

  test("wants a date of the calendar", () => {
    expect(() => readWorldwideTable(EXCERPT, "2026-02-30")).toThrow(RangeError);
  });
});
