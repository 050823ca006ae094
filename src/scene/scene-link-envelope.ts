/**
 * The outside of a link: a letter for its kind and the version (`s1.` for a scene), what it holds as base64url (RFC 4648, section 5), a point
 * and seven letters that check it. Only characters that no address, mail or chat program changes. What is wrong with one is said in a
 * sentence, and never read further.
 */

import { cited } from "./reading.ts";

export const LINK_VERSION = 1;
/** Characters, the address of the page included. Browsers, mail and chat programs carry this much; scenes need a few hundred. */
export const LONGEST_LINK = 65_536;

const CHECK_LETTERS = 7;

export type LinkKind = "scene" | "problem set";

const LETTERS: Readonly<Record<LinkKind, string>> = { scene: "s", "problem set": "p" };

export type LinkOpened =
  | { readonly ok: true; readonly json: string }
  /** Lower-case start, no full stop. */
  | { readonly ok: false; readonly fault: string };

/** The link's text, beginning with `s1.` or the letter of another kind, for any JSON. */
export function sealLink(json: string, kind: LinkKind = "scene"): string {
  const body = base64url(new TextEncoder().encode(json));
  return `${LETTERS[kind]}${LINK_VERSION}.${body}.${checkLetters(body)}`;
}

/** What a text would have to begin with (after the `#` of an address) to be meant as a scene's link, of whichever version. */
export const isSceneLink = (text: string): boolean => isLink(text, "scene");

/** The same of any kind of link. */
export const isLink = (text: string, kind: LinkKind): boolean =>
  new RegExp(`^\\s*([^\\s#]*#)?${LETTERS[kind]}\\d+\\.`).test(text);

/** The JSON inside a link, given alone, as `#s1.…` or as a whole address. Spaces and line breaks that a mail put in are taken out. */
export function openLink(text: string, kind: LinkKind = "scene"): LinkOpened {
  const letter = LETTERS[kind];
  const no = (fault: string): LinkOpened => ({ ok: false, fault });
  if (text.length > LONGEST_LINK)
    return no(
      `the link is ${text.length} characters long; a ${kind}'s link has at most ${LONGEST_LINK}, so this is something else`,
    );
  const link = withoutWrapping(text);
  const version = new RegExp(`^${letter}(\\d+)\\.`).exec(link)?.[1];
  if (version === undefined)
    return no(`${cited(text)} is no ${kind}'s link; one has #${letter}${LINK_VERSION}. and letters after it`);
  if (version !== String(LINK_VERSION))
    return no(
      `the link is written in version ${version}, and this bench reads version ${LINK_VERSION}; open it with the bench it came from`,
    );
  const [, body = "", check = ""] = link.split(".");
  if (check.length < CHECK_LETTERS)
    return no("the link was cut short on its way here; copy the whole of it again");
  if (link !== `${letter}${version}.${body}.${check}` || check !== checkLetters(body))
    return no("the link was changed on its way here; copy it again from where it was made");
  const json = textOf(body);
  return json === null ? no("the link holds no text that can be read; make it again") : { ok: true, json };
}

/** Without the address before it, breaks inside it and the mark that a sentence put behind it. */
const withoutWrapping = (text: string): string =>
  text
    .slice(text.indexOf("#") + 1)
    .replace(/[\s\u200b\ufeff]+/g, "")
    .replace(/[^\w-]+$/, "");

function base64url(bytes: Uint8Array): string {
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

function textOf(body: string): string | null {
  try {
    const binary = atob(body.replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = Uint8Array.from(binary, (character) => character.charCodeAt(0));
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    // Not base64, or not UTF-8: whoever made it did not make it here.
    return null;
  }
}

/** Seven letters and figures that any slip changes: FNV-1a (Fowler, Noll and Vo), 32 bits, over the characters' two bytes. */
export function checkLetters(text: string): string {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index);
    hash = Math.imul(hash ^ (code & 0xff), 0x01000193);
    hash = Math.imul(hash ^ (code >> 8), 0x01000193);
  }
  return (hash >>> 0).toString(36).padStart(CHECK_LETTERS, "0");
}
