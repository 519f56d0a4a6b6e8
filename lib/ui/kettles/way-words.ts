import type { WayOutKind } from "@/lib/calc/adapt";
import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "../format-quantity";
import type { ToldWay } from "./kettle-figures";

/** A way out as a heading: "Brew less: 17.3 L into the fermenter". */
export function wayWords(way: ToldWay, preferences: Preferences): string {
  const first = changeWords(way, preferences);
  return way.also === null ? first : `${first}, and ${ALSO[way.also]}`;
}

/** A second change says itself without a figure. */
const ALSO: Readonly<Record<WayOutKind, string>> = {
  "less volume": "brew less",
  "more volume": "brew more",
  "water after the boil": "add water after the boil",
  "malt extract for part of the grist": "take malt extract for part of the grist",
  "sugar for part of the grist": "take sugar for part of the grist",
  "thicker mash": "mash thicker",
  "thinner mash": "mash thinner",
  "fewer rests": "leave out the later rests",
  "gentler steps": "make the steps smaller",
  "one rest instead": "mash at one rest in between",
  "two mashes": "mash in two halves",
  "longer boil": "boil longer",
  "split batch": "brew it in parts",
};

/** A way out behind "with" in a line: "with 4.0 L of water after the boil". */
export function wayInShort(way: ToldWay, preferences: Preferences): string {
  const first = shortWords(way, preferences);
  return way.also === null ? first : `${first} and ${SHORT_ALSO[way.also]}`;
}

const SHORT_ALSO: Readonly<Record<WayOutKind, string>> = {
  "less volume": "less volume",
  "more volume": "more volume",
  "water after the boil": "water after the boil",
  "malt extract for part of the grist": "malt extract",
  "sugar for part of the grist": "sugar",
  "thicker mash": "a thicker mash",
  "thinner mash": "a thinner mash",
  "fewer rests": "fewer rests",
  "gentler steps": "gentler steps",
  "one rest instead": "one rest",
  "two mashes": "two mashes",
  "longer boil": "a longer boil",
  "split batch": "several brews",
};

function shortWords({ kind, figure, times, intoFermenter }: ToldWay, preferences: Preferences): string {
  const shown = printer(preferences);
  switch (kind) {
    case "less volume":
    case "more volume":
      return `${shown(figure, "volume")} into the fermenter`;
    case "water after the boil":
      return `a top-up of ${shown(figure, "volume")} after the boil`;
    case "malt extract for part of the grist":
      return `malt extract for ${shown(figure, "fraction", 0)} of the mash`;
    case "sugar for part of the grist":
      return `sugar for ${shown(figure, "fraction", 0)} of the base malt`;
    case "thicker mash":
    case "thinner mash":
      return `a mash of ${shown(figure, "thickness")}`;
    case "fewer rests":
      return figure === 1 ? "the first rest only" : `the first ${figure} rests only`;
    case "gentler steps":
      return `steps up to ${shown(figure, "temperature")}`;
    case "one rest instead":
      return `one rest of ${shown(figure, "temperature")}`;
    case "two mashes":
      return "two mashes into one boil";
    case "longer boil":
      return `a boil of ${shown(figure, "minutes")}`;
    case "split batch":
      return `${times} brews of ${shown(intoFermenter, "volume")}`;
  }
}

function changeWords({ kind, figure, times, intoFermenter }: ToldWay, preferences: Preferences): string {
  const shown = printer(preferences);
  switch (kind) {
    case "less volume":
      return `Brew less: ${shown(figure, "volume")} into the fermenter`;
    case "more volume":
      return `Brew more: ${shown(figure, "volume")} into the fermenter`;
    case "water after the boil":
      return `Boil it stronger and add ${shown(figure, "volume")} of boiled, cooled water after the boil`;
    case "malt extract for part of the grist":
      return `Take malt extract for ${shown(figure, "fraction", 0)} of the extract of the mash`;
    case "sugar for part of the grist":
      return `Take sugar for ${shown(figure, "fraction", 0)} of the extract of the base malt`;
    case "thicker mash":
      return `Mash thicker, at ${shown(figure, "thickness")}`;
    case "thinner mash":
      return `Mash thinner, at ${shown(figure, "thickness")}`;
    case "fewer rests":
      return figure === 1 ? "Mash at the first rest only" : `Mash at the first ${figure} rests only`;
    case "gentler steps":
      return `End the mash at ${shown(figure, "temperature")}`;
    case "one rest instead":
      return `Mash at one rest of ${shown(figure, "temperature")} for as long as all of them`;
    case "two mashes":
      return "Mash the grist in two halves, one after the other, into one boil";
    case "longer boil":
      return `Boil for ${shown(figure, "minutes")}`;
    case "split batch":
      return `Brew it ${times} times, ${shown(intoFermenter, "volume")} each`;
  }
}

function printer(preferences: Preferences): (value: number, dimension: Dimension, digits?: number) => string {
  return (value, dimension, digits) => {
    const { text, unit } = formatQuantity({ value, dimension, preferences, digits });
    return `${text}\u00a0${unit}`;
  };
}
