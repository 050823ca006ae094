/**
 * A scene on the bench as the text of a file. A scene that was read from a text keeps that text: only what changed is changed in it,
 * and comments and order stay. Any other scene is written whole, with its stations and its land, so that the file stands alone.
 */

import type { Station } from "../../radio/index.ts";
import {
  editScene,
  editStations,
  editsBetween,
  faultLine,
  readScene,
  type Scene,
  type SceneEdit,
  writeScene,
} from "../../scene/index.ts";
import { baseName, openOver } from "./open-over.ts";
import type { SceneSource } from "./scene-source.ts";

export type SavedText =
  | {
      readonly ok: true;
      readonly text: string;
      /** What a person should know of the file, one sentence each, lower-case start, no full stop. */
      readonly notes: readonly string[];
    }
  /** The text can no longer be read, so nothing may be written; one sentence each. */
  | { readonly ok: false; readonly lines: readonly string[] };

/** Values are rounded as scene files are. `atHand` holds the texts that are always there, by path. Never throws. */
export function savedText(
  scene: Scene,
  source: SceneSource | null,
  atHand: ReadonlyMap<string, string>,
): SavedText {
  if (source === null) return { ok: true, text: writeScene(scene), notes: wholeNotes(scene) };
  return inPlace(scene, source, atHand);
}

function wholeNotes({ stations, land }: Scene): readonly string[] {
  const parts = [`its ${counted(stations.length, "station")}`, ...(land === null ? [] : ["the land"])];
  return stations.length === 0 && land === null
    ? []
    : [
        `${parts.join(" and ")} ${parts.length + stations.length > 2 ? "are" : "is"} written in the file, so it stands alone`,
      ];
}

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;

function inPlace(scene: Scene, source: SceneSource, atHand: ReadonlyMap<string, string>): SavedText {
  const { path } = source;
  const stations = editStations(
    source.text,
    { before: source.scene.stations, after: scene.stations },
    { path },
  );
  if (!stations.ok) return { ok: false, lines: stations.faults.map(faultLine) };
  const first = editScene(stations.text, editsBetween(source.scene, scene), { path });
  if (!first.ok) return { ok: false, lines: first.faults.map(faultLine) };
  const open = openOver(source.files, atHand);
  // A scene without a date is read on the day it was opened.
  const read = (text: string) => readScene(text, { path, open, today: source.scene.date });
  let text = first.text;
  let again = read(text);
  if (!again.ok) {
    // A place or a frequency said by the ident of a station that is gone.
    const plain = editScene(text, plainEdits(scene), { path });
    if (plain.ok) text = plain.text;
    again = read(text);
  }
  if (!again.ok) return { ok: false, lines: again.faults.map(faultLine) };
  // And where a station moved that a place is counted from.
  const edits = [...orderEdits(again.scene, scene), ...editsBetween(again.scene, scene)];
  const last = editScene(text, edits, { path });
  if (!last.ok) return { ok: false, lines: last.faults.map(faultLine) };
  return { ok: true, text: last.text, notes: notesOn(scene.stations, source.files, stations) };
}

/** The place and the channels without any ident. */
const plainEdits = (scene: Scene): readonly SceneEdit[] => [
  { kind: "position", at: scene.aircraft.position },
  ...scene.receivers.map(
    ({ name, frequencyMhz }): SceneEdit => ({ kind: "receiver", name, change: { frequencyMhz } }),
  ),
];

/** The receivers in their order on the panel: from the first that stands elsewhere they are taken out and written again. */
function orderEdits(read: Scene, scene: Scene): readonly SceneEdit[] {
  const from = scene.receivers.findIndex(({ name }, index) => read.receivers[index]?.name !== name);
  if (from < 0) return [];
  return [
    ...read.receivers.slice(from).map(({ name }): SceneEdit => ({ kind: "remove-receiver", name })),
    ...scene.receivers.slice(from).map((receiver): SceneEdit => ({ kind: "add-receiver", receiver })),
  ];
}

interface Taken {
  readonly takenIn: readonly string[];
  readonly leftOut: readonly string[];
}

function notesOn(
  stations: readonly Station[],
  files: ReadonlyMap<string, string>,
  { takenIn, leftOut }: Taken,
): readonly string[] {
  const names = takenIn.map(baseName).join(" and ");
  const inside =
    takenIn.length === 0
      ? []
      : [
          `stations were changed, so all ${stations.length - leftOut.length} are now written in the scene's own file; ${names} ${takenIn.length === 1 ? "stays as it is" : "stay as they are"}`,
        ];
  const left =
    leftOut.length === 0 ? [] : [`${leftOut.join(", ")} could not be written: a file holds each ident once`];
  const beside = [...files.keys()].map(baseName).filter((name) => !takenIn.map(baseName).includes(name));
  const keep = beside.length === 0 ? [] : [`keep it with ${beside.join(" and ")}, which it draws on`];
  return [...inside, ...left, ...keep];
}
