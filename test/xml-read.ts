/** XML files read into elements, as far as our own files go: no comments, no character data sections. Throws where one is not well-formed. */

export interface XmlNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlNode[];
  /** Of the element itself, its children's left out. */
  readonly text: string;
}

const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"' };
const unescaped = (text: string): string =>
  text.replace(/&(\w+);/g, (_, name: string) => {
    const sign = ENTITIES[name];
    if (sign === undefined) throw new Error(`unknown entity ${name}`);
    return sign;
  });

export function readXml(file: string): XmlNode {
  const [head = "", ...rest] = file.split("\n");
  if (head !== '<?xml version="1.0" encoding="UTF-8"?>') throw new Error(`no XML declaration: ${head}`);
  const root = { name: "", attributes: {}, children: [] as XmlNode[], text: "" };
  const open = [root];
  for (const [token] of rest.join("\n").matchAll(/<[^<>]+>|[^<>]+|[<>]/g)) {
    const top = open.at(-1);
    if (top === undefined || token === "<" || token === ">") throw new Error(`stray ${token}`);
    if (!token.startsWith("<")) {
      top.text += unescaped(token);
      continue;
    }
    const [, closing = "", name = "", written = "", empty = ""] =
      /^<(\/?)([\w:-]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>$/.exec(token) ?? [];
    if (name === "") throw new Error(`no tag: ${token}`);
    if (closing) {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes another element`);
      continue;
    }
    const pairs = [...written.matchAll(/([\w:-]+)="([^"]*)"/g)];
    const attributes = Object.fromEntries(pairs.map(([, key = "", value = ""]) => [key, unescaped(value)]));
    const node = { name, attributes, children: [] as XmlNode[], text: "" };
    top.children.push(node);
    if (!empty) open.push(node);
  }
  const [only, second] = root.children;
  if (open.length !== 1 || only === undefined || second !== undefined) throw new Error("not one root");
  return only;
}

/** Every element of a name at or under a node. */
export const allOf = (node: XmlNode, name: string): readonly XmlNode[] => [
  ...(node.name === name ? [node] : []),
  ...node.children.flatMap((child) => allOf(child, name)),
];
