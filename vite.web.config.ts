import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";
import { faultLine, type Open, readScene } from "./src/scene/index.ts";

const DEMO = fileURLToPath(new URL("./demo", import.meta.url));
/** What draws whole figures, and nothing that is on the table. */
const FIGURE_ONLY = new RegExp(
  [
    "preact-render-to-string",
    "/draw/figure/(signal-figure|figure|figure-svg|figure-sentence|layout-figure|arrange-views|legibility)\\.tsx?$",
    "/draw/sheet/",
    "/draw/reasons/(reasons|reasons-layout|chain-item)\\.tsx?$",
    "/draw/faces/(panel|panel-layout|panel-foot|covered-line|(course|distance|frequency)-readout)\\.tsx?$",
  ].join("|"),
);
/** The signal's pictures beside the two waves, and what they are measured with. */
const SIGNAL_PICTURES =
  /\/draw\/signal\/(?!index|ident-keying)|\/web\/signal\/(signal-pictures|picture-view|picture-places|hear-parts|part-speaker|lighthouse-)|\/radio\/heard-parts|\/node_modules\/fft\.js\//;
/** The plot of what needle and DME have shown: it stands behind the motion bar's "More". */
const HISTORY_PLOT = /\/draw\/plots\/(needle-history|history-|flag-row)/;
/** What makes and prints a needle field: its choice alone is needed while the chart wears none. */
const FIELD_ONLY =
  /\/draw\/field\/(?!index|field-choice|field-names|chart-field|field-image)|\/panel\/(needle-field|cross-fix)/;
/** What makes a still picture of one. */
const FIELD_PICTURE = /\/draw\/field\/(chart-field|field-image)|\/node_modules\/(fast-png|fflate|iobuffer)\//;
/** The engine and what it draws, as the first look needs it: in one piece, since many small ones compress worse. */
const ENGINE = new RegExp(
  [
    "/src/earth/(?!speed-time-distance|two-line-fix|turn\\.)",
    "/src/radio/(?!csv-rows|dme-pairing|ident-sound|significant-point|worldwide-)",
    "/src/panel/(?!course-for-radial)",
    "/src/(reason|draw)/",
    "/node_modules/(geographiclib-geodesic|geomagnetism|d3-geo|d3-array|pure-rand)/",
  ].join("|"),
);
const SOURCES = /[\\/]src[\\/](earth|radio|panel|scene|reason|practice|draw)[\\/]/;

/**
 * `virtual:demo-scenes`: the demo's scenes, read by the very reader that the bench uses, as JSON. The first load then needs neither
 * that reader nor its YAML parser, and every scene can be drawn at once. What scenes share stands once.
 */
function demoScenes(): Plugin {
  const id = "virtual:demo-scenes";
  return {
    name: "demo-scenes",
    resolveId: (wanted) => (wanted === id ? `\0${id}` : null),
    load(wanted) {
      if (wanted !== `\0${id}`) return null;
      const text = (path: string) => {
        this.addWatchFile(join(DEMO, path));
        return readFileSync(join(DEMO, path), "utf8");
      };
      const open: Open = (path) => {
        const beside = path.replace("../", "");
        return { path: beside, text: text(beside) };
      };
      const shared: unknown[] = [];
      const numbers = new Map<string, number>();
      const share = (value: unknown): number => {
        const json = JSON.stringify(value);
        const number = numbers.get(json) ?? shared.push(value) - 1;
        numbers.set(json, number);
        return number;
      };
      const entries = readdirSync(join(DEMO, "scenes"))
        .sort()
        .map((file) => {
          const path = `scenes/${file}`;
          const read = readScene(text(path), { path, open });
          if (!read.ok) throw new Error(read.faults.map(faultLine).join("\n"));
          const { scene } = read;
          const [land, stations] = [share(scene.land), scene.stations.map(share)];
          return { key: file.replace(/\.yaml$/, ""), scene: { ...scene, land, stations } };
        });
      const json = JSON.stringify({ shared, entries });
      return `export const DEMO = JSON.parse(${JSON.stringify(json)});`;
    },
  };
}

/** `service-worker.js` beside the page, with the list of all that was built and its digest, so that the bench opens offline. */
function serviceWorker(): Plugin {
  const source = fileURLToPath(new URL("./src/web/offline/service-worker.js", import.meta.url));
  return {
    name: "service-worker",
    apply: "build",
    enforce: "post",
    generateBundle(_options, bundle) {
      const files = [
        "/",
        ...Object.keys(bundle)
          .filter((name) => name !== "index.html")
          .sort()
          .map((name) => `/${name}`),
      ];
      const page = bundle["index.html"];
      const digest = createHash("sha256").update(
        JSON.stringify([files, page?.type === "asset" ? page.source : ""]),
      );
      const text = readFileSync(source, "utf8")
        .replace("__FILES__", JSON.stringify(files))
        .replace("__DIGEST__", digest.digest("hex").slice(0, 12));
      this.emitFile({ type: "asset", fileName: "service-worker.js", source: text });
    },
  };
}

/** The bench, for browsers: file names carry their content's hash, so that they may be kept for ever. */
export default defineConfig({
  root: "src/web",
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  plugins: [demoScenes(), serviceWorker()],
  build: {
    target: "es2022",
    outDir: "../../dist/web",
    emptyOutDir: true,
    assetsDir: "assets",
    // The content security policy takes no data: addresses for scripts, styles and fonts.
    assetsInlineLimit: 0,
    reportCompressedSize: false,
    // The engine's files do nothing when loaded, so that what only a reader or an export needs stays out of the first load.
    rolldownOptions: {
      treeshake: { moduleSideEffects: (id) => !SOURCES.test(id) },
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [
            { name: "figure", test: FIGURE_ONLY },
            { name: "signal-pictures", test: SIGNAL_PICTURES },
            { name: "history-plot", test: HISTORY_PLOT },
            { name: "field", test: FIELD_ONLY },
            { name: "field-picture", test: FIELD_PICTURE },
            { name: "engine", test: ENGINE },
          ],
        },
      },
    },
  },
});
