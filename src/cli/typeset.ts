/** A document typeset as a PDF for every reader: tagged, with its letters as letters (PDF/UA-1, ISO 14289-1). */

import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import type { TypstDocument } from "../draw/index.ts";
import { fontFolder } from "./picture-fonts.ts";

/** Throws Error with the typesetter's words when it refuses. */
export function typesetPdf({ main, files }: TypstDocument): Uint8Array {
  const compiler = NodeCompiler.create({ workspace: "/", fontArgs: [{ fontPaths: [fontFolder()] }] });
  for (const [path, text] of files) compiler.mapShadow(path, Buffer.from(text));
  const compiled = compiler.compile({ mainFileContent: main });
  const { result } = compiled;
  if (result === null) {
    const said = compiled.takeDiagnostics()?.shortDiagnostics ?? [];
    throw new Error(`the typesetter refused the sheet: ${JSON.stringify(said)}`);
  }
  return compiler.pdf(result, { pdfStandard: "ua-1" });
}
