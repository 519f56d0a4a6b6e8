import type { ExplainedNumber } from "@/lib/calc/explain";
import { QUANTITIES } from "@/lib/calc/ledger";
import { causedNoun, causeLabel } from "@/lib/model/difference-sentence";
import type { ExplainedTarget } from "./explained-target";
import type { Explained } from "./explained";

/** What one station makes of a difference. */
export function explainCause(
  { id, cause }: Extract<ExplainedTarget, { kind: "cause" }>,
  { causes }: Explained,
): ExplainedNumber | null {
  const found = causes.find(({ quantity }) => quantity === id);
  const part = found?.parts.find((each) => each.id === cause);
  if (found === undefined || part === undefined) return null;
  const { dimension } = QUANTITIES[id];
  const place = causeLabel(cause);
  // A difference of strengths is shown in degrees Plato or per cent as it is reckoned, whatever scale the page uses.
  const unit = UNITS[id];
  return {
    label: `${causedNoun(id)}: part of ${place.charAt(0).toLowerCase()}${place.slice(1)}`,
    value: found.planned + part.value,
    dimension,
    words: `What the planned value would become if only this had gone as the readings say. The figures that the readings settle on take the place of the planned ones station by station; the part is the mean over all orders in which that can be done, so that the parts and what is left of the reading add up to the difference.`,
    equation: "part = mean over all orders of (number with this station as settled − number before)",
    inputs: [
      { label: "Part of the difference", value: part.value, dimension: null, unit },
      { label: "Its standard uncertainty", value: part.sd, dimension: null, unit },
      { label: "Whole difference", value: found.difference, dimension: null, unit },
      { label: "Planned", value: found.planned, dimension, unit: "", quantity: id },
    ],
    sources: [
      { anchor: "shapley-1953", title: "Shapley 1953: parts that add up to a whole" },
      { anchor: "mass-balance", title: "Conservation of mass and of extract" },
    ],
    validRange: "Named as a cause only beyond twice its uncertainty.",
    whatIf: [],
  };
}

const UNITS = {
  "fermenter.originalExtract": "°P",
  "fermenter.volume": "L",
  "fermenter.finalExtract": "°P",
  "package.alcohol": "% vol",
} as const;
