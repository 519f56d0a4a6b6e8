import "server-only";
import { brew } from "@/lib/calc/ledger";
import type { SheetNeeds } from "@/lib/model/order/order-needs";
import { nameKey } from "@/lib/model/order/order-words";
import { recipeNeeds, type LedgerNeeds } from "@/lib/model/order/recipe-needs";
import { findEquipment } from "../equipment/reads";
import { findRevision } from "../recipes/reads";
import type { Member } from "../session";
import { findSharedBrew } from "../shared-brews/reads";
import { listSheets, type SharedSheet } from "../shared-brews/sheets";

/** A sheet as far as an order needs it; `begun` when its brew is no longer only planned. */
export interface OrderedSheet extends SharedSheet {
  readonly title: string;
  readonly begun: boolean;
  readonly ledger: LedgerNeeds;
}

/** The sheets of a shared brew with what their ledgers say; none for an order that belongs to no shared brew. */
export async function readOrderedSheets(member: Member, sharedBrewId: string | null): Promise<readonly OrderedSheet[]> {
  const shared = sharedBrewId === null ? null : await findSharedBrew(member, sharedBrewId);
  if (shared === null) return [];
  const [sheets, revision] = await Promise.all([
    listSheets(member, shared.id),
    findRevision(member, shared.recipeId, shared.recipeRev),
  ]);
  return Promise.all(
    sheets.map(async (sheet): Promise<OrderedSheet> => {
      const planned = shared.brews.find(({ id }) => id === sheet.brewId);
      const equipment = planned?.equipment ?? (await findEquipment(member, sheet.equipmentId))?.equipment;
      const ambient = planned?.ambient ?? revision?.content.writtenOn.ambient;
      const brewed =
        equipment === undefined || ambient === undefined ? null : brew({ recipe: sheet.recipe, equipment, ambient });
      return {
        ...sheet,
        title: revision?.title ?? shared.title,
        begun: planned !== undefined && planned.state !== "planned",
        ledger: {
          cellsBillion: brewed?.ok === true ? brewed.ledger.quantities["fermenter.cells"] : null,
          primingG: brewed?.ok === true ? brewed.ledger.quantities["package.primingSugar"] : null,
        },
      };
    }),
  );
}

/** What the sheets need. A brew that has begun has its ingredients: an open order leaves it out. */
export function sheetNeeds(
  sheets: readonly OrderedSheet[],
  a: { readonly withBegun: boolean; readonly cellsPerPiece: ReadonlyMap<string, number> },
): readonly SheetNeeds[] {
  return sheets
    .filter(({ begun }) => a.withBegun || !begun)
    .map(({ userId, title, kettleName, brewId, recipe, ledger }) => ({
      userId,
      label: `${title} on ${kettleName}`,
      brewId,
      needs: recipeNeeds(recipe, ledger, (yeast) => a.cellsPerPiece.get(nameKey(yeast)) ?? null),
    }));
}
