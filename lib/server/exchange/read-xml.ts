import "server-only";
import { SaxesParser } from "saxes";
import { RECORD_SETS } from "@/lib/model/exchange/beerxml/standard-tags";
import { FILE_LIMITS, isInheritedName, UnreadableFileError, type FileNode } from "@/lib/model/exchange/file-node";

interface OpenElement {
  readonly name: string;
  readonly line: number;
  readonly attributes: readonly (readonly [string, string])[];
  readonly children: (readonly [name: string, node: FileNode])[];
  text: string;
}

/**
 * Reads XML into a tree with lines. A document type is refused, and with it every entity that a file could define: the
 * parser itself knows only the five of XML, opens no file and no address.
 */
export function readXml(text: string): FileNode {
  const parser = new SaxesParser({ position: true });
  const open: OpenElement[] = [{ name: "", line: 1, attributes: [], children: [], text: "" }];
  let nodes = 0;
  const refuse = (reason: string): never => {
    throw new UnreadableFileError(parser.line, reason);
  };
  parser.on("doctype", () => refuse("a document type (DOCTYPE) is not taken, since it can define entities"));
  parser.on("error", (error) => refuse(`this is no well-formed XML: ${wordsOf(error)}`));
  parser.on("opentag", ({ name, attributes }) => {
    nodes += 1;
    const given = attributesOf(attributes);
    if (nodes > FILE_LIMITS.nodes) refuse(`there are more than ${String(FILE_LIMITS.nodes)} tags in the file`);
    if (open.length > FILE_LIMITS.depth) refuse(`it is nested more than ${String(FILE_LIMITS.depth)} levels deep`);
    if (given.length > FILE_LIMITS.attributes) {
      refuse(`${name} has more than ${String(FILE_LIMITS.attributes)} attributes`);
    }
    const wrong = [name, ...given.map(([key]) => key)].find(isInheritedName);
    if (wrong !== undefined) refuse(`“${wrong}” is no name of a field`);
    open.push({ name, line: parser.line, attributes: given, children: [], text: "" });
  });
  const addText = (part: string): void => {
    const last = open.at(-1);
    if (last !== undefined) last.text += part;
  };
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("closetag", () => {
    const element = open.pop();
    if (element !== undefined) open.at(-1)?.children.push([element.name, nodeOf(element)]);
  });
  parser.write(text).close();
  const [root] = open;
  return { line: 1, value: new Map(root?.children ?? []) };
}

function attributesOf(
  given: Readonly<Record<string, string | { readonly value: string }>>,
): readonly (readonly [string, string])[] {
  return Object.entries(given).map(([key, value]) => [key, typeof value === "string" ? value : value.value]);
}

/** The message without the place, which stands before it already, and without lines of the file. */
function wordsOf(error: Error): string {
  return error.message.replace(/^(?:[^:]*:)?\d+:\d+:\s*/, "").slice(0, 120);
}

/** A set of records is a list, an element with others inside a record, any other its text. */
function nodeOf({ name, line, attributes, children, text }: OpenElement): FileNode {
  const item = Object.hasOwn(RECORD_SETS, name) ? RECORD_SETS[name] : undefined;
  if (item !== undefined && attributes.length === 0 && text.trim() === "") {
    return { line, value: children.map(([tag, node]) => (tag === item ? node : strange(tag, node))) };
  }
  if (children.length === 0 && attributes.length === 0) return { line, value: text.trim() };
  const record = new Map<string, FileNode>();
  for (const [key, value] of attributes) record.set(`@${key}`, { line, value });
  if (text.trim() !== "") record.set("#text", { line, value: text.trim() });
  for (const [tag, node] of children) record.set(freeKey(record, tag), node);
  return { line, value: record };
}

function strange(tag: string, node: FileNode): FileNode {
  return { line: node.line, value: new Map([[`#${tag}`, node]]) };
}

/** The first of several tags of one name holds; the others are kept under a number. */
function freeKey(record: ReadonlyMap<string, FileNode>, tag: string): string {
  if (!record.has(tag)) return tag;
  let nth = 2;
  while (record.has(`${tag}#${String(nth)}`)) nth += 1;
  return `${tag}#${String(nth)}`;
}
