import { csvText, type CsvCell } from "@/lib/model/csv";
import type { Price } from "@/lib/model/price";
import { majorText } from "@/lib/model/price";
import { dayOf, lotToday } from "@/lib/model/lot-today";
import { apiRoute } from "@/lib/server/api-route";
import { listIngredients } from "@/lib/server/ingredients/reads";
import { listLosses, type LossOf } from "@/lib/server/lots/figures";
import { listLots } from "@/lib/server/lots/reads";
import { requireMember } from "@/lib/server/session";
import { ingredientFigures, lotFigureList, type IngredientFigure } from "@/lib/ui/ingredient/ingredient-figures";
import { allRows, shownRows, type IngredientRow } from "../ingredient-rows";
import { readView } from "../ingredient-view";

const HEAD = [
  "ingredient",
  "label",
  "kind",
  "whose",
  "on hand",
  "unit",
  "best before",
  "price",
  "currency",
  "price for",
  "extract, fraction",
  "moisture, fraction",
  "colour, EBC",
  "alpha low, fraction",
  "alpha high, fraction",
  "alpha today, fraction",
  "other figures",
] as const;

/** The table as its address asks for it, in the units of the library: what a spreadsheet reads on. */
export const GET = apiRoute(async (request: Request, { params }: { params: Promise<{ space: string }> }) => {
  const member = await requireMember((await params).space);
  const view = readView(Object.fromEntries(new URL(request.url).searchParams));
  const [own, lots, lossOf] = await Promise.all([listIngredients(member), listLots(member), listLosses(member)]);
  const rows = shownRows(allRows({ own, lots, userId: member.userId }), view);
  const today = dayOf(new Date());
  const text = csvText([HEAD, ...rows.map((row) => cells(row, lossOf, today))], { byteOrderMark: true });
  return new Response(text, {
    headers: {
      "Content-Type": "text/csv; charset=utf-8; header=present",
      "Content-Disposition": `attachment; filename="ingredients-${member.spaceSlug}-${today}.csv"`,
      "Cache-Control": "no-store",
      "X-Content-Type-Options": "nosniff",
    },
  });
});

function cells(row: IngredientRow, lossOf: LossOf, today: string): readonly CsvCell[] {
  const { name, label, kind, whose, onHand, bestBefore } = row;
  const lot = row.type === "lot" ? row.lot : null;
  const figures = figuresOf(row);
  const alpha = figures.find((figure) => figure.label === "Alpha acids")?.value ?? null;
  const span = typeof alpha === "object" ? alpha : null;
  const asToday = lot === null ? null : lotToday(lot.what, lossOf(lot.name), today);
  return [
    ...[name, label, kind, whose, onHand, lot?.unit ?? null, bestBefore],
    ...priceCells(lot?.price ?? null),
    ...["Extract yield", "Moisture", "Malt colour"].map((label_) => numberOf(figures, label_)),
    ...[span?.low ?? null, span?.high ?? null, asToday?.kind === "hop" ? asToday.figures.alpha : null],
    figures.filter(isOther).map(inWords).join("; "),
  ];
}

function priceCells(price: Price | null): readonly CsvCell[] {
  if (price === null) return [null, null, null];
  return [majorText(price.minor, price.currency), price.currency, price.for];
}

function figuresOf(row: IngredientRow): readonly IngredientFigure[] {
  if (row.type === "lot") return lotFigureList(row.lot.what);
  return ingredientFigures(row.type === "generic" ? row.generic.what : row.own.what);
}

function numberOf(figures: readonly IngredientFigure[], label: string): number | null {
  const value = figures.find((figure) => figure.label === label)?.value;
  return typeof value === "number" ? value : null;
}

const COLUMNS_OF_THEIR_OWN: readonly string[] = ["Extract yield", "Moisture", "Malt colour", "Alpha acids"];

function isOther({ label, value }: IngredientFigure): boolean {
  return value !== null && !COLUMNS_OF_THEIR_OWN.includes(label);
}

function inWords({ label, value, unit }: IngredientFigure): string {
  const text =
    typeof value === "object" && value !== null ? `${String(value.low)} to ${String(value.high)}` : String(value);
  return `${label} ${text}${unit === undefined ? "" : ` ${unit}`}`;
}
