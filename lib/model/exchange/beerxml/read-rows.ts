import type { Fermentable, FermentableKind, HopAddition, HopStand, MashAcid } from "@/lib/calc/ledger";
import { celsius, ebcFromSrm, lovibond, minutes, srm, srmFromLovibond, type Grams } from "@/lib/calc/units";
import type { Ions, Salt, SaltGrams } from "@/lib/calc/water";
import {
  ACID_FIELDS,
  FERMENTABLE_FIELDS,
  HOP_FIELDS,
  ION_FIELDS,
  SALT_FIELDS,
  STAND_FIELDS,
  YEAST_FIELDS,
} from "../../recipe-fields";
import { fermentableOf } from "../fermentable-of";
import type { FieldCursor } from "../field-cursor";
import { acidNamed, saltNamed } from "../known-names";
import type { ReadingLog } from "../report";
import type { StatedYeast } from "../stated-recipe";
import { FERMENTABLE_NAME, HOP_NAME, YEAST_NAME } from "../stated-fields";
import { gramsOfKilograms, ofPercent, readBoolean, takeNumber } from "./leaf";

function rows<T>(set: FieldCursor, read: (row: FieldCursor) => T | null): readonly T[] {
  return set.items.flatMap((row) => {
    const found = row.node === null ? null : row.log.whole(row.node, () => read(row));
    return found === null ? [] : [found];
  });
}

export function readFermentables(set: FieldCursor): readonly Fermentable[] {
  return rows(set, (row) => {
    const type = row.at("TYPE");
    const kind = KINDS.get((type.text ?? "").toLowerCase());
    if (kind === undefined) {
      return (type.node === null ? row : type).refuse(
        "its type is one of: Grain, Sugar, Extract, Dry Extract, Adjunct",
      );
    }
    const name = row.at("NAME").takeText(FERMENTABLE_NAME);
    const kg = takeNumber(row.at("AMOUNT"), FERMENTABLE_FIELDS.kg);
    const share = takeNumber(row.at("YIELD"), FERMENTABLE_FIELDS.extract, ofPercent);
    const isLiquid = (type.text ?? "").toLowerCase() === "extract";
    const colour = takeNumber(row.at("COLOR"), FERMENTABLE_FIELDS.colour, isLiquid ? ebcOfSrm : ebcOfLovibond);
    if (name === null || kg === null || share === null || colour === null) return refuseMissing(row);
    type.take(`as ${kind}`);
    return fermentableOf({
      name,
      kind,
      kg,
      colour,
      // Of the dry grain; of an extract, an adjunct or a sugar of the weight as it is.
      yield: { of: kind === "malt" ? "dry substance" : "weight", share },
      moisture: readMoisture(row, kind),
      isSyrup: isLiquid,
      station: stationOf(row, kind),
      log: row.log,
    });
  });
}

/** The standard has moisture for grain and adjuncts, and wants it ignored anywhere else. */
function readMoisture(row: FieldCursor, kind: FermentableKind): Fermentable["moisture"] | null {
  const moisture = row.at("MOISTURE");
  if (kind === "malt" || kind === "adjunct") return takeNumber(moisture, FERMENTABLE_FIELDS.moisture, ofPercent);
  moisture.keep("the standard ignores it of what is no grain");
  return null;
}

const KINDS: ReadonlyMap<string, FermentableKind> = new Map([
  ["grain", "malt"],
  ["adjunct", "adjunct"],
  ["sugar", "sugar"],
  ["extract", "malt extract"],
  ["dry extract", "malt extract"],
]);

/** Malt colour is in Lovibond; the standard has SRM for liquid extracts alone. */
const ebcOfLovibond = (value: number): number => ebcFromSrm(srmFromLovibond(lovibond(value)));
const ebcOfSrm = (value: number): number => ebcFromSrm(srm(value));

function stationOf(row: FieldCursor, kind: FermentableKind): Fermentable["station"] {
  const mashed = row.at("RECOMMEND_MASH");
  if (kind === "malt") return "mash";
  if (kind === "adjunct" && readBoolean(mashed) !== false) {
    mashed.take();
    return "mash";
  }
  if (readBoolean(mashed) === true) {
    mashed.take("it goes into the mash");
    return "mash";
  }
  if (readBoolean(row.at("ADD_AFTER_BOIL")) === true) {
    row.at("ADD_AFTER_BOIL").convert("into the kettle: this book adds no fermentable later");
  }
  return "kettle";
}

function refuseMissing(row: FieldCursor): null {
  const empty = ["NAME", "AMOUNT", "YIELD", "COLOR", "ALPHA", "TIME"].filter((tag) => row.at(tag).text === "");
  return empty.length === 0 ? null : row.refuse(`${empty.join(", ")} is empty`);
}

