/**
 * Painting a plate on the graphics card (WebGL 2): the plate lies there as a texture of whole numbers, the shades and the inks as two
 * small ones, and a turn of the course sends nothing but a new table of 64 kB.
 */

import {
  BY_RECEPTION,
  EDGE_INK,
  EDGES,
  FIX_INKS,
  INK_COUNT,
  printedSize,
  RECEPTION_INKS,
  shadeTable,
  TILE_CELLS,
} from "../../draw/index.ts";
import type { Painter } from "./painter.ts";

const TABLE_SIDE = 256;

const CORNERS = `#version 300 es
void main() {
  // One triangle that covers the whole canvas.
  gl_Position = vec4(vec2(gl_VertexID & 1, gl_VertexID >> 1) * 4.0 - 1.0, 0.0, 1.0);
}`;

const PIXELS = `#version 300 es
precision highp float;
precision highp int;
uniform highp usampler2D plate;
uniform highp usampler2D shades;
uniform sampler2D inks;
uniform int height;
uniform int shift;
uniform uint edges;
uniform bool isShaded;
uniform bool isFix;
out vec4 colour;
void main() {
  ivec2 at = ivec2(int(gl_FragCoord.x), height - 1 - int(gl_FragCoord.y));
  uint cell = texelFetch(plate, at >> shift, 0).r;
  int bin = int(cell & 0xffffu);
  uint ink = ${BY_RECEPTION}u;
  if (isShaded) ink = texelFetch(shades, ivec2(bin & ${TABLE_SIDE - 1}, bin >> 8), 0).r;
  if (ink == ${BY_RECEPTION}u)
    ink = isFix ? ${FIX_INKS}u + ((cell >> 24) & 15u) : ${RECEPTION_INKS}u + ((cell >> 16) & 255u);
  if ((cell & edges) != 0u) ink = ${EDGE_INK}u;
  colour = texelFetch(inks, ivec2(((at.y & 7) << 3) | (at.x & 7), int(ink)), 0);
}`;

/** Null where there is no WebGL 2, or only one that the processor imitates. */
export function paintByCard(canvas: HTMLCanvasElement): Painter | null {
  // Asked of a canvas of its own: one that has been given to WebGL cannot be painted by hand any more.
  if (!hasCard()) return null;
  const gl = canvas.getContext("webgl2", { alpha: false, antialias: false, depth: false });
  if (gl === null) return null;
  const program = programOf(gl);
  gl.useProgram(program);
  gl.bindVertexArray(gl.createVertexArray());
  const uniform = (name: string) => gl.getUniformLocation(program, name);
  const places = {
    height: uniform("height"),
    shift: uniform("shift"),
    edges: uniform("edges"),
    isShaded: uniform("isShaded"),
    isFix: uniform("isFix"),
  };
  ["plate", "shades", "inks"].forEach((name, unit) => {
    gl.uniform1i(uniform(name), unit);
    gl.activeTexture(gl.TEXTURE0 + unit);
    gl.bindTexture(gl.TEXTURE_2D, gl.createTexture());
    for (const filter of [gl.TEXTURE_MIN_FILTER, gl.TEXTURE_MAG_FILTER])
      gl.texParameteri(gl.TEXTURE_2D, filter, gl.NEAREST);
    for (const wrap of [gl.TEXTURE_WRAP_S, gl.TEXTURE_WRAP_T])
      gl.texParameteri(gl.TEXTURE_2D, wrap, gl.CLAMP_TO_EDGE);
  });
  gl.pixelStorei(gl.UNPACK_ALIGNMENT, 1);
  const table = shadeTable();
  let hasPlate = false;
  return {
    name: "card",
    setInks: (inks) => {
      gl.activeTexture(gl.TEXTURE2);
      gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA8, TILE_CELLS, INK_COUNT, 0, gl.RGBA, gl.UNSIGNED_BYTE, inks);
    },
    setPlate: (next, pixelsPerCell) => {
      const { columns, rows, cells } = next;
      const { width, height } = printedSize(next, pixelsPerCell);
      if (canvas.width !== width) canvas.width = width;
      if (canvas.height !== height) canvas.height = height;
      gl.viewport(0, 0, width, height);
      gl.activeTexture(gl.TEXTURE0);
      gl.texImage2D(gl.TEXTURE_2D, 0, gl.R32UI, columns, rows, 0, gl.RED_INTEGER, gl.UNSIGNED_INT, cells);
      gl.uniform1i(places.height, height);
      gl.uniform1i(places.shift, Math.log2(pixelsPerCell));
      hasPlate = true;
    },
    paint: (look) => {
      if (!hasPlate || gl.isContextLost()) return;
      const isShaded = look.kind === "needle" || look.kind === "to-from";
      if (isShaded) {
        table.turnTo(look);
        gl.activeTexture(gl.TEXTURE1);
        gl.texImage2D(
          gl.TEXTURE_2D,
          0,
          gl.R8UI,
          TABLE_SIDE,
          TABLE_SIDE,
          0,
          gl.RED_INTEGER,
          gl.UNSIGNED_BYTE,
          table.shades,
        );
      }
      gl.uniform1ui(places.edges, EDGES[look.kind]);
      gl.uniform1i(places.isShaded, Number(isShaded));
      gl.uniform1i(places.isFix, Number(look.kind === "fix"));
      gl.drawArrays(gl.TRIANGLES, 0, 3);
    },
  };
}

/** Names of drivers that have no card behind them. */
const IMITATIONS = /swiftshader|llvmpipe|softpipe|software|basic render/i;

function hasCard(): boolean {
  const gl = document.createElement("canvas").getContext("webgl2", { failIfMajorPerformanceCaveat: true });
  if (gl === null) return false;
  const info = gl.getExtension("WEBGL_debug_renderer_info");
  const driver = String(gl.getParameter(info === null ? gl.RENDERER : info.UNMASKED_RENDERER_WEBGL));
  gl.getExtension("WEBGL_lose_context")?.loseContext();
  return !IMITATIONS.test(driver);
}

function programOf(gl: WebGL2RenderingContext): WebGLProgram {
  const program = gl.createProgram();
  for (const [kind, source] of [
    [gl.VERTEX_SHADER, CORNERS],
    [gl.FRAGMENT_SHADER, PIXELS],
  ] as const) {
    const shader = gl.createShader(kind);
    if (shader === null) throw new Error("the graphics card takes no shader");
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(program, shader);
  }
  gl.linkProgram(program);
  if (gl.getProgramParameter(program, gl.LINK_STATUS) !== true && !gl.isContextLost())
    throw new Error(`the field's shaders do not link: ${gl.getProgramInfoLog(program)}`);
  return program;
}
