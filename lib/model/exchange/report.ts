import { isList, isRecord, plainOf, type FileNode } from "./file-node";

/** What was done with one field of a file. */
export type Done = "taken" | "converted" | "kept" | "refused";

/** One line of the preview: where it stands, what it says, what was done with it. */
export interface FieldReport {
  readonly line: number;
  readonly field: string;
  readonly value: string;
  readonly done: Done;
  readonly note: string;
}

interface Verdict {
  readonly done: Done;
  readonly note: string;
}

interface Mark extends Verdict {
  readonly node: FileNode;
}

const LONGEST_SHOWN = 120;

/** Collects what is done with the parts of one recipe while it is read. What nobody marks is kept for export. */
export class ReadingLog {
  private readonly marks: Mark[] = [];
  private readonly derivations: string[] = [];

  mark(node: FileNode, done: Done, note: string): void {
    this.marks.push({ node, done, note });
  }

  /** A figure that the file does not state, and where it comes from. */
  derive(sentence: string): void {
    if (!this.derivations.includes(sentence)) this.derivations.push(sentence);
  }

  get derived(): readonly string[] {
    return this.derivations;
  }

  /** Reads a row as a whole: where it cannot be taken, nothing of it is, and only the reasons stay. */
  whole<T>(row: FileNode, read: () => T | null): T | null {
    const before = this.marks.length;
    const result = read();
    if (result !== null) return result;
    const reasons = this.marks.splice(before).filter(({ done }) => done === "refused");
    this.marks.push({ node: row, done: "kept", note: "stands in a row that was not taken" }, ...reasons);
    return null;
  }

  /** One line for each field of a recipe, in the order of the file. */
  lines(recipe: FileNode, unmarked: (path: readonly string[]) => Verdict): readonly FieldReport[] {
    const byNode = new Map(this.marks.map((mark) => [mark.node, mark]));
    const lines: FieldReport[] = [];
    const walk = (node: FileNode, path: readonly string[], above: Mark | undefined): void => {
      const mark = byNode.get(node) ?? above;
      const parts = partsOf(node);
      if (parts !== null && parts.length > 0) {
        for (const [key, part] of parts) walk(part, [...path, key], mark);
        return;
      }
      const { done, note } = mark ?? unmarked(path);
      lines.push({ line: node.line, field: shownPath(path), value: shown(node), done, note });
    };
    walk(recipe, [], undefined);
    return lines;
  }
}

/** What becomes of a field that nothing has read. */
export function keptBecause(isOfStandard: boolean): Verdict {
  return {
    done: "kept",
    note: isOfStandard
      ? "no place for it here; written back on export"
      : "not a field of the standard; written back on export",
  };
}

/** A value with its unit is one field, not two. */
function partsOf({ value }: FileNode): readonly (readonly [string, FileNode])[] | null {
  if (isList(value)) return value.map((part, index) => [String(index + 1), part]);
  if (!isRecord(value)) return null;
  return isMeasure(value) ? null : [...value];
}

export function isMeasure(value: ReadonlyMap<string, FileNode>): boolean {
  return value.size === 2 && value.has("unit") && value.has("value");
}

function shownPath(path: readonly string[]): string {
  return path.join(" › ");
}

/** As it stands in the file, cut where it is long. */
export function shown(node: FileNode): string {
  const { value } = node;
  if (isRecord(value) && isMeasure(value)) return cut(`${part(value, "value")} ${part(value, "unit")}`);
  if (isRecord(value) || isList(value)) return cut(JSON.stringify(plainOf(node)));
  return cut(String(value));
}

function part(value: ReadonlyMap<string, FileNode>, key: string): string {
  const found = value.get(key);
  return found === undefined ? "" : shown(found);
}

function cut(text: string): string {
  const line = text.replaceAll(/\s+/g, " ").trim();
  return line.length <= LONGEST_SHOWN ? line : `${line.slice(0, LONGEST_SHOWN - 1)}…`;
}