/** USE, in letters of any case, is where this book has boil, stand and dry; what it has no place for is kept. */
export function readHops(set: FieldCursor, boilTime: FieldCursor): readonly HopAddition[] {
  return rows(set, (row) => {
    const name = row.at("NAME").takeText(HOP_NAME);
    const grams = takeNumber(row.at("AMOUNT"), HOP_FIELDS.grams, gramsOfKilograms);
    const alpha = takeNumber(row.at("ALPHA"), HOP_FIELDS.alpha, ofPercent);
    if (name === null || grams === null || alpha === null) return refuseMissing(row);
    const use = row.at("USE");
    const time = row.at("TIME");
    const base = { name, grams, alpha };
    switch ((use.text ?? "").toLowerCase()) {
      case "boil": {
        use.take();
        const before = takeNumber(time, HOP_FIELDS.minutes);
        return before === null ? null : { ...base, use: "boil", minutes: before };
      }
      case "first wort": {
        use.convert("as boiled from the first wort on");
        return { ...base, use: "boil", minutes: firstWortMinutes(time, boilTime) };
      }
      case "aroma": {
        use.convert("as a hop stand");
        const steeped = takeNumber(time, STAND_FIELDS.minutes);
        return steeped === null ? null : { ...base, use: "stand", minutes: steeped };
      }
      case "dry hop":
        use.take("a dry hop");
        time.keep("bitterness does not depend on when a dry hop goes in");
        return { ...base, use: "dry", minutes: minutes(0) };
      default:
        return (use.node === null ? row : use).refuse("hops in the mash and elsewhere have no place in this book");
    }
  });
}

/** Its TIME is the boil time, says the standard; where a file has none of it, that of the recipe. */
function firstWortMinutes(time: FieldCursor, boilTime: FieldCursor): HopAddition["minutes"] {
  const stated = Number(time.text ?? "") > 0 ? takeNumber(time, HOP_FIELDS.minutes) : null;
  if (stated !== null) return stated;
  time.keep("the whole boil");
  const whole = Number(boilTime.text ?? "60");
  return minutes(whole >= 0 && whole <= 600 ? whole : 60);
}

/** The standard has no stand of its own: it lasts as long as the longest steep, and the temperature is a guess. */
export function standOfHops(hops: readonly HopAddition[], log: ReadingLog): HopStand | null {
  const steeped = hops.filter(({ use }) => use === "stand").map((hop) => hop.minutes);
  if (steeped.length === 0) return null;
  const longest = minutes(Math.max(...steeped));
  log.derive(
    `A hop stand of ${String(longest)} min at 80 °C for the hops steeped: the standard states no temperature.`,
  );
  return { celsius: celsius(80), minutes: longest };
}

export function readYeasts(set: FieldCursor): StatedYeast {
  const [yeast] = set.items;
  if (yeast === undefined) return { cells: null };
  const name = yeast.at("NAME").takeText(YEAST_NAME);
  const attenuation = takeNumber(yeast.at("ATTENUATION"), YEAST_FIELDS.attenuationLow, ofPercent);
  return {
    ...(name === null ? {} : { name }),
    ...(attenuation === null ? {} : { attenuation }),
    cells: null,
  };
}

export function readWaters(set: FieldCursor): Ions | null {
  const [source] = set.items;
  if (source === undefined || source.node === null) return null;
  return source.log.whole(source.node, () => {
    const [calcium, magnesium] = [ion(source, "calcium"), ion(source, "magnesium")];
    const [sodium, sulfate] = [ion(source, "sodium"), ion(source, "sulfate")];
    const [chloride, bicarbonate] = [ion(source, "chloride"), ion(source, "bicarbonate")];
    if (calcium === null || magnesium === null || sodium === null) return null;
    if (sulfate === null || chloride === null || bicarbonate === null) return null;
    return { calcium, magnesium, sodium, sulfate, chloride, bicarbonate };
  });
}

const ion = (source: FieldCursor, name: keyof Ions) => takeNumber(source.at(name.toUpperCase()), ION_FIELDS[name]);

/**
 * Salts and acids of a known strength among the water agents; all else is kept. Amounts are kilograms or litres. Without
 * the flag a salt is weighed and an acid measured out, as the standard has solids and liquids: its sentences on the flag
 * contradict each other.
 */
export function readMiscs(set: FieldCursor): { readonly salts: SaltGrams; readonly acid: MashAcid | null } {
  const salts: Partial<Record<Salt, Grams>> = {};
  let acid: MashAcid | null = null;
  for (const row of set.items) {
    if ((row.at("TYPE").text ?? "").toLowerCase() !== "water agent") continue;
    const name = row.at("NAME").text ?? "";
    const isWeight = readBoolean(row.at("AMOUNT_IS_WEIGHT"));
    const salt = saltNamed(name);
    const solution = acidNamed(name);
    if (salt !== null && isWeight !== false && salts[salt] === undefined) {
      const grams = takeNumber(row.at("AMOUNT"), SALT_FIELDS[salt], gramsOfKilograms);
      if (grams !== null) salts[salt] = grams;
    } else if (solution !== null && isWeight !== true && acid === null) {
      const ml = takeNumber(row.at("AMOUNT"), ACID_FIELDS.ml, (litres) => 1000 * litres);
      if (ml !== null) acid = { solution, ml };
    } else continue;
    for (const tag of ["NAME", "TYPE", "AMOUNT_IS_WEIGHT"]) row.at(tag).take();
  }
  return { salts, acid };
}
