/**
 * Covers: what a scene hides from the learner, who infers it from the rest. A problem is a scene with a cover.
 * A cover is a view (`chart`), the aircraft, its heading, a receiver (`NAV1`) or one part of one (`NAV1.needle`).
 */

export const VIEWS = ["chart", "panel", "signal", "reasons"] as const;
export type View = (typeof VIEWS)[number];

export const RECEIVER_PARTS = ["needle", "flag", "course", "dme", "ident", "frequency"] as const;
export type ReceiverPart = (typeof RECEIVER_PARTS)[number];

export type CoverTarget =
  | { readonly kind: "view"; readonly view: View }
  | { readonly kind: "aircraft" }
  | { readonly kind: "heading" }
  /** `part` null: the whole receiver. */
  | { readonly kind: "receiver"; readonly receiver: string; readonly part: ReceiverPart | null };

/** What a drawing or a sentence may ask about. */
export type CoverPart = View | "aircraft" | "heading" | ReceiverPart;

/** Words that a receiver cannot be called, since they are covers of their own. */
export const COVER_WORDS: readonly string[] = [...VIEWS, "aircraft", "heading"];

const isView = (word: string): word is View => (VIEWS as readonly string[]).includes(word);
const isReceiverPart = (word: string): word is ReceiverPart =>
  (RECEIVER_PARTS as readonly string[]).includes(word);

/** What a cover's text names; null when it is none. Whether such a receiver exists is for the scene to say. */
export function parseCover(text: string): CoverTarget | null {
  if (isView(text)) return { kind: "view", view: text };
  if (text === "aircraft" || text === "heading") return { kind: text };
  const [receiver = "", part, ...rest] = text.split(".");
  if (!/^[A-Za-z][A-Za-z0-9-]*$/.test(receiver) || rest.length > 0) return null;
  if (part === undefined) return { kind: "receiver", receiver, part: null };
  return isReceiverPart(part) ? { kind: "receiver", receiver, part } : null;
}

/** A cover as it is written in a file. */
export function coverText(target: CoverTarget): string {
  switch (target.kind) {
    case "view":
      return target.view;
    case "aircraft":
    case "heading":
      return target.kind;
    case "receiver":
      return target.part === null ? target.receiver : `${target.receiver}.${target.part}`;
  }
}

/**
 * Whether the covers hide a part: a view, the aircraft or its heading (`receiver` null), or one of a receiver's parts.
 * A part is hidden by its own name and by its receiver's. A view's cover hides the view and says nothing of the parts
 * shown elsewhere: whoever draws that view asks for the view first.
 */
export function isCovered(covers: readonly string[], receiver: string | null, part: CoverPart): boolean {
  if (receiver === null) return covers.includes(part);
  return covers.includes(receiver) || covers.includes(`${receiver}.${part}`);
}

/** Whether a whole receiver is hidden. */
export const isReceiverCovered = (covers: readonly string[], receiver: string): boolean =>
  covers.includes(receiver);
