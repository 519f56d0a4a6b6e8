import { requireInRange } from "../../errors";
import { EXTRACT_RANGE } from "../../gravity";
import { referencesOf, type SourceReference } from "../source-titles";
import type { FunctionInput, FunctionRecord } from "./function-record";
import { SUBJECT_FUNCTIONS } from "./function-records";

/** How one result answers to one input. */
export interface Sensitivity {
  readonly input: string;
  /** Field of the result; empty where the result is a number. */
  readonly result: string;
  /** Change of the result for each unit of the input, at these arguments. */
  readonly perUnit: number;
}

/** A call of a public function, opened up. */
export interface ExplainedFunction extends Omit<FunctionRecord, "inputs" | "sources" | "call" | "example"> {
  readonly inputs: readonly (FunctionInput & { readonly value: number })[];
  readonly sources: readonly SourceReference[];
  readonly value: unknown;
  readonly sensitivities: readonly Sensitivity[];
}

export type FunctionExplanation =
  | { readonly ok: true; readonly explained: ExplainedFunction }
  | { readonly ok: false; readonly reason: "no-such-function" };

/** What explainFunction takes for its own example: the gravity of a wort of 12 °P. */
const OF_12_PLATO = { id: "gravity/platoToSpecificGravity", args: [12] };

/** How every public function of the library is explained; a test holds it to the exports of all subjects. */
export const FUNCTION_RECORDS: readonly FunctionRecord[] = [
  ...SUBJECT_FUNCTIONS,
  {
    id: "explain/explainFunction",
    words:
      "A public function of the library opened up at given arguments: what it is, its equation, inputs with their ranges, sources, what it gives, and how much that moves for each unit of an input. The slopes are differences over a small step, one input at a time, so they say nothing of a jump beyond it or of inputs that move together.",
    equation: "slope = (f(x + h) − f(x − h)) / (2 h), h about 1e-5 of x",
    inputs: [{ at: "0.args.0", label: "Argument of the function in the example", ...EXTRACT_RANGE }],
    gives: "the record with values and slopes; or that the library has no such function",
    sources: ["abramowitz-stegun-1964"],
    validRange: "That of the function that is explained.",
    call: explainFunction,
    example: [OF_12_PLATO],
  },
];

/** Relative step of the difference quotient: rounding and curvature cost about the same here. */
const STEP = 1e-5;

/**
 * Explains a public function of the library at given arguments: what it is, its equation, inputs, sources and range, what
 * it gives, and how much that moves with each input.
 *
 * @param a.id - Subject and name, as imported: "gravity/platoToSpecificGravity".
 * @param a.args - Arguments of the call, in their order; left out, the example of the record.
 * @returns The explanation; or that the library has no such function.
 * @validRange That of the function.
 * @throws {@link OutOfRangeError} when the function refuses an argument.
 * @source Each function names its own; difference quotients (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * explainFunction({ id: "gravity/platoToSpecificGravity", args: [12] }); // { ok: true, explained: { value: 1.0484, … } }
 */
export function explainFunction({
  id,
  args,
}: {
  readonly id: string;
  readonly args?: readonly unknown[];
}): FunctionExplanation {
  const record = FUNCTION_RECORDS.find((each) => each.id === id);
  if (record === undefined) return { ok: false, reason: "no-such-function" };
  const { inputs, sources, call, example, ...told } = record;
  const taken = args ?? example;
  const known = inputs.flatMap((input) => {
    const value = numberAt(taken, input.at);
    return value === null ? [] : [{ ...input, value: requireInRange(input.label, value, input) }];
  });
  return {
    ok: true,
    explained: {
      ...told,
      inputs: known,
      sources: referencesOf(sources),
      value: callWith(call, taken),
      sensitivities: known.flatMap((input) => sensitivitiesTo(input, call, taken)),
    },
  };
}

// The record's function takes exactly what its example shows, which the tests hold it to.
const callWith = (call: FunctionRecord["call"], args: readonly unknown[]): unknown =>
  (call as (...all: readonly unknown[]) => unknown)(...args);

function sensitivitiesTo(
  input: FunctionInput & { readonly value: number },
  call: FunctionRecord["call"],
  args: readonly unknown[],
): Sensitivity[] {
  const step = STEP * Math.max(Math.abs(input.value), 1e-3 * Math.min(input.max - input.min, 1000));
  const high = Math.min(input.max, input.value + step);
  const low = Math.max(input.min, input.value - step);
  if (!(high > low)) return [];
  try {
    const above = numbersOf(callWith(call, withNumber(args, input.at, high)));
    const below = numbersOf(callWith(call, withNumber(args, input.at, low)));
    return Object.entries(above).flatMap(([result, value]) => {
      const other = below[result];
      return other === undefined ? [] : [{ input: input.label, result, perUnit: (value - other) / (high - low) }];
    });
  } catch (error) {
    // A step past what the other arguments allow: there is no slope to tell on this edge.
    if (error instanceof RangeError) return [];
    throw error;
  }
}

/** The numbers of a result: itself, or its fields. */
function numbersOf(result: unknown): Readonly<Record<string, number>> {
  if (typeof result === "number") return { "": result };
  if (typeof result !== "object" || result === null || Array.isArray(result)) return {};
  return Object.fromEntries(
    Object.entries(result).filter((entry): entry is [string, number] => typeof entry[1] === "number"),
  );
}

function numberAt(args: readonly unknown[], at: string): number | null {
  let place: unknown = args;
  for (const key of at.split(".")) {
    if (typeof place !== "object" || place === null) return null;
    place = (place as Readonly<Record<string, unknown>>)[key];
  }
  return typeof place === "number" ? place : null;
}

/**
 * Puts another number into the arguments of a call.
 *
 * @param args - Arguments, which stay as they are.
 * @param at - Where the number stands, with dots.
 * @returns A copy of the arguments with it.
 */
export function withNumber(args: readonly unknown[], at: string, value: number): readonly unknown[] {
  const set = (place: unknown, keys: readonly string[]): unknown => {
    const [key, ...rest] = keys;
    if (key === undefined) return value;
    if (Array.isArray(place)) return place.map((each: unknown, i) => (String(i) === key ? set(each, rest) : each));
    const fields = (typeof place === "object" && place !== null ? place : {}) as Readonly<Record<string, unknown>>;
    return { ...fields, [key]: set(fields[key], rest) };
  };
  return args.map((each, i) => {
    const [first, ...rest] = at.split(".");
    return String(i) === first ? set(each, rest) : each;
  });
}
