import "server-only";
import { arrayLiteral } from "../array-literal";

type Value = string | number | null;

interface Column {
  /** One value a row, as the database writes an array; empty where all rows have the same, and `unnest` then gives null for each. */
  readonly each: string;
  /** What all rows have. */
  readonly shared: Value;
}

/** A column of rows. A sensor sends the same in most columns, and such a column is sent once. */
export function columnOf<R>(rows: readonly R[], valueOf: (row: R) => Value): Column {
  const values = rows.map(valueOf);
  const [first = null] = values;
  if (values.every((value) => value === first)) return { each: "{}", shared: first };
  return { each: arrayLiteral(values), shared: null };
}

interface Parts {
  /** What all objects say, as JSON. */
  readonly shared: string;
  /** What each says besides, as JSON. */
  readonly each: readonly string[];
}

/**
 * Objects as what all of them say and what each says besides, so that the first is written once. Their names are those of
 * fields of ours, without a sign that JSON would escape.
 */
export function partsOf(objects: readonly Readonly<Record<string, unknown>>[]): Parts {
  const [first = {}] = objects;
  const names = Object.keys(first);
  const isSame = (each: object): boolean =>
    Object.keys(each).length === names.length && names.every((name) => name in each);
  const shared = objects.every(isSame)
    ? names.filter((name) => objects.every((each) => each[name] === first[name]))
    : [];
  const others = names.filter((name) => !shared.includes(name));
  return {
    shared: JSON.stringify(pick(first, shared)),
    each: objects.map((each) => (shared.length === 0 ? JSON.stringify(each) : besides(each, others))),
  };
}

/** Without an object for each, of which there are thousands. */
function besides(object: Readonly<Record<string, unknown>>, names: readonly string[]): string {
  const said = names.filter((name) => object[name] !== undefined);
  return `{${said.map((name) => `"${name}":${JSON.stringify(object[name])}`).join(",")}}`;
}

function pick(object: Readonly<Record<string, unknown>>, names: readonly string[]): object {
  return Object.fromEntries(names.map((name) => [name, object[name]]));
}
