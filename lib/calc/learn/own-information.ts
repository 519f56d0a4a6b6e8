import { FIGURES, type Equipment, type FigurePlace } from "../ledger";
import type { BrewEvidence } from "./brew-evidence";
import { kettlePrior, type KettlePrior } from "./kettle-prior";
import { reweighed } from "./reweighed";
import { tellsOf } from "./tells-of";
import { weighedBrew } from "./weighed-brew";

/** One kettle of the kind, with what is known of it alone. */
export interface KettleOfKind {
  /** What is typical of a kettle of this kind and size; figures are compared by how far they are from this. */
  readonly typical: Equipment;
  /** The kettle as it was known before its brews; a figure that is typical or learned there says nothing more of it. */
  readonly equipment: Equipment;
  /** In order of time. */
  readonly brews: readonly BrewEvidence[];
}

/** What one kettle says of its own figures, as distances from the typical ones in units of the typical uncertainty. */
export interface OwnInformation {
  readonly precision: Float64Array;
  readonly pull: Float64Array;
  /** How many of its brews tell of each figure, and whether a trial or a statement does. */
  readonly brews: readonly number[];
  readonly trials: readonly number[];
}

/**
 * Adds up what the brews and the trials of one kettle say, without the kind.
 *
 * @param places - Figures of the kind.
 * @returns Information in the order of the places; nothing for a figure that is certain on this kettle.
 */
export function ownInformation(places: readonly FigurePlace[], kettle: KettleOfKind): OwnInformation {
  const prior = kettlePrior(kettle.typical, []);
  const brews = kettle.brews.map((evidence) => weighedBrew(prior, evidence));
  const { weights } = reweighed(prior, brews);
  const telling = brews.map((brew) => tellsOf(prior, brew));
  const size = places.length;
  const at = places.map(({ name }) => prior.places.findIndex((place) => place.name === name));
  const precision = new Float64Array(size * size);
  const pull = new Float64Array(size);
  brews.forEach((brew, b) => {
    const weight = weights[b] ?? 1;
    at.forEach((k, i) => {
      pull[i] = (pull[i] ?? 0) + weight * (brew.pull[k] ?? 0);
      at.forEach((l, j) => {
        const own = k < 0 || l < 0 ? 0 : (brew.precision[k * prior.places.length + l] ?? 0);
        precision[i * size + j] = (precision[i * size + j] ?? 0) + weight * own;
      });
    });
  });
  const trials = at.map((k, i) => addTrial({ prior, kettle, precision, pull }, k, i, size));
  return { precision, pull, trials, brews: at.map((k) => telling.filter((tells) => tells[k] === true).length) };
}

/** What was measured on this very kettle, or is stated of it, is one more piece of information. */
function addTrial(
  a: {
    readonly prior: KettlePrior;
    readonly kettle: KettleOfKind;
    readonly precision: Float64Array;
    readonly pull: Float64Array;
  },
  k: number,
  i: number,
  size: number,
): number {
  const place = FIGURES.find(({ name }) => name === a.prior.places[k]?.name);
  const known = place?.of(a.kettle.equipment);
  if (known === undefined || known.sd <= 0 || known.from === "typical" || known.from === "learned") return 0;
  const unit = a.prior.unit[k] ?? 1;
  const information = (unit / known.sd) ** 2;
  a.precision[i * size + i] = (a.precision[i * size + i] ?? 0) + information;
  a.pull[i] = (a.pull[i] ?? 0) + (information * (known.value - (a.prior.centre[k] ?? 0))) / unit;
  return 1;
}
