import { YEAST_FIELDS } from "../../recipe-fields";
import type { FieldCursor } from "../field-cursor";
import type { StatedYeast } from "../stated-recipe";
import { YEAST_NAME } from "../stated-fields";
import { takeMeasure } from "./measure";
import { PERCENT } from "./units";

/** The first culture ferments the beer here; further ones are kept. `records` are the document's own cultures. */
export function readYeast(additions: FieldCursor, records: FieldCursor): StatedYeast {
  const [culture] = additions.items;
  if (culture === undefined) return { cells: null };
  const name = culture.at("name").takeText(YEAST_NAME);
  culture.at("type").keep("this book knows a yeast by its attenuation and its temperature");
  const record = records.items.find((found) => name !== null && found.at("name").text === name);
  const low = record && takeMeasure(record.at("attenuation_range", "minimum"), YEAST_FIELDS.attenuationLow, PERCENT);
  const high = record && takeMeasure(record.at("attenuation_range", "maximum"), YEAST_FIELDS.attenuationHigh, PERCENT);
  const one = takeMeasure(culture.at("attenuation"), YEAST_FIELDS.attenuationLow, PERCENT);
  return {
    ...(name === null ? {} : { name }),
    ...(low && high ? { attenuationLow: low, attenuationHigh: high } : {}),
    ...(one !== null && !(low && high) ? { attenuation: one } : {}),
    cells: readCells(culture.at("cell_count_billions")),
  };
}

function readCells(cells: FieldCursor): number | null {
  const value = cells.node?.value;
  if (value === undefined) return null;
  if (typeof value !== "number" || value <= 0 || value > 1e9) return cells.refuse("it is no count of cells");
  cells.take("as a pitch rate for the batch and its gravity");
  return value;
}
