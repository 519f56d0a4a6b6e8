/** What a field holds: another type by name, a list of it with "[]", or a leaf. */
type Fields = Readonly<Record<string, string>>;

const leaves = (...names: readonly string[]): Fields => Object.fromEntries(names.map((name) => [name, "leaf"]));

/**
 * The fields of the standard, by type: names as its schema of version 3.0 has them, with the misspelling that it keeps
 * (docs/sources.md#beerjson). A quantity is a leaf: its value and unit belong together.
 */
const TYPES: Readonly<Record<string, Fields>> = {
  root: {
    ...leaves("version"),
    recipes: "recipe",
    fermentables: "leaf",
    miscellaneous_ingredients: "leaf",
    hop_varieties: "leaf",
    cultures: "leaf",
    profiles: "leaf",
    styles: "leaf",
    mashes: "leaf",
    fermentations: "leaf",
    equipments: "leaf",
    boil: "leaf",
    packaging: "leaf",
  },
  recipe: {
    ...leaves("name", "type", "author", "coauthor", "created", "batch_size", "notes", "original_gravity"),
    ...leaves("final_gravity", "alcohol_by_volume", "color_estimate", "beer_pH", "carbonation"),
    ...leaves("apparent_attenuation", "calories_per_pint"),
    efficiency: "efficiency",
    style: "style",
    ingredients: "ingredients",
    mash: "mash",
    ibu_estimate: "ibu",
    fermentation: "fermentation",
    packaging: "packaging",
    boil: "boil",
    taste: "taste",
  },
  efficiency: leaves("conversion", "lauter", "mash", "brewhouse"),
  style: leaves("name", "category", "category_number", "style_letter", "style_guide", "type"),
  ibu: leaves("method", "value"),
  taste: leaves("notes", "rating"),
  ingredients: {
    fermentable_additions: "fermentable",
    hop_additions: "hop",
    miscellaneous_additions: "misc",
    culture_additions: "culture",
    water_additions: "water",
  },
  fermentable: {
    ...leaves("name", "type", "origin", "producer", "product_id", "grain_group", "color", "amount"),
    yield: "yield",
    timing: "timing",
  },
  yield: leaves("fine_grind", "coarse_grind", "fine_coarse_difference", "potential"),
  hop: {
    ...leaves("name", "producer", "product_id", "origin", "year", "form", "alpha_acid", "beta_acid", "amount"),
    timing: "timing",
  },
  misc: { ...leaves("name", "producer", "product_id", "type", "amount"), timing: "timing" },
  culture: {
    ...leaves("name", "type", "form", "producer", "product_id", "attenuation", "times_cultured"),
    ...leaves("cell_count_billions", "amount"),
    timing: "timing",
  },
  water: leaves(
    ...["name", "producer", "calcium", "bicarbonate", "carbonate", "potassium", "iron", "nitrate", "nitrite"],
    ...["fluoride", "flouride", "sulfate", "chloride", "sodium", "magnesium", "amount"],
  ),
  timing: leaves("time", "duration", "continuous", "specific_gravity", "pH", "step", "use"),
  mash: { ...leaves("name", "grain_temperature", "notes"), mash_steps: "mashStep" },
  mashStep: leaves(
    ...["name", "type", "amount", "step_temperature", "step_time", "ramp_time", "end_temperature", "description"],
    ...["water_grain_ratio", "infuse_temperature", "start_ph", "end_ph"],
  ),
  boil: { ...leaves("name", "description", "notes", "pre_boil_size", "boil_time"), boil_steps: "boilStep" },
  boilStep: leaves(
    ...["name", "description", "start_temperature", "end_temperature", "ramp_time", "step_time"],
    ...["start_gravity", "end_gravity", "start_ph", "end_ph", "chilling_type"],
  ),
  fermentation: { ...leaves("name", "description", "notes"), fermentation_steps: "fermentationStep" },
  fermentationStep: leaves(
    ...["name", "description", "start_temperature", "end_temperature", "step_time", "free_rise", "start_gravity"],
    ...["end_gravity", "start_ph", "end_ph", "vessel", "vessel_pressure"],
  ),
  packaging: { ...leaves("name", "packaged_volume", "description", "notes"), packaging_vessels: "vessel" },
  vessel: {
    ...leaves("name", "type", "description", "package_date", "start_temperature", "end_temperature", "step_time"),
    ...leaves("start_gravity", "end_gravity", "start_ph", "end_ph", "carbonation", "vessel_volume", "vessel_quantity"),
    graphics: "leaf",
  },
};

/** Types that version 3.0 leaves open for fields of other people, while it closes all others. */
const OPEN = new Set(["style", "hop", "water"]);

/** Whether a field that the standard does not have may stand at this path all the same, in version 3.0 too. */
export function mayHoldMore(path: readonly string[]): boolean {
  return OPEN.has(typeAt(path.slice(0, -1)) ?? "");
}

/** Whether a path from the root of a document leads to a field of the standard; numbers are places in lists. */
export function isStandardPath(path: readonly string[]): boolean {
  return typeAt(path) !== null;
}

/** The type at a path; null where the standard has nothing there. What is inside of a leaf is a leaf. */
function typeAt(path: readonly string[]): string | null {
  let type = "root";
  for (const key of path) {
    if (/^\d+$/.test(key)) continue;
    if (type === "leaf") return type;
    const fields = TYPES[type] ?? {};
    const next = Object.hasOwn(fields, key) ? fields[key] : undefined;
    if (next === undefined) return null;
    type = next;
  }
  return type;
}
