/**
 * The part of BeerJSON 3.0 that a document of recipes uses, as JSON Schema 2020-12, written by hand from the published
 * lists of fields, required fields, words and units (docs/sources.md#beerjson), and held against the standard's own
 * files recipe, hop, culture, style, mash, mash_step, boil, boil_step, packaging, packaging_vessel and
 * measureable_units of 3.0; fermentable, misc, water and timing against those of an earlier version and the change log.
 */
type Schema = Readonly<Record<string, unknown>>;

const text: Schema = { type: "string" };
const number: Schema = { type: "number" };
const integer: Schema = { type: "integer" };
const bool: Schema = { type: "boolean" };
const words = (...list: readonly string[]): Schema => ({ enum: list });
const list = (items: Schema): Schema => ({ type: "array", items });

const record = (properties: Readonly<Record<string, Schema>>, required: readonly string[]): Schema => ({
  type: "object",
  properties,
  required,
  unevaluatedProperties: false,
});

/** Three types are left open in 3.0 (its change log): additions of hops and of water, and the style of a recipe. */
const open = (properties: Readonly<Record<string, Schema>>, required: readonly string[]): Schema => ({
  type: "object",
  properties,
  required,
});

const measure = (value: Schema, ...units: readonly string[]): Schema =>
  record({ unit: words(...units), value }, ["unit", "value"]);

const volume = measure(
  number,
  ...["ml", "l", "tsp", "tbsp", "floz", "cup", "pt", "qt", "gal", "bbl", "ifloz", "ipt", "iqt", "igal", "ibbl"],
);
const mass = measure(number, "mg", "g", "kg", "lb", "oz");
const temperature = measure(number, "C", "F");
const time = measure(integer, "sec", "min", "hr", "day", "week");
const colour = measure(number, "EBC", "Lovi", "SRM");
const gravity = measure(number, "sg", "plato", "brix");
const percent = measure(number, "%");
const acidity = measure(number, "pH");
const pressure = measure(number, "kPa", "psi", "bar");
const concentration = measure(number, "ppm", "ppb", "mg/l");
const count = measure(number, "1", "unit", "each", "dimensionless", "pkg");
const thickness = measure(number, "qt/lb", "gal/lb", "gal/oz", "l/g", "l/kg", "floz/oz", "m^3/kg", "ft^3/lb");
const percentRange = record({ minimum: percent, maximum: percent }, ["minimum", "maximum"]);
const date: Schema = { type: "string", pattern: "\\d{4}-\\d{2}-\\d{2}" };

const timing = record(
  {
    time,
    duration: time,
    continuous: bool,
    specific_gravity: gravity,
    pH: acidity,
    step: integer,
    use: words("add_to_mash", "add_to_boil", "add_to_fermentation", "add_to_package"),
  },
  [],
);

const fermentableBase = {
  name: text,
  type: words("dry extract", "extract", "grain", "sugar", "fruit", "juice", "honey", "other"),
  origin: text,
  producer: text,
  product_id: text,
  grain_group: words("base", "caramel", "flaked", "roasted", "specialty", "smoked", "adjunct"),
  yield: {
    ...record({ fine_grind: percent, coarse_grind: percent, fine_coarse_difference: percent, potential: gravity }, []),
    minProperties: 1,
  },
  color: colour,
};
const fermentableAddition = record({ ...fermentableBase, timing, amount: { oneOf: [volume, mass] } }, [
  ...["name", "type", "yield", "color", "amount"],
]);
const fermentable = record({ ...fermentableBase, moisture: percent, notes: text, protein: percent }, [
  ...["name", "type", "yield", "color"],
]);

const hopAddition = open(
  {
    name: text,
    producer: text,
    product_id: text,
    origin: text,
    year: text,
    form: words("extract", "leaf", "leaf (wet)", "pellet", "powder", "plug"),
    alpha_acid: percent,
    beta_acid: percent,
    timing,
    amount: { oneOf: [volume, mass] },
  },
  ["name", "alpha_acid", "amount", "timing"],
);

const misc = record(
  {
    name: text,
    producer: text,
    product_id: text,
    type: words("spice", "fining", "water agent", "herb", "flavor", "wood", "other"),
    timing,
    amount: { oneOf: [volume, mass, count] },
  },
  ["name", "type", "amount"],
);

const cultureTypes = (isOld: boolean): Schema =>
  words(
    ...["ale", "bacteria", "brett", "champagne", "kveik", "lacto", "lager", "malolactic", "mixed-culture", "other"],
    ...["pedio", "spontaneous", "wine"],
    ...(isOld ? [] : ["wheat"]),
  );
const cultureBase = (isOld: boolean) => ({
  name: text,
  type: cultureTypes(isOld),
  form: words("liquid", "dry", "slant", "culture", "dregs"),
  producer: text,
  product_id: text,
});
const cultureAddition = (isOld: boolean): Schema =>
  record(
    {
      ...cultureBase(isOld),
      attenuation: percent,
      times_cultured: integer,
      timing,
      cell_count_billions: integer,
      amount: { oneOf: [volume, mass, count] },
    },
    ["name", "type", "form", "amount"],
  );
