/**
 * What a taster finds in a beer, by the terms of the trade; docs/sources.md#meilgaard-1979. A fault is one where the style
 * does not ask for it: butter belongs to some ales, clove to wheat beer.
 */
interface Described {
  readonly name: string;
  readonly kind: "character" | "fault";
  /** What it reminds of, in plain words. */
  readonly means: string;
}

const DESCRIBED = {
  bitter: { name: "Bitter", kind: "character", means: "bitterness of hops on the tongue, during and after" },
  hoppy: { name: "Hoppy", kind: "character", means: "hop flowers, resin, pine, herbs" },
  citrus: { name: "Citrus", kind: "character", means: "lemon, orange, grapefruit" },
  "tropical-fruit": { name: "Tropical fruit", kind: "character", means: "mango, passion fruit, pineapple" },
  floral: { name: "Floral", kind: "character", means: "rose, elder, other flowers" },
  spicy: { name: "Spicy", kind: "character", means: "pepper, coriander, clove where it is wanted" },
  malty: { name: "Malty", kind: "character", means: "bread, biscuit, grain" },
  caramel: { name: "Caramel", kind: "character", means: "toffee, burnt sugar, treacle" },
  roasted: { name: "Roasted", kind: "character", means: "coffee, dark chocolate, burnt crust" },
  smoky: { name: "Smoky", kind: "character", means: "wood smoke, smoked ham" },
  sweet: { name: "Sweet", kind: "character", means: "sugar left in the beer" },
  dry: { name: "Dry", kind: "character", means: "no sweetness left, a clean end" },
  fruity: { name: "Fruity", kind: "character", means: "banana, pear, apple from the yeast (esters)" },
  warming: { name: "Warming", kind: "character", means: "the warmth of alcohol" },
  full: { name: "Full-bodied", kind: "character", means: "thick and round in the mouth" },
  thin: { name: "Thin", kind: "character", means: "watery in the mouth" },
  lively: { name: "Lively", kind: "character", means: "much carbonation, prickling" },
  dark: { name: "Dark", kind: "character", means: "darker than pale: copper, brown, black" },
  hazy: { name: "Hazy", kind: "character", means: "one cannot read through the glass" },
  acetaldehyde: {
    name: "Acetaldehyde",
    kind: "fault",
    means: "green apple, fresh emulsion paint: beer taken too young",
  },
  alcoholic: { name: "Alcoholic, hot", kind: "fault", means: "burning, like spirits: fermented too warm" },
  astringent: { name: "Astringent", kind: "fault", means: "puckering, like strong tea or grape skins" },
  autolysed: { name: "Autolysed", kind: "fault", means: "meat broth, yeast extract: dead yeast" },
  butyric: { name: "Butyric", kind: "fault", means: "rancid butter, vomit: bacteria in wort" },
  caprylic: { name: "Caprylic", kind: "fault", means: "goat, wax, tallow" },
  chlorophenol: { name: "Chlorophenol", kind: "fault", means: "antiseptic, mouthwash: chlorine met phenol" },
  diacetyl: { name: "Diacetyl", kind: "fault", means: "butter, butterscotch; slick on the tongue" },
  dms: {
    name: "DMS",
    kind: "fault",
    means: "cooked sweetcorn, cabbage (dimethyl sulphide): boiled or cooled too slowly",
  },
  estery: { name: "Too estery", kind: "fault", means: "banana or pear drops where not wanted" },
  grainy: { name: "Grainy, husky", kind: "fault", means: "raw grain, straw, husks" },
  grassy: { name: "Grassy", kind: "fault", means: "cut grass, green leaves" },
  isovaleric: { name: "Isovaleric", kind: "fault", means: "cheese, sweaty socks: old hops" },
  "light-struck": { name: "Light-struck", kind: "fault", means: "skunk, burnt rubber: light on hopped beer" },
  phenolic: {
    name: "Phenolic",
    kind: "fault",
    means: "plaster, hospital; clove where not wanted: wild yeast or water",
  },
  metallic: { name: "Metallic", kind: "fault", means: "coins, ink, blood" },
  musty: { name: "Musty", kind: "fault", means: "cellar, mould, cork" },
  oxidised: { name: "Oxidised", kind: "fault", means: "wet cardboard, stale bread, sherry: air and age" },
  solvent: { name: "Solvent", kind: "fault", means: "nail varnish (ethyl acetate), acetone" },
  sour: { name: "Sour, acidic", kind: "fault", means: "vinegar or sour milk where not wanted" },
  sulphury: { name: "Sulphury", kind: "fault", means: "rotten egg, struck match" },
  yeasty: { name: "Yeasty", kind: "fault", means: "bread dough, yeast in the glass" },
  gushing: { name: "Gushing", kind: "fault", means: "foams out of the bottle by itself" },
  flat: { name: "Flat", kind: "fault", means: "no carbonation, no head" },
} as const satisfies Readonly<Record<string, Described>>;

export type DescriptorId = keyof typeof DESCRIBED;

export const DESCRIPTOR_IDS = Object.keys(DESCRIBED) as readonly DescriptorId[];

export const descriptorName = (id: DescriptorId): string => DESCRIBED[id].name;
export const descriptorMeaning = (id: DescriptorId): string => DESCRIBED[id].means;
export const isFault = (id: DescriptorId): boolean => DESCRIBED[id].kind === "fault";

export const CHARACTERS = DESCRIPTOR_IDS.filter((id) => !isFault(id));
export const FAULTS = DESCRIPTOR_IDS.filter(isFault);
