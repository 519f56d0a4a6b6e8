import type { QuantityId } from "../ledger";
import type { ExplanationInput } from "./explanation";
import type { ExplanationContext } from "./explanation-context";
import type { NudgeName } from "./nudges";
import type { SourceAnchor } from "./source-titles";

/** A text, or one that depends on the equipment or the recipe. */
export type Told = string | ((a: ExplanationContext) => string);

/** How one number of the ledger is explained. */
export interface ExplanationRecord {
  /** Two to four sentences: what it is, how it comes about, what it leaves out. */
  readonly words: Told;
  /** As the library computes it. */
  readonly equation: Told;
  readonly inputs: (a: ExplanationContext) => readonly ExplanationInput[];
  readonly sources: readonly SourceAnchor[];
  readonly validRange: string;
  /** Changes worth a look, the most telling first; those that change nothing here are not shown. */
  readonly nudges: readonly NudgeName[];
}

/** A record for every quantity of one station: a quantity without one does not compile. */
export type RecordsOf<Prefix extends string> = Readonly<
  Record<Extract<QuantityId, `${Prefix}.${string}`>, ExplanationRecord>
>;
