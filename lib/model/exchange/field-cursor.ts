import type { z } from "zod";
import type { Quantity } from "@/lib/calc/units";
import type { MeasuredField } from "../field";
import { measuredBy } from "../measured";
import { isList, isRecord, type FileNode } from "./file-node";
import type { ReadingLog } from "./report";

/** A place in a file that may be empty. Taking from it says so in the log. */
export class FieldCursor {
  constructor(
    readonly node: FileNode | null,
    readonly log: ReadingLog,
  ) {}

  at(...path: readonly string[]): FieldCursor {
    let node: FileNode | null = this.node;
    for (const key of path) node = node !== null && isRecord(node.value) ? (node.value.get(key) ?? null) : null;
    return new FieldCursor(node, this.log);
  }

  get items(): readonly FieldCursor[] {
    if (this.node === null || !isList(this.node.value)) return [];
    return this.node.value.map((item) => new FieldCursor(item, this.log));
  }

  /** The text of a leaf, without taking it. */
  get text(): string | null {
    const value = this.node?.value;
    if (typeof value === "string") return value.trim();
    return typeof value === "number" || typeof value === "boolean" ? String(value) : null;
  }

  take(note = ""): void {
    if (this.node !== null) this.log.mark(this.node, "taken", note);
  }

  convert(note: string): void {
    if (this.node !== null) this.log.mark(this.node, "converted", note);
  }

  keep(note: string): void {
    if (this.node !== null) this.log.mark(this.node, "kept", note);
  }

  refuse(note: string): null {
    if (this.node !== null) this.log.mark(this.node, "refused", note);
    return null;
  }

  /** A text of at most so many characters; null where there is none or it is refused. */
  takeText(schema: z.ZodType<string>, note = ""): string | null {
    const { text } = this;
    if (text === null || text === "") return null;
    const parsed = schema.safeParse(text);
    if (!parsed.success) return this.refuse(firstMessage(parsed.error));
    this.take(note);
    return parsed.data;
  }

  /** A number that has been brought to the unit of a field; out of its range it is refused by name. */
  takeQuantity<U extends string>(field: MeasuredField<U>, reading: Reading): Quantity<U> | null {
    if (!reading.ok) return this.refuse(reading.reason);
    const parsed = schemaOf(field).safeParse(reading.value);
    if (!parsed.success) return this.refuse(firstMessage(parsed.error));
    if (reading.converted) this.convert(`as ${shownIn(field, parsed.data)}`);
    else this.take();
    return parsed.data;
  }
}

/** A number as it comes out of a file. */
export type Reading =
  | { readonly ok: true; readonly value: number; readonly converted: boolean }
  | { readonly ok: false; readonly reason: string };

/** Making a schema costs more than a hundred readings by it, and a file has thousands of numbers. */
const schemas = new WeakMap<object, unknown>();

function schemaOf<U extends string>(field: MeasuredField<U>): z.ZodType<Quantity<U>> {
  const known = schemas.get(field);
  if (known !== undefined) return known as z.ZodType<Quantity<U>>; // put there for this very field
  const made = measuredBy(field);
  schemas.set(field, made);
  return made;
}

function firstMessage(error: z.ZodError): string {
  return error.issues[0]?.message ?? "it is not what this field takes";
}

function shownIn({ dimension, make }: MeasuredField, value: number): string {
  const isShare = dimension === "fraction";
  return `${String(Number((isShare ? 100 * value : value).toPrecision(5)))} ${isShare ? "%" : make.range.unit}`;
}
