/** The demo isles of the package, which problems are set on unless other stations are given. */

import { type LinkWorld, readLand, readStations } from "../scene/index.ts";
import { faultsOf } from "./faults.ts";
import { packageFile } from "./package-files.ts";
import { openBeside, operandText } from "./text-files.ts";

/** Stations and land of the isles. Throws InputFault where the package's own files cannot be read. */
export async function readIsles(): Promise<LinkWorld> {
  const [stationsPath, landPath] = ["demo/ostrelle.stations.yaml", "demo/ostrelle.land.yaml"].map(
    packageFile,
  );
  const stations = readStations(await operandText(stationsPath ?? ""), {
    path: stationsPath ?? "",
    open: openBeside,
    // No declination of theirs is estimated.
    date: "2026-07-01",
  });
  if (!stations.ok) throw faultsOf(stations.faults);
  const land = readLand(await operandText(landPath ?? ""), { path: landPath ?? "" });
  if (!land.ok) throw faultsOf(land.faults);
  return { name: "the Ostrelle Isles", stations: stations.stations, land: land.land };
}
