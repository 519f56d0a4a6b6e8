import type { Fermentable, FermentableKind } from "@/lib/calc/ledger";
import { fraction } from "@/lib/calc/units";
import { pointsPerPoundGallonFromExtract } from "@/lib/calc/gravity";
import { FERMENTABLE_FIELDS } from "../../recipe-fields";
import type { FieldCursor } from "../field-cursor";
import { plainOf } from "../file-node";
import { fermentableOf, type StatedYield } from "../fermentable-of";
import { FERMENTABLE_NAME } from "../stated-fields";
import { takeMeasure } from "./measure";
import { COLOUR, MASS, PERCENT, VOLUME } from "./units";

/** The rows of a grist. `records` are the document's own fermentables, which say more of each than a row may. */
export function readFermentables(additions: FieldCursor, records: FieldCursor): readonly Fermentable[] {
  return additions.items.flatMap((row) => {
    const read = row.node === null ? null : row.log.whole(row.node, () => readFermentable(row, records));
    return read === null ? [] : [read];
  });
}

function readFermentable(row: FieldCursor, records: FieldCursor): Fermentable | null {
  const name = row.at("name").takeText(FERMENTABLE_NAME);
  const kind = kindOf(row);
  if (kind === null) return null;
  if (Object.hasOwn(VOLUME, row.at("amount", "unit").text ?? "")) {
    return row.at("amount").refuse("a volume: this book weighs fermentables, and the file gives no density");
  }
  const kg = takeMeasure(row.at("amount"), FERMENTABLE_FIELDS.kg, MASS);
  const colour = takeMeasure(row.at("color"), FERMENTABLE_FIELDS.colour, COLOUR);
  if (name === null || kg === null || colour === null) {
    if (row.at("amount").node === null) row.refuse("it has no amount");
    if (row.at("color").node === null) row.refuse("it has no colour");
    return null;
  }
  const record = recordOf(row, records);
  const stated = takeYield(row);
  if (stated === null) return row.refuse("it has no yield that this book understands");
  return fermentableOf({
    name,
    kind,
    kg,
    colour,
    yield: stated,
    moisture: record === undefined ? null : takeMeasure(record.at("moisture"), FERMENTABLE_FIELDS.moisture, PERCENT),
    isSyrup: row.at("type").text === "extract",
    station: stationOf(row, kind),
    log: row.log,
  });
}

/** The document's record of a row: of one name the one with its yield and colour, if there are several. */
function recordOf(row: FieldCursor, records: FieldCursor): FieldCursor | undefined {
  const named = records.items.filter((found) => found.at("name").text === row.at("name").text);
  const said = (found: FieldCursor): string =>
    JSON.stringify([found.at("yield"), found.at("color")].map(({ node }) => node && plainOf(node)));
  return named.find((found) => said(found) === said(row)) ?? named[0];
}

const KINDS: Readonly<Record<string, FermentableKind>> = {
  grain: "malt",
  sugar: "sugar",
  honey: "sugar",
  extract: "malt extract",
  "dry extract": "malt extract",
};

function kindOf(row: FieldCursor): FermentableKind | null {
  const type = row.at("type").text ?? "";
  const kind = Object.hasOwn(KINDS, type) ? KINDS[type] : undefined;
  if (kind === undefined) {
    row.at("type").refuse("fruit, juice and other fermentables have no place in this book's grist");
    return null;
  }
  const isAdjunct = kind === "malt" && ["flaked", "adjunct"].includes(row.at("grain_group").text ?? "");
  row.at("type").take(`as ${isAdjunct ? "adjunct" : kind}`);
  if (isAdjunct) row.at("grain_group").take();
  return isAdjunct ? "adjunct" : kind;
}

function stationOf(row: FieldCursor, kind: FermentableKind): Fermentable["station"] {
  const use = row.at("timing", "use");
  if (kind === "malt") {
    if (use.text === "add_to_mash") use.take();
    return "mash";
  }
  if (use.text === "add_to_mash" || (use.node === null && kind === "adjunct")) {
    use.take();
    return "mash";
  }
  if (use.text === "add_to_boil") use.take();
  else use.convert("into the kettle: this book adds no fermentable later");
  return "kettle";
}

function takeYield(row: FieldCursor): StatedYield | null {
  const fine = takeMeasure(row.at("yield", "fine_grind"), FERMENTABLE_FIELDS.extract, PERCENT);
  if (fine !== null) return { of: "dry substance", share: fine };
  const potential = row.at("yield", "potential");
  const gravity = potential.at("value").node?.value;
  if (potential.at("unit").text !== "sg" || typeof gravity !== "number") return null;
  // Points of a pound in a gallon, against those of pure extract.
  const share = (1000 * (gravity - 1)) / pointsPerPoundGallonFromExtract(fraction(1));
  const found = potential.takeQuantity(FERMENTABLE_FIELDS.extract, { ok: true, value: share, converted: true });
  return found === null ? null : { of: "weight", share: found };
}
