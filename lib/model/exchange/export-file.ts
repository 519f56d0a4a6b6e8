import type { RecipeContent } from "../recipe-content";
import { beerJsonDocument } from "./beerjson/write-document";
import { beerXmlDocument } from "./beerxml/write-document";
import type { PlainRecord } from "./file-node";
import { withLeftover, type LeftoverEntry } from "./leftover";
import { writtenIn, type ExchangeFormat } from "./read-recipes";

export const EXPORT_KINDS = ["beerjson-2.06", "beerjson-3.0", "beerxml-1.0"] as const;
export type ExportKind = (typeof EXPORT_KINDS)[number];

interface KindOfFile {
  readonly format: ExchangeFormat;
  readonly label: string;
  readonly mediaType: string;
  readonly ending: string;
}

export const KINDS_OF_FILE: Readonly<Record<ExportKind, KindOfFile>> = {
  "beerjson-2.06": { format: "beerjson", label: "BeerJSON 2.06", mediaType: "application/json", ending: "json" },
  "beerjson-3.0": { format: "beerjson", label: "BeerJSON 3.0", mediaType: "application/json", ending: "json" },
  "beerxml-1.0": { format: "beerxml", label: "BeerXML 1.0", mediaType: "application/xml", ending: "xml" },
};

/** A revision to export, with what its file left over in one format or the other. */
export interface RecipeToExport {
  readonly title: string;
  readonly author: string;
  readonly content: RecipeContent;
  readonly leftover: { readonly format: ExchangeFormat; readonly entries: readonly LeftoverEntry[] } | null;
}

/** The text of a file with all these recipes. */
export function exportedText(kind: ExportKind, recipes: readonly RecipeToExport[]): string {
  const { format } = KINDS_OF_FILE[kind];
  const authorField = format === "beerjson" ? "author" : "BREWER";
  const written = recipes.map((recipe) => {
    const whole = writtenWhole(format, recipe);
    // Both standards ask for somebody; the file's own author stays, whoever imported it.
    return Object.hasOwn(whole, authorField) ? whole : { ...whole, [authorField]: recipe.author };
  });
  if (format === "beerxml") return beerXmlDocument(written);
  const contents = recipes.map(({ content }) => content.recipe);
  return `${JSON.stringify(beerJsonDocument(written, contents, kind === "beerjson-3.0" ? 3 : 2.06), null, 2)}\n`;
}

function writtenWhole(format: ExchangeFormat, recipe: RecipeToExport): PlainRecord {
  const written = writtenIn(format, recipe);
  return recipe.leftover?.format === format ? withLeftover(written, recipe.leftover.entries) : written;
}

/** A name for the file that every system takes: plain letters, digits and hyphens. */
export function exportedFileName(title: string, kind: ExportKind): string {
  const plain = title
    .normalize("NFKD")
    .replaceAll(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-+|-+$/g, "")
    .slice(0, 60);
  return `${plain === "" ? "recipe" : plain}.${KINDS_OF_FILE[kind].ending}`;
}
