// Draws pictures as pixels in a process of its own, for the rasteriser ends its process where it gives up.
// Takes a JSON list of SVGs on stdin, and says the number of each before it is drawn and "done" after the last.

import { text } from "node:stream/consumers";
import { Resvg } from "@resvg/resvg-js";

const fontFiles = process.argv.slice(2);
for (const [index, svg] of JSON.parse(await text(process.stdin)).entries()) {
  process.stdout.write(`${index} `);
  new Resvg(svg, { font: { loadSystemFonts: false, fontFiles } }).render();
}
process.stdout.write("done");
