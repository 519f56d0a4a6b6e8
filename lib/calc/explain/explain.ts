import { QUANTITIES, type Ledger, type QuantityId } from "../ledger";
import type { Explanation } from "./explanation";
import { explanationContext, type BrewInput, type ExplanationContext } from "./explanation-context";
import { withDistinctLabels } from "./explanation-inputs";
import type { Told } from "./explanation-record";
import { NUDGES } from "./nudges";
import { RECORDS } from "./records";
import { referencesOf } from "./source-titles";
import { whatIf } from "./what-if";

/**
 * Explains one number of a ledger: what it is, the equation behind it, its inputs, sources and range, and what it
 * would be if one thing changed.
 *
 * Inputs that are themselves numbers of the ledger name their quantity, so a reader can walk back to what was decided or
 * measured; the links never run in a circle. The changes are brewed anew, with the water found again for the volume
 * wanted.
 *
 * @param a.ledger - What `brew` made of the recipe, the equipment and the day.
 * @param a.id - The number to explain.
 * @returns The explanation, in the units of the library.
 * @validRange Any ledger of `brew`.
 * @throws {@link OutOfRangeError} when recipe, equipment or day are not those that the ledger was brewed from.
 * @source Each number names its own (docs/sources.md#mass-balance)
 * @example
 * explain({ ledger, recipe, equipment, ambient, id: "lauter.efficiency" }).whatIf; // [{ change: "10 % more grist", … }]
 */
export function explain(a: BrewInput & { readonly ledger: Ledger; readonly id: QuantityId }): Explanation {
  const { id, ledger } = a;
  const context = explanationContext(a);
  const record = RECORDS[id];
  const value = ledger.quantities[id];
  return {
    id,
    label: QUANTITIES[id].label,
    value,
    dimension: QUANTITIES[id].dimension,
    words: tell(record.words, context),
    equation: tell(record.equation, context),
    inputs: withDistinctLabels(record.inputs(context)),
    sources: referencesOf(record.sources),
    validRange: record.validRange,
    whatIf: whatIf({
      brew: a,
      value,
      read: (changed) => changed.quantities[id],
      nudges: record.nudges.map((name) => [name, NUDGES[name]] as const),
    }),
  };
}

const tell = (told: Told, context: ExplanationContext): string => (typeof told === "string" ? told : told(context));
