import { ebc, fraction, type Fraction } from "../units";
import type { IntendedFermentable, Intention } from "./intention";

/** Dry pale malt extract as sold: extract of the dry substance, moisture, colour. Common practice, no source. */
const DRY_MALT_EXTRACT: Omit<IntendedFermentable, "share"> = {
  name: "Dry malt extract pale",
  kind: "malt extract",
  extract: fraction(1),
  moisture: fraction(0.035),
  colour: ebc(5.2),
  station: "kettle",
  fermentability: null,
  acidity: null,
};

/**
 * Replaces a share of the extract of the palest mashed rows by dry malt extract in the kettle.
 *
 * @param share - Of the extract of the grist's largest mashed row, fraction.
 * @returns An intention with the same strength; the malt extract ferments as the wort of the mash is expected to.
 * @source Properties of the extract: docs/sources.md#trade-practice
 */
export function withMaltExtract(intention: Intention, share: Fraction): Intention {
  const mashed = intention.fermentables.filter((row) => row.station === "mash");
  const base = mashed.reduce<IntendedFermentable | null>(
    (most, row) => (most === null || row.share > most.share ? row : most),
    null,
  );
  if (base === null || share === 0) return intention;
  const replaced = base.share * share;
  return {
    ...intention,
    fermentables: [
      ...intention.fermentables.map((row) => (row === base ? { ...row, share: fraction(row.share - replaced) } : row)),
      { ...DRY_MALT_EXTRACT, share: fraction(replaced) },
    ],
  };
}
