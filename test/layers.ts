/**
 * The order of the layers, as a check on the sources' own syntax trees: which folder imports which, and that the pure
 * layers reach for no Node module, page, clock, chance or environment.
 */

import { posix } from "node:path";
import { parseSync } from "vite";

/** A folder imports only from folders named before it. */
export const LAYERS = [
  "earth",
  "radio",
  "panel",
  "scene",
  "reason",
  "practice",
  "flight",
  "debrief",
  "plan",
  "lesson",
  "draw",
  "store",
  "server",
  "web",
  "cli",
] as const;

const PURE = new Set<string>(LAYERS.slice(0, LAYERS.indexOf("draw") + 1));

/** Arrows that the order alone would allow. `cli` may start the server. */
const FORBIDDEN = new Set(["draw>practice", "web>server", "cli>web"]);

const IMPURE_GLOBALS = new Set([
  "document",
  "window",
  "navigator",
  "location",
  "localStorage",
  "sessionStorage",
  "process",
  "performance",
  "fetch",
  "setTimeout",
  "setInterval",
  "requestAnimationFrame",
  "crypto",
]);

const IMPURE_MEMBERS = new Set(["Date.now", "Math.random", "globalThis.Date", "globalThis.Math"]);

interface Node {
  readonly type: string;
  readonly [field: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as { type?: unknown }).type === "string";

/**
 * The faults of one source file, each as a sentence; none when it keeps the rules.
 * @param path from the package's folder, such as `src/radio/ident.ts`
 */
export function layerFaults(path: string, source: string): string[] {
  const layer = layerOf(path);
  if (layer === null) return [`${path} lies in no layer`];
  const parsed = parseSync(path, source);
  if (parsed.errors.length > 0) return [`${path} cannot be parsed: ${parsed.errors[0]?.message}`];
  const nodes = [...walk(parsed.program as unknown as Node)];
  const faults = nodes.flatMap(({ node }) =>
    importedBy(node).flatMap((specifier) => importFaults(path, layer, specifier)),
  );
  if (PURE.has(layer)) faults.push(...impurities(nodes).map((what) => `${path} uses ${what}`));
  return [...new Set(faults)];
}

/** `src/radio/x.ts` is in `radio`; anything else in none. */
function layerOf(path: string): string | null {
  const [top, folder] = path.split("/");
  return top === "src" && folder !== undefined && LAYERS.some((layer) => layer === folder) ? folder : null;
}

interface Visit {
  readonly node: Node;
  readonly parent: Node | null;
  readonly grandparent: Node | null;
  /** The parent's field in which the node stands. */
  readonly field: string;
}

function* walk(
  node: Node,
  parent: Node | null = null,
  grandparent: Node | null = null,
  field = "",
): Generator<Visit> {
  yield { node, parent, grandparent, field };
  for (const [name, value] of Object.entries(node))
    for (const child of Array.isArray(value) ? value : [value])
      if (isNode(child)) yield* walk(child, node, parent, name);
}

const SOURCED = new Set([
  "ImportDeclaration",
  "ExportNamedDeclaration",
  "ExportAllDeclaration",
  "ImportExpression",
  "TSImportType",
]);

/** What the node imports. A path that is computed cannot be checked, and is given as `(computed)`. */
function importedBy(node: Node): string[] {
  if (!SOURCED.has(node.type)) return [];
  const source = node.source ?? node.argument;
  if (!isNode(source)) return [];
  return [typeof source.value === "string" ? source.value : "(computed)"];
}

function importFaults(path: string, layer: string, specifier: string): string[] {
  if (!specifier.startsWith(".")) return PURE.has(layer) ? impurePackage(path, specifier) : [];
  const target = posix.join(posix.dirname(path), specifier.split("?")[0] ?? specifier);
  const other = layerOf(target);
  if (other === layer) return [];
  if (other === null)
    return target.startsWith("src/")
      ? [`${path} imports ${target}, which is in no layer`]
      : outside(path, layer, target);
  const order = LAYERS as readonly string[];
  if (order.indexOf(other) > order.indexOf(layer) || FORBIDDEN.has(`${layer}>${other}`))
    return [`${path}: ${layer} may not import ${other}`];
  return target === `src/${other}/index.ts`
    ? []
    : [`${path} reaches into ${target}; import src/${other}/index.ts`];
}

const outside = (path: string, layer: string, target: string): string[] =>
  PURE.has(layer) ? [`${path} imports ${target}, which lies outside src`] : [];

function impurePackage(path: string, specifier: string): string[] {
  if (specifier === "(computed)") return [`${path} imports a path that is computed`];
  return specifier.startsWith("node:") || NODE_MODULES.has(specifier)
    ? [`${path} imports the Node module ${specifier}`]
    : [];
}

/** The Node modules that a source might name without the `node:` before it. */
const NODE_MODULES = new Set([
  "fs",
  "path",
  "os",
  "url",
  "util",
  "crypto",
  "child_process",
  "http",
  "stream",
  "buffer",
]);

function impurities(nodes: readonly Visit[]): string[] {
  const own = new Set(nodes.flatMap(declaredName));
  return nodes.flatMap(({ node, parent, field }) => {
    if (node.type === "NewExpression" && isCall(node, "Date")) return ["the clock: new Date()"];
    if (node.type === "CallExpression" && calleeName(node) === "Date") return ["the clock: Date()"];
    if (node.type === "MemberExpression") {
      const member = memberName(node);
      return member !== null && IMPURE_MEMBERS.has(member) ? [member] : [];
    }
    const name = node.type === "Identifier" ? String(node.name) : "";
    return IMPURE_GLOBALS.has(name) && !own.has(name) && isReference(parent, field) ? [name] : [];
  });
}

const calleeName = (node: Node): string | null =>
  isNode(node.callee) && node.callee.type === "Identifier" ? String(node.callee.name) : null;

const isCall = (node: Node, callee: string): boolean =>
  calleeName(node) === callee && Array.isArray(node.arguments) && node.arguments.length === 0;

function memberName(node: Node): string | null {
  const { object, property } = node;
  if (!isNode(object) || !isNode(property) || object.type !== "Identifier") return null;
  const key = node.computed === true ? property.value : property.name;
  return `${String(object.name)}.${String(key)}`;
}

/** A name that the file itself gives to a variable, parameter, function or import hides the global of that name. */
function declaredName({ node, parent, grandparent, field }: Visit): string[] {
  if (node.type !== "Identifier" || parent === null) return [];
  const declares =
    (field === "id" && /^(VariableDeclarator|Function|Class)/.test(parent.type)) ||
    field === "params" ||
    (field === "local" && parent.type.startsWith("Import")) ||
    (field === "value" && grandparent?.type === "ObjectPattern");
  return declares ? [String(node.name)] : [];
}

/** Syntax of types whose part is read as a value. */
const READS_VALUE = new Set([
  "TSAsExpression",
  "TSNonNullExpression",
  "TSSatisfiesExpression",
  "TSTypeAssertion",
  "TSTypeQuery",
]);

/** Whether an identifier standing there is read as a variable, not as the name of a field or a type's member. */
function isReference(parent: Node | null, field: string): boolean {
  if (parent === null) return true;
  if (parent.type.startsWith("TS")) return READS_VALUE.has(parent.type);
  if (parent.type === "JSXAttribute") return false;
  if (parent.type === "MemberExpression" && field === "property") return parent.computed === true;
  return field === "key" ? parent.computed === true : true;
}
