import { requireInRange } from "../errors";
import { billionCells, type BillionCells } from "../units";

/** A pack has some cells at all: a wort of nothing needs none of them. */
export const PACK_CELLS_RANGE = { ...billionCells.range, min: 0.001 } as const;

/** Rounding of a division does not open another pack. */
const HAIR = 1e-9;

/**
 * Counts the whole packs of yeast that hold the cells of a wort.
 *
 * @param a.cells - Viable cells that the wort needs, 10⁹.
 * @param a.cellsInPack - Living cells in one pack, 10⁹.
 * @returns Packs, a whole number: the last one may be opened for a part of it.
 * @validRange A pack of a million cells or more.
 * @throws {@link OutOfRangeError} when a count is outside its range.
 * @source Arithmetic: a pack is not divided before it is opened (docs/sources.md#mass-balance)
 * @example
 * packsToPitch({ cells: billionCells(180), cellsInPack: billionCells(77.5) }); // 3
 */
export function packsToPitch({
  cells,
  cellsInPack,
}: {
  readonly cells: BillionCells;
  readonly cellsInPack: BillionCells;
}): number {
  requireInRange("cells needed", cells, billionCells.range);
  requireInRange("cells in a pack", cellsInPack, PACK_CELLS_RANGE);
  return Math.ceil((cells / cellsInPack) * (1 - HAIR));
}
