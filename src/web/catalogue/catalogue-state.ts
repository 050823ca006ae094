/**
 * The lists that stations are looked up in: the demo's isles, always; and the catalogue that a person gave, kept in this browser until
 * he has it forgotten. Everything is loaded when it is first asked for.
 */

import { computed, type ReadonlySignal, signal } from "@preact/signals";
import type { Station } from "../../radio/index.ts";
import { largestBytes, tooBigFault } from "../../scene/index.ts";
import { eachIdentOnce } from "../state/station-actions.ts";
import type { CatalogueTask } from "./catalogue-worker.ts";
import { forgetFiles, keepFiles, keptFiles } from "./kept-files.ts";
import type { Catalogue, CatalogueFile, CatalogueRead } from "./read-catalogue.ts";
import { joinedLists, stationKey } from "./station-lists.ts";

interface ReadCatalogue {
  readonly catalogue: Catalogue;
  /** It will still be here at the next visit. */
  readonly kept: boolean;
}

interface CatalogueFault {
  readonly name: string;
  /** What is wrong with the file given last, one sentence each. */
  readonly lines: readonly string[];
}

const read = signal<ReadCatalogue | null>(null);
const reading = signal<string | null>(null);
const fault = signal<CatalogueFault | null>(null);
/** As every scene of the demo has them: one makes a station a TACAN, another silences it. */
const demo = signal<readonly Station[]>([]);
const NONE: readonly Station[] = [];

/** The catalogue that was read last and well. */
export const openCatalogue: ReadonlySignal<ReadCatalogue | null> = read;
/** The name of the file that is being read. */
export const catalogueBeingRead: ReadonlySignal<string | null> = reading;
export const catalogueFault: ReadonlySignal<CatalogueFault | null> = fault;

/** Every station of the lists, each once; the isles' as the demo's first scenes have them. */
export const publishedStations: ReadonlySignal<readonly Station[]> = computed(() =>
  joinedLists(eachIdentOnce(demo.value), read.value?.catalogue.stations ?? NONE),
);
/** By which a scene's station is known for a published one. */
export const publishedKeys: ReadonlySignal<ReadonlySet<string>> = computed(
  () => new Set([...demo.value, ...publishedStations.value].map(stationKey)),
);

const loaded = signal(false);
/** Whether the lists are all here; until then nobody can say which stations of a scene are in none. */
export const listsLoaded: ReadonlySignal<boolean> = loaded;

let asked: Promise<void> | null = null;

/** Loads the demo's stations and the catalogue that is kept, once. `date` (ISO): for missing declinations. */
export function loadLists(date: string): Promise<void> {
  asked ??= Promise.all([loadDemo(), loadKept(date)]).then(() => {
    loaded.value = true;
  });
  return asked;
}

async function loadDemo(): Promise<void> {
  const { DEMO_SCENES } = await import("../state/demo-scenes.ts");
  demo.value = joinedLists(...DEMO_SCENES.map(({ scene }) => scene.stations));
}

async function loadKept(date: string): Promise<void> {
  const files = await keptFiles();
  if (files === null || read.value !== null) return;
  // A copy that can no longer be read is as good as none; the file itself is still where it came from.
  const outcome = await readInWorker(files, date).catch(() => null);
  if (outcome?.ok && read.value === null) read.value = { catalogue: outcome.catalogue, kept: true };
}

/** Reads the files that a person gave and keeps them; on a fault the catalogue before stays. */
export async function takeCatalogue(given: readonly File[], date: string): Promise<void> {
  const [first] = given;
  if (first === undefined) return;
  fault.value = null;
  const tooBig = given.find((file) => file.size > largestBytes(file.name));
  if (tooBig !== undefined) {
    fault.value = { name: tooBig.name, lines: [tooBigFault(tooBig.name, tooBig.size).message] };
    return;
  }
  reading.value = first.name;
  try {
    const files = await Promise.all(
      given.map(async (file) => ({ name: file.name, bytes: await file.arrayBuffer() })),
    );
    const outcome = await readInWorker(files, date);
    if (outcome.ok) read.value = { catalogue: outcome.catalogue, kept: await keepFiles(files) };
    else fault.value = outcome;
  } catch {
    // The file went away, or the browser gave up on the work: nothing was changed.
    fault.value = { name: first.name, lines: ["the browser could not read it; try opening it again"] };
  } finally {
    reading.value = null;
  }
}

/** Puts the fault away. */
export function clearCatalogueFault(): void {
  fault.value = null;
}

export async function forgetCatalogue(): Promise<void> {
  fault.value = null;
  read.value = null;
  await forgetFiles();
}

function readInWorker(files: readonly CatalogueFile[], date: string): Promise<CatalogueRead> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL("./catalogue-worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<CatalogueRead>) => {
      worker.terminate();
      resolve(data);
    };
    worker.onerror = (event) => {
      worker.terminate();
      reject(new Error(event.message));
    };
    const task: CatalogueTask = { files, date };
    worker.postMessage(task);
  });
}
