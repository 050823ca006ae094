/** A picture as a document of one page, still lines and letters: the typesetter takes the SVG as it is. */

import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import { fontFolder } from "./picture-fonts.ts";

/** Points in a CSS pixel: 72 to the inch against 96. */
const PT_PER_PX = 0.75;
const PICTURE = "/picture.svg";

/** The PDF of an SVG on a page of its size in pixels. Throws Error with the typesetter's words when it refuses. */
export function pdfFromSvg(
  svg: string,
  size: { readonly widthPx: number; readonly heightPx: number },
  title: string,
): Uint8Array {
  const compiler = NodeCompiler.create({ workspace: "/", fontArgs: [{ fontPaths: [fontFolder()] }] });
  compiler.mapShadow(PICTURE, Buffer.from(svg));
  const compiled = compiler.compile({
    mainFileContent: [
      `#set document(title: sys.inputs.title, date: none)`,
      `#set page(width: ${size.widthPx * PT_PER_PX}pt, height: ${size.heightPx * PT_PER_PX}pt, margin: 0pt, fill: none)`,
      `#image("${PICTURE}", width: 100%, height: 100%, alt: sys.inputs.title)`,
    ].join("\n"),
    inputs: { title },
  });
  const { result } = compiled;
  if (result === null) {
    const said = compiled.takeDiagnostics()?.shortDiagnostics ?? [];
    throw new Error(`the typesetter refused the picture: ${JSON.stringify(said)}`);
  }
  return compiler.pdf(result);
}
