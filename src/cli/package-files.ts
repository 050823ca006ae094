/** Where the package's own files lie. The sources and the built files stand equally deep below its folder. */

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const ROOT = new URL("../../", import.meta.url);

/** Absolute path of a file of the package, given from its folder. */
export const packageFile = (path: string): string => fileURLToPath(new URL(path, ROOT));

/** As in package.json. */
export function packageVersion(): string {
  const { version } = JSON.parse(readFileSync(packageFile("package.json"), "utf8")) as { version: string };
  return version;
}
