import {
  cellsInPack,
  starterGrowth,
  type CountedCells,
  type StarterMethod,
  type YeastForm,
} from "@/lib/calc/fermentation";
import { billionCells, type BillionCells, type Celsius, type Days, type Grams } from "@/lib/calc/units";

/** What goes into a pitch, as a brewer knows it. */
export interface YeastInHand {
  readonly form: YeastForm;
  readonly packs: number;
  readonly cellsPerPack: BillionCells;
  readonly ageDays: Days;
  readonly storedAt: Celsius;
  /** null without a starter. */
  readonly starter: { readonly extractG: Grams; readonly method: StarterMethod } | null;
}

export type CellEstimate =
  | { readonly ok: true; readonly cells: CountedCells }
  | { readonly ok: false; readonly reason: "crowded"; readonly extractNeededG: number };

/** Living cells of the packs today, grown in the starter where there is one; with the limits of practice. */
export function estimateCells({ form, packs, cellsPerPack, ageDays, storedAt, starter }: YeastInHand): CellEstimate {
  const living = cellsInPack({ cells: cellsPerPack, ageDays, form, celsius: storedAt });
  const all: CountedCells = {
    expected: billionCells(packs * living.expected),
    low: billionCells(packs * living.low),
    high: billionCells(packs * living.high),
  };
  if (starter === null) return { ok: true, cells: all };
  const grown = (cells: BillionCells): ReturnType<typeof starterGrowth> => starterGrowth({ ...starter, cells });
  const [low, expected, high] = [grown(all.low), grown(all.expected), grown(all.high)];
  if (!expected.ok) return expected;
  return {
    ok: true,
    cells: {
      expected: expected.total.expected,
      low: low.ok ? low.total.low : expected.total.low,
      high: high.ok ? high.total.high : expected.total.high,
    },
  };
}
