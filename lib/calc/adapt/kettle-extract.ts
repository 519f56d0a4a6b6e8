import { ebc, fraction, type Fraction } from "../units";
import type { IntendedFermentable, Intention } from "./intention";

/** Dry pale malt extract as sold: extract of the dry substance, moisture, colour. Common practice, no source. */
export const DRY_MALT_EXTRACT: Omit<IntendedFermentable, "share"> = {
  name: "Dry malt extract pale",
  kind: "malt extract",
  extract: fraction(1),
  moisture: fraction(0.035),
  colour: ebc(5.2),
  station: "kettle",
  fermentability: null,
  acidity: null,
};

/** White sugar, which is all extract and ferments completely. */
export const WHITE_SUGAR: Omit<IntendedFermentable, "share"> = {
  name: "Sucrose",
  kind: "sugar",
  extract: fraction(1),
  moisture: fraction(0.0005),
  colour: ebc(0),
  station: "kettle",
  fermentability: fraction(1),
  acidity: null,
};

/**
 * Finds the mashed row that most of the extract comes from.
 *
 * @returns The row, or null where nothing is mashed.
 */
export function baseMalt({ fermentables }: Intention): IntendedFermentable | null {
  return fermentables.reduce<IntendedFermentable | null>(
    (most, row) => (row.station === "mash" && (most === null || row.share > most.share) ? row : most),
    null,
  );
}

/**
 * Replaces a share of the extract of the base malt by something that goes straight into the kettle.
 *
 * @param share - Of the extract of the base malt, fraction.
 * @returns An intention with the same strength. Malt extract ferments as the yeast does on the average, sugar as its own
 * fermentability says; a row of the same kind and name takes it up, so that the recipe names it once.
 * @source Properties of what is added: docs/sources.md#trade-practice
 */
export function withKettleExtract(
  intention: Intention,
  added: Omit<IntendedFermentable, "share">,
  share: Fraction,
): Intention {
  const base = baseMalt(intention);
  if (base === null || share === 0) return intention;
  const replaced = base.share * share;
  const known = intention.fermentables.find((row) => row.station === "kettle" && row.name === added.name);
  const rows = intention.fermentables.map((row) => {
    if (row === base) return { ...row, share: fraction(row.share - replaced) };
    return row === known ? { ...row, share: fraction(Math.min(1, row.share + replaced)) } : row;
  });
  return {
    ...intention,
    fermentables: known === undefined ? [...rows, { ...added, share: fraction(replaced) }] : rows,
  };
}
