import type { SourceAnchor } from "../source-titles";

/** One number that a function takes. */
export interface FunctionInput {
  /**
   * Where the number stands among the arguments, with dots: "0" for a plain first argument, "0.plato" for a field of it,
   * "0.malts.0.kg" for a field of the first row.
   */
  readonly at: string;
  readonly label: string;
  /** Unit as the library counts; empty for a bare number. */
  readonly unit: string;
  /** The span that the function accepts; outside it, it refuses. */
  readonly min: number;
  readonly max: number;
}

/** How one public function of the library is explained, with a call that can be made and varied. */
export interface FunctionRecord {
  /** Subject and name, as it is imported: "gravity/platoToSpecificGravity". */
  readonly id: string;
  /** What it gives, by what method, and what it leaves out. */
  readonly words: string;
  /** As the library computes it. */
  readonly equation: string;
  readonly inputs: readonly FunctionInput[];
  /** What comes out, with its unit. */
  readonly gives: string;
  readonly sources: readonly SourceAnchor[];
  /** Where the formula holds, in a sentence. */
  readonly validRange: string;
  readonly call: (...args: never[]) => unknown;
  /** Arguments that the function accepts, as JSON. */
  readonly example: readonly unknown[];
}
