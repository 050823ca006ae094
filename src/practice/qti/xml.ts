/** XML written by hand: elements with attributes, texts escaped. */

export type XmlChild = string | XmlElement;

export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number | boolean>>;
  readonly children: readonly XmlChild[];
}

/** An element; undefined attributes and children that are null are left out. */
export const xml = (
  name: string,
  attributes: Readonly<Record<string, string | number | boolean | undefined>> = {},
  ...children: readonly (XmlChild | null | readonly XmlChild[])[]
): XmlElement => ({
  name,
  attributes: Object.fromEntries(
    Object.entries(attributes).filter(
      (pair): pair is [string, string | number | boolean] => pair[1] !== undefined,
    ),
  ),
  children: children.flatMap((child) => (child === null ? [] : child)),
});

/** A whole file, indented by its elements. */
export const xmlFile = (root: XmlElement): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${elementText(root, "")}\n`;

function elementText({ name, attributes, children }: XmlElement, indent: string): string {
  const open = [
    name,
    ...Object.entries(attributes).map(([key, value]) => `${key}="${escaped(String(value))}"`),
  ].join(" ");
  if (children.length === 0) return `${indent}<${open}/>`;
  // Spaces count beside words, so what holds any stays on one line.
  if (children.some((child) => typeof child === "string"))
    return `${indent}<${open}>${children.map((child) => (typeof child === "string" ? escaped(child) : elementText(child, ""))).join("")}</${name}>`;
  const inner = children.map((child) => elementText(child as XmlElement, `${indent}  `)).join("\n");
  return `${indent}<${open}>\n${inner}\n${indent}</${name}>`;
}

/** Without what XML 1.0 has no place for: control characters, halves of characters. */
const escaped = (text: string): string =>
  [...text]
    .filter((sign) => "\t\n\r".includes(sign) || !/[\p{Cc}\p{Cs}\ufffe\uffff]/u.test(sign))
    .join("")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
