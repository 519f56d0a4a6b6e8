import type { Equipment } from "@/lib/calc/ledger";
import type { AdaptationChoice } from "./adaptation";
import type { LotFigures } from "./lot";
import type { RecipeContent } from "./recipe-content";

/** What somebody chose for a kettle, as far as the table of all kettles needs it. */
export interface KeptChoice {
  readonly lockVersion: number;
  readonly choice: AdaptationChoice;
  readonly changedByName: string;
}

/** One line of the table of all kettles before anything is computed: a kettle, or a member who described none. */
export interface KettleEntry {
  /** The kettle's identifier, or that of the member without one. */
  readonly key: string;
  readonly ownerId: string;
  readonly ownerName: string;
  /** null for a member without a kettle. */
  readonly kettleName: string | null;
  /** Whether the reader may choose for this kettle. */
  readonly mayChoose: boolean;
  readonly kept: KeptChoice | null;
}

/** What it takes to adapt a recipe to one kettle. */
export interface KettleToAdapt {
  readonly id: string;
  readonly equipment: Equipment;
  /** The lots that its brewer chose, by their identifiers. */
  readonly lots: readonly (readonly [id: string, lot: LotFigures])[];
}

/** The first line of the table as it is sent; the kettles follow, a line each. */
export interface KettlesHead {
  readonly content: RecipeContent;
  readonly entries: readonly KettleEntry[];
}
