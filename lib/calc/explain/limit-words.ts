import type { Limit, LimitId } from "../ledger";

/** A limit of the equipment in words; the numbers stay in the limit, for the screen to format. */
export interface LimitWords {
  readonly title: string;
  readonly because: string;
}

const WORDS: Readonly<Record<LimitId, LimitWords>> = {
  "grain basket": {
    title: "Dry grain in one mash",
    because:
      "A basket that is packed fuller than it was made for does not let water through, and is heavy and hot to lift. The value is the grist shared out over the mashes; the bound is what the equipment profile states.",
  },
  "mash volume": {
    title: "Room for the mash",
    because:
      "A mash that reaches the rim cannot be stirred without hot liquid running over. The value is the water of one mash at its warmest rest with the volume of the soaked grain; the bound is what the mash vessel holds.",
  },
  "mash thickness": {
    title: "Thickness of the mash",
    because:
      "A mash with too little water cannot be stirred or pumped, and dry lumps stay unmashed. The value is the mash water for each kilogram of grist; the bound is the thickest mash that the equipment profile states.",
  },
  "strike water": {
    title: "Temperature of the strike water",
    because:
      "Cold grain and a cold mash tun take heat out of the strike water, the more the less water there is, and water gets no hotter than its boiling point. The value is how hot it would have to be for the first rest; the bound is the boiling point at this altitude.",
  },
  "strike volume": {
    title: "Room for the strike water",
    because:
      "The water for a mash tun is heated in the kettle, all of it at once, and a kettle filled to the rim spills hot liquor when it is stirred or carried. The value is the strike water of one mash as hot as it must be; the bound is what the kettle holds.",
  },
  "element covered": {
    title: "Liquid over the heating element",
    because:
      "An element that is not covered scorches what sticks to it, burns out and may start a fire. The value is the least that is in the kettle when it heats; the bound is what covers the element.",
  },
  "boil volume": {
    title: "Room for the boil",
    because:
      "Wort foams as it comes to the boil, and a kettle that is too full boils over: hot sticky wort on skin and on electric parts. The value is the hot wort before the boil; the bound is the kettle less the room that is to stay free.",
  },
  "heater reaches the boil": {
    title: "Temperature that the heater reaches",
    because:
      "The hotter the wort, the more heat the kettle loses, until the loss meets the power and it gets no hotter. The value is the temperature where that happens, or the boiling point where it gets there; the bound is the boiling point at this altitude.",
  },
  "heater holds the boil": {
    title: "Heat for the boil",
    because:
      "A boil takes heat to make the steam, and the walls of the kettle lose more. The value is the power that reaches the liquid on this supply; the bound is what half the usual boil-off of this kettle takes, and less than that is no boil any more. Between the two it boils off less than usual, which the ledger allows for.",
  },
  "mash steps": {
    title: "Water left for the first rest",
    because:
      "Without a heater under the mash, later rests are reached by adding boiling water, and all of it has to be kept back from the first rest. The value is what is left for each kilogram of grist; the bound is the thickest mash that the equipment profile states.",
  },
  chilling: {
    title: "Temperature of the wort into the fermenter",
    because:
      "Wort this warm harms the yeast and softens some fermenters. The value is where this chiller ends with its coolant; the bound is common practice.",
  },
  fermenter: {
    title: "Room in the fermenter",
    because:
      "Fermenting beer raises foam, which blocks the airlock and builds up pressure where it has no room. The value is the wort wanted; the bound is the fermenter less the room that is to stay free for foam.",
  },
  carbonation: {
    title: "Carbonation for this container",
    because:
      "A bottle or keg that holds more gas than it was made for may burst, and glass then flies. The value is what the recipe asks for; the bound is what the maker of the container states.",
  },
};

/**
 * Tells in plain words why a limit matters and how its value comes about.
 *
 * @param limit - A limit of a ledger, kept or not.
 * @returns A title and the reason; value and bound are in the limit itself.
 * @source Geometry and power of the equipment (docs/sources.md#trade-practice)
 * @example
 * limitWords(limit).title; // "Room for the boil"
 */
export function limitWords(limit: Pick<Limit, "id">): LimitWords {
  return WORDS[limit.id];
}
