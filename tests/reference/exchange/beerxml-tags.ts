/**
 * The tables of BeerXML 1.0 as published (docs/sources.md#beerxml): for each record the tags whose column “Required” says
 * Yes, those that say Conditional or No, those of appendix A for display, and the values of each tag of the format List.
 */
const words = (text: string): readonly string[] => text.trim().split(/\s+/);

export interface PublishedRecord {
  readonly required: readonly string[];
  readonly optional: readonly string[];
  readonly display: readonly string[];
  readonly lists: Readonly<Record<string, readonly string[]>>;
}

export const PUBLISHED_SETS: Readonly<Record<string, string>> = {
  HOPS: "HOP",
  FERMENTABLES: "FERMENTABLE",
  YEASTS: "YEAST",
  MISCS: "MISC",
  WATERS: "WATER",
  STYLES: "STYLE",
  MASH_STEPS: "MASH_STEP",
  MASHS: "MASH",
  RECIPES: "RECIPE",
  EQUIPMENTS: "EQUIPMENT",
};

export const PUBLISHED_RECORDS: Readonly<Record<string, PublishedRecord>> = {
  HOP: {
    required: words("NAME VERSION ALPHA AMOUNT USE TIME"),
    optional: words("NOTES TYPE FORM BETA HSI ORIGIN SUBSTITUTES HUMULENE CARYOPHYLLENE COHUMULONE MYRCENE"),
    display: words("DISPLAY_AMOUNT INVENTORY DISPLAY_TIME"),
    lists: {
      USE: ["Boil", "Dry Hop", "Mash", "First Wort", "Aroma"],
      TYPE: ["Bittering", "Aroma", "Both"],
      FORM: ["Pellet", "Plug", "Leaf"],
    },
  },
  FERMENTABLE: {
    required: words("NAME VERSION TYPE AMOUNT YIELD COLOR"),
    optional: words(`ADD_AFTER_BOIL ORIGIN SUPPLIER NOTES COARSE_FINE_DIFF MOISTURE DIASTATIC_POWER PROTEIN MAX_IN_BATCH
      RECOMMEND_MASH IBU_GAL_PER_LB`),
    display: words("DISPLAY_AMOUNT POTENTIAL INVENTORY DISPLAY_COLOR"),
    lists: { TYPE: ["Grain", "Sugar", "Extract", "Dry Extract", "Adjunct"] },
  },
  YEAST: {
    required: words("NAME VERSION TYPE FORM AMOUNT"),
    optional:
      words(`AMOUNT_IS_WEIGHT LABORATORY PRODUCT_ID MIN_TEMPERATURE MAX_TEMPERATURE FLOCCULATION ATTENUATION NOTES
      BEST_FOR TIMES_CULTURED MAX_REUSE ADD_TO_SECONDARY`),
    display: words("DISPLAY_AMOUNT DISP_MIN_TEMP DISP_MAX_TEMP INVENTORY CULTURE_DATE"),
    lists: {
      TYPE: ["Ale", "Lager", "Wheat", "Wine", "Champagne"],
      FORM: ["Liquid", "Dry", "Slant", "Culture"],
      FLOCCULATION: ["Low", "Medium", "High", "Very High"],
    },
  },
  MISC: {
    required: words("NAME VERSION TYPE USE TIME AMOUNT"),
    optional: words("AMOUNT_IS_WEIGHT USE_FOR NOTES"),
    display: words("DISPLAY_AMOUNT INVENTORY DISPLAY_TIME"),
    lists: {
      TYPE: ["Spice", "Fining", "Water Agent", "Herb", "Flavor", "Other"],
      USE: ["Boil", "Mash", "Primary", "Secondary", "Bottling"],
    },
  },
  WATER: {
    required: words("NAME VERSION AMOUNT CALCIUM BICARBONATE SULFATE CHLORIDE SODIUM MAGNESIUM"),
    optional: words("PH NOTES"),
    display: words("DISPLAY_AMOUNT"),
    lists: {},
  },
  EQUIPMENT: {
    required: words("NAME VERSION BOIL_SIZE BATCH_SIZE"),
    optional: words(`TUN_VOLUME TUN_WEIGHT TUN_SPECIFIC_HEAT TOP_UP_WATER TRUB_CHILLER_LOSS EVAP_RATE BOIL_TIME
      CALC_BOIL_VOLUME LAUTER_DEADSPACE TOP_UP_KETTLE HOP_UTILIZATION NOTES`),
    display: words(`DISPLAY_BOIL_SIZE DISPLAY_BATCH_SIZE DISPLAY_TUN_VOLUME DISPLAY_TUN_WEIGHT DISPLAY_TOP_UP_WATER
      DISPLAY_TRUB_CHILLER_LOSS DISPLAY_LAUTER_DEADSPACE DISPLAY_TOP_UP_KETTLE`),
    lists: {},
  },
  STYLE: {
    required: words(`NAME CATEGORY VERSION CATEGORY_NUMBER STYLE_LETTER STYLE_GUIDE TYPE OG_MIN OG_MAX FG_MIN FG_MAX
      IBU_MIN IBU_MAX COLOR_MIN COLOR_MAX`),
    optional: words("CARB_MIN CARB_MAX ABV_MIN ABV_MAX NOTES PROFILE INGREDIENTS EXAMPLES"),
    display: words(`DISPLAY_OG_MIN DISPLAY_OG_MAX DISPLAY_FG_MIN DISPLAY_FG_MAX DISPLAY_COLOR_MIN DISPLAY_COLOR_MAX
      OG_RANGE FG_RANGE IBU_RANGE CARB_RANGE COLOR_RANGE ABV_RANGE`),
    lists: { TYPE: ["Lager", "Ale", "Mead", "Wheat", "Mixed", "Cider"] },
  },
  MASH_STEP: {
    required: words("NAME VERSION TYPE STEP_TEMP STEP_TIME"),
    optional: words("INFUSE_AMOUNT RAMP_TIME END_TEMP"),
    display: words("DESCRIPTION WATER_GRAIN_RATIO DECOCTION_AMT INFUSE_TEMP DISPLAY_STEP_TEMP DISPLAY_INFUSE_AMT"),
    lists: { TYPE: ["Infusion", "Temperature", "Decoction"] },
  },
  MASH: {
    required: words("NAME VERSION GRAIN_TEMP MASH_STEPS"),
    optional: words("NOTES TUN_TEMP SPARGE_TEMP PH TUN_WEIGHT TUN_SPECIFIC_HEAT EQUIP_ADJUST"),
    display: words("DISPLAY_GRAIN_TEMP DISPLAY_TUN_TEMP DISPLAY_SPARGE_TEMP DISPLAY_TUN_WEIGHT"),
    lists: {},
  },
  RECIPE: {
    required: words(`NAME VERSION TYPE STYLE BREWER BATCH_SIZE BOIL_SIZE BOIL_TIME HOPS FERMENTABLES MISCS YEASTS WATERS
      MASH`),
    optional:
      words(`EQUIPMENT ASST_BREWER EFFICIENCY NOTES TASTE_NOTES TASTE_RATING OG FG FERMENTATION_STAGES PRIMARY_AGE
      PRIMARY_TEMP SECONDARY_AGE SECONDARY_TEMP TERTIARY_AGE TERTIARY_TEMP AGE AGE_TEMP DATE CARBONATION
      FORCED_CARBONATION PRIMING_SUGAR_NAME CARBONATION_TEMP PRIMING_SUGAR_EQUIV KEG_PRIMING_FACTOR`),
    display: words(`EST_OG EST_FG EST_COLOR IBU IBU_METHOD EST_ABV ABV ACTUAL_EFFICIENCY CALORIES DISPLAY_BATCH_SIZE
      DISPLAY_BOIL_SIZE DISPLAY_OG DISPLAY_FG DISPLAY_PRIMARY_TEMP DISPLAY_SECONDARY_TEMP DISPLAY_TERTIARY_TEMP
      DISPLAY_AGE_TEMP CARBONATION_USED DISPLAY_CARB_TEMP`),
    lists: { TYPE: ["Extract", "Partial Mash", "All Grain"], IBU_METHOD: ["Rager", "Tinseth", "Garetz"] },
  },
};
