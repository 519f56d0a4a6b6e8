import { z } from "zod";
import { version } from "./ingredient";
import { ACID_INGREDIENT_FIELDS, LOT_STORAGE_FIELDS, ON_HAND_FIELDS } from "./ingredient-fields";
import type { IngredientKind } from "./ingredient-kinds";
import { fermentableLotFigures } from "./lot";
import { measuredBy } from "./measured";
import { price, type Price } from "./price";
import { HOP_FIELDS } from "./recipe-fields";
import { oneOf, optionalText, recordId, written } from "./written";

/** Each kind is kept in one unit, in which the movements are counted too. */
export const LOT_UNIT: Readonly<Record<IngredientKind, "kg" | "g" | "mL" | "pcs">> = {
  fermentable: "kg",
  hop: "g",
  yeast: "pcs",
  salt: "g",
  acid: "mL",
};

export const HOP_PACKAGING = ["loose", "sealed bag", "vacuum or inert gas"] as const;
export type HopPackaging = (typeof HOP_PACKAGING)[number];

const EARLIEST = "2000-01-01";
const LATEST = "2099-12-31";

/** A day of the calendar, "2026-09-14". */
export function day(label: string): z.ZodType<string> {
  return z
    .string({ error: `${label} is empty` })
    .trim()
    .pipe(z.iso.date({ error: `${label} is not a day; it takes year-month-day, such as 2026-09-14` }))
    .refine((text) => text >= EARLIEST && text <= LATEST, {
      message: `${label} is outside ${EARLIEST} to ${LATEST}`,
    });
}

/** What the analysis of one lot says and how it is kept, by kind; null where nothing is known. */
const figuresOf = {
  fermentable: fermentableLotFigures,
  hop: z.strictObject({
    alpha: measuredBy(HOP_FIELDS.alpha).nullable(),
    /** When the alpha acids were measured, which is about the harvest. */
    analysedOn: day("Day of the analysis").nullable(),
    storedAt: measuredBy(LOT_STORAGE_FIELDS.storedAt).nullable(),
    packaging: oneOf("Packaging", HOP_PACKAGING).nullable(),
  }),
  yeast: z.strictObject({
    form: oneOf("Form of the yeast", ["dry", "liquid"]),
    cells: measuredBy(LOT_STORAGE_FIELDS.cells).nullable(),
    packedOn: day("Day of packing").nullable(),
    storedAt: measuredBy(LOT_STORAGE_FIELDS.storedAt).nullable(),
  }),
  salt: z.strictObject({}),
  acid: z.strictObject({
    massFraction: measuredBy(ACID_INGREDIENT_FIELDS.massFraction).nullable(),
    density: measuredBy(ACID_INGREDIENT_FIELDS.density).nullable(),
  }),
} as const;

const of = <const K extends IngredientKind>(kind: K) =>
  z.strictObject({ kind: z.literal(kind), figures: figuresOf[kind] });

export const lotKindAndFigures = z.discriminatedUnion("kind", [
  of("fermentable"),
  of("hop"),
  of("yeast"),
  of("salt"),
  of("acid"),
]);
export type LotKindAndFigures = z.output<typeof lotKindAndFigures>;

const asBought = {
  /** The ingredient as recipes name it. */
  name: written("Name of the ingredient", 80),
  label: written("Label", 80),
  what: lotKindAndFigures,
  bestBefore: day("Best before").nullable(),
  price,
  notes: optionalText("Notes", 4000),
};

const amount = z.number().min(0).max(1_000_000);

/** A lot that somebody brings home. */
export const newLot = z
  .strictObject({ ...asBought, owner: z.enum(["club", "me"]), onHand: amount })
  .superRefine(({ what, onHand }, context) => {
    const { make, min, max } = ON_HAND_FIELDS[what.kind];
    if (onHand >= min && onHand <= max) return;
    const message = `On hand ${String(onHand)} ${make.range.unit} is outside ${String(min)} to ${String(max)}`;
    context.addIssue({ code: "custom", path: ["onHand"], message });
  });
export type NewLot = z.output<typeof newLot>;

/** What a lot is; how much there is of it changes by movements only. */
export const lotChange = z.strictObject({ id: recordId, lockVersion: version, ...asBought });
export type LotChange = z.output<typeof lotChange>;

/** Movements that somebody makes by hand: a brew makes the others. */
export const HAND_MOVEMENTS = ["counted", "bought", "received", "used", "thrown away"] as const;
export type HandMovement = (typeof HAND_MOVEMENTS)[number];
export type MovementKind = HandMovement | "returned";

/** `amount` is what is there now for "counted", and how much came or went for the others. */
export const lotMove = z.strictObject({
  id: recordId,
  lockVersion: version,
  kind: oneOf("What happened", HAND_MOVEMENTS),
  amount,
  why: optionalText("Why", 500),
});
export type LotMove = z.output<typeof lotMove>;

export interface IngredientLot {
  readonly id: string;
  /** null for a lot of the club. */
  readonly owner: { readonly id: string; readonly name: string } | null;
  readonly name: string;
  readonly label: string;
  readonly what: LotKindAndFigures;
  readonly onHand: number;
  readonly unit: string;
  readonly bestBefore: string | null;
  readonly price: Price | null;
  readonly notes: string;
  readonly lockVersion: number;
  readonly isArchived: boolean;
  readonly mayWrite: boolean;
}

/** One line of the history of a lot. */
export interface LotMovement {
  readonly version: number;
  readonly kind: MovementKind;
  readonly change: number;
  readonly after: number;
  readonly brew: { readonly id: string; readonly title: string } | null;
  readonly why: string;
  readonly actorName: string;
  readonly at: Date;
}
