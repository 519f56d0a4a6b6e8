import { FILE_LIMITS, isInheritedName, UnreadableFileError, type FileNode } from "./file-node";

const BLANK = /[ \t\n\r]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
// What stands between the quotes: anything but quote, backslash and control characters, or an escape.
// eslint-disable-next-line no-control-regex -- JSON forbids exactly these in a text
const TEXT = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const WORDS: readonly (readonly [string, boolean | null])[] = [
  ["true", true],
  ["false", false],
  ["null", null],
];

/**
 * Reads JSON strictly, with the line of every value. The language's own reader tells no lines, takes the second of two
 * equal keys in silence, and makes 1e999 infinite.
 */
export function readJson(text: string): FileNode {
  const reader = new JsonReader(text);
  return reader.document();
}

class JsonReader {
  private at = 0;
  private line = 1;
  private counted = 0;
  private nodes = 0;

  constructor(private readonly text: string) {}

  document(): FileNode {
    const node = this.node(0);
    this.skipBlank();
    if (this.at < this.text.length) throw this.refusal("there is more after the end of the data");
    return node;
  }

  private node(depth: number): FileNode {
    this.skipBlank();
    if (depth > FILE_LIMITS.depth) {
      throw this.refusal(`it is nested more than ${String(FILE_LIMITS.depth)} levels deep`);
    }
    this.nodes += 1;
    if (this.nodes > FILE_LIMITS.nodes) {
      throw this.refusal(`there are more than ${String(FILE_LIMITS.nodes)} values in the file`);
    }
    const line = this.lineHere();
    const first = this.text.charAt(this.at);
    if (first === "{") return { line, value: this.record(depth) };
    if (first === "[") return { line, value: this.list(depth) };
    if (first === '"') return { line, value: this.quoted() };
    return { line, value: this.word() };
  }

  private record(depth: number): ReadonlyMap<string, FileNode> {
    const record = new Map<string, FileNode>();
    this.at += 1;
    if (this.takes("}")) return record;
    do {
      this.skipBlank();
      const key = this.quoted();
      if (record.has(key)) throw this.refusal(`“${key}” stands twice in one record; which of them holds is not clear`);
      if (isInheritedName(key)) throw this.refusal(`“${key}” is no name of a field`);
      this.expect(":");
      record.set(key, this.node(depth + 1));
    } while (this.takes(","));
    this.expect("}");
    return record;
  }

  private list(depth: number): readonly FileNode[] {
    const list: FileNode[] = [];
    this.at += 1;
    if (this.takes("]")) return list;
    do list.push(this.node(depth + 1));
    while (this.takes(","));
    this.expect("]");
    return list;
  }

  private quoted(): string {
    const found = this.match(TEXT);
    if (found === null) throw this.refusal("a text in quotes is missing or does not end");
    return JSON.parse(found) as string; // the pattern lets nothing else through
  }

  private word(): number | boolean | null {
    for (const [word, value] of WORDS) {
      if (this.text.startsWith(word, this.at)) {
        this.at += word.length;
        return value;
      }
    }
    const found = this.match(NUMBER);
    if (found === null) throw this.refusal(`${this.shownHere()} is no value of JSON`);
    const number = Number(found);
    if (!Number.isFinite(number)) throw this.refusal(`${found.slice(0, 20)} is too large a number`);
    return number;
  }

  private match(pattern: RegExp): string | null {
    pattern.lastIndex = this.at;
    const [found] = pattern.exec(this.text) ?? [];
    if (found === undefined) return null;
    this.at += found.length;
    return found;
  }

  private takes(mark: string): boolean {
    this.skipBlank();
    if (this.text.charAt(this.at) !== mark) return false;
    this.at += 1;
    return true;
  }

  private expect(mark: string): void {
    if (!this.takes(mark)) throw this.refusal(`a “${mark}” is missing before ${this.shownHere()}`);
  }

  private skipBlank(): void {
    this.match(BLANK);
  }

  private lineHere(): number {
    for (; this.counted < this.at; this.counted += 1) if (this.text.charAt(this.counted) === "\n") this.line += 1;
    return this.line;
  }

  private shownHere(): string {
    const rest = this.text.slice(this.at, this.at + 12).trim();
    return rest === "" ? "the end of the file" : `“${rest}”`;
  }

  private refusal(reason: string): UnreadableFileError {
    return new UnreadableFileError(this.lineHere(), reason);
  }
}
