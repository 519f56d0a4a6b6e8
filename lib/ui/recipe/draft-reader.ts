import type { Quantity } from "@/lib/calc/units";
import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import { readEntry, type Entry } from "./entry";

/** One text on its way to a stored field. */
export interface Cell<U extends string> {
  /** The name of the control on the screen. */
  readonly name: string;
  /** The path of the stored field. */
  readonly path: string;
  readonly entry: Entry;
  readonly field: MeasuredField<U>;
  readonly label?: string;
}

/**
 * Reads a draft field by field and keeps what went wrong. A field that cannot be read counts as its least value, so that
 * reading goes on and every problem is found; the caller does not use a recipe that has one.
 */
export class DraftReader {
  readonly problems = new Map<string, string>();
  readonly entered = new Map<string, string>();
  /** The control that stands for a stored field. */
  readonly controls = new Map<string, string>();

  constructor(private readonly preferences: Preferences) {}

  number<U extends string>({ name, path, entry, field, label }: Cell<U>): Quantity<U> {
    this.controls.set(path, name);
    const read = readEntry(entry, { field, label, preferences: this.preferences });
    if (!read.ok) {
      this.problems.set(name, read.message);
      return field.make(field.min);
    }
    if (entry.isTyped) this.entered.set(path, entry.text.trim());
    return field.make(read.value);
  }

  /** A number that may be left out. */
  optional<U extends string>(cell: Cell<U>): Quantity<U> | null {
    return cell.entry.text.trim() === "" ? null : this.number(cell);
  }

  word(a: { readonly name: string; readonly path: string; readonly entry: Entry; readonly label: string }): string {
    this.controls.set(a.path, a.name);
    const text = a.entry.text.trim();
    if (text === "") this.problems.set(a.name, `${a.label} is empty`);
    return text;
  }
}
