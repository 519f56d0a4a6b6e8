import type { Dimension, QuantityId } from "../ledger";
import type { SourceReference } from "./source-titles";

/** One number that another is made of. */
export interface ExplanationInput {
  readonly label: string;
  readonly value: number | null;
  /** What kind of number it is; null for what only has a unit. */
  readonly dimension: Dimension | null;
  /** Unit of an input without dimension, such as "W/K"; otherwise empty. */
  readonly unit: string;
  /** Set where the input is itself a number of the ledger, so that a reader can walk back. */
  readonly quantity?: QuantityId;
  /** How a figure of the equipment came to be known. */
  readonly from?: string;
}

/** What a number would be if one thing changed. */
export interface WhatIf {
  readonly change: string;
  /** null where the changed brew has no such value. */
  readonly value: number | null;
}

/** A computed number opened up: what it is, how it comes about and what would change it. */
export interface ExplainedNumber {
  readonly label: string;
  readonly value: number | null;
  readonly dimension: Dimension;
  readonly words: string;
  readonly equation: string;
  readonly inputs: readonly ExplanationInput[];
  readonly sources: readonly SourceReference[];
  readonly validRange: string;
  readonly whatIf: readonly WhatIf[];
}

/** The explanation of one number of the ledger. */
export interface Explanation extends ExplainedNumber {
  readonly id: QuantityId;
}