const culture = (isOld: boolean): Schema =>
  record({ ...cultureBase(isOld), attenuation_range: percentRange, notes: text }, ["name", "type", "form"]);

const ions = ["calcium", "bicarbonate", "sulfate", "chloride", "sodium", "magnesium"];
const rarer = ["carbonate", "potassium", "iron", "nitrate", "nitrite", "flouride"];
const waterAddition = (isOld: boolean): Schema =>
  open(
    {
      name: text,
      producer: text,
      amount: volume,
      ...Object.fromEntries([...ions, ...rarer, ...(isOld ? [] : ["fluoride"])].map((ion) => [ion, concentration])),
    },
    ["name", ...ions],
  );

const mashStep = record(
  {
    name: text,
    type: words(
      ...["infusion", "temperature", "decoction", "souring mash", "souring wort", "drain mash tun", "sparge"],
    ),
    amount: volume,
    step_temperature: temperature,
    step_time: time,
    ramp_time: time,
    end_temperature: temperature,
    description: text,
    water_grain_ratio: thickness,
    infuse_temperature: temperature,
    start_ph: acidity,
    end_ph: acidity,
  },
  ["name", "type", "step_temperature", "step_time"],
);
const mash = record(
  { name: text, grain_temperature: temperature, notes: text, mash_steps: { ...list(mashStep), minItems: 1 } },
  ["name", "grain_temperature", "mash_steps"],
);

const step = {
  name: text,
  description: text,
  start_temperature: temperature,
  end_temperature: temperature,
  step_time: time,
  start_gravity: gravity,
  end_gravity: gravity,
  start_ph: acidity,
  end_ph: acidity,
};
const boil = record(
  {
    name: text,
    description: text,
    notes: text,
    pre_boil_size: volume,
    boil_time: time,
    boil_steps: list(record({ ...step, ramp_time: time, chilling_type: words("batch", "inline") }, ["name"])),
  },
  ["boil_time"],
);
const fermentation = record(
  {
    name: text,
    description: text,
    notes: text,
    fermentation_steps: {
      ...list(record({ ...step, free_rise: bool, vessel: text, vessel_pressure: pressure }, ["name"])),
      minItems: 1,
    },
  },
  ["name", "fermentation_steps"],
);
const packaging = record(
  {
    name: text,
    packaged_volume: volume,
    description: text,
    notes: text,
    packaging_vessels: list(
      record(
        {
          ...step,
          type: words("keg", "bottle", "cask", "tank", "firkin", "other"),
          package_date: date,
          carbonation: number,
          vessel_volume: volume,
          vessel_quantity: number,
          graphics: list({}),
        },
        ["name"],
      ),
    ),
  },
  ["name"],
);

const recipe = (isOld: boolean): Schema =>
  record(
    {
      name: text,
      type: words(...["cider", "kombucha", "soda", "other", "mead", "wine", "extract", "partial mash", "all grain"]),
      author: text,
      coauthor: text,
      created: date,
      batch_size: volume,
      efficiency: record({ conversion: percent, lauter: percent, mash: percent, brewhouse: percent }, ["brewhouse"]),
      style: open(
        {
          name: text,
          category: text,
          category_number: integer,
          style_letter: { type: "string", minLength: 1, maxLength: 1, pattern: "[A-Z ]" },
          style_guide: text,
          type: words("beer", "cider", "kombucha", "mead", "other", "soda", "wine"),
        },
        ["name", "category", "style_guide", "type"],
      ),
      ingredients: record(
        {
          fermentable_additions: list(fermentableAddition),
          hop_additions: list(hopAddition),
          miscellaneous_additions: list(misc),
          culture_additions: list(cultureAddition(isOld)),
          water_additions: list(waterAddition(isOld)),
        },
        ["fermentable_additions"],
      ),
      mash,
      notes: text,
      original_gravity: gravity,
      final_gravity: gravity,
      alcohol_by_volume: percent,
      ibu_estimate: record(
        { method: words("Rager", "Tinseth", "Garetz", "Other"), value: measure(number, "IBUs") },
        [],
      ),
      color_estimate: colour,
      beer_pH: acidity,
      carbonation: number,
      apparent_attenuation: percent,
      fermentation,
      packaging,
      boil,
      taste: record({ notes: text, rating: number }, ["notes", "rating"]),
      calories_per_pint: number,
    },
    ["name", "type", "author", "efficiency", "batch_size", "ingredients"],
  );

/** `isOld` for documents of 2.06: no wheat among the cultures, and fluoride only as it was misspelt. */
export const beerJsonSchema = (isOld: boolean): Schema => ({
  $schema: "https://json-schema.org/draft/2020-12/schema",
  ...record(
    {
      beerjson: record(
        {
          version: { enum: isOld ? [2.01, 2.06] : [2.01, 2.06, 3] },
          fermentables: list(fermentable),
          cultures: list(culture(isOld)),
          recipes: list(recipe(isOld)),
        },
        ["version"],
      ),
    },
    ["beerjson"],
  ),
});
