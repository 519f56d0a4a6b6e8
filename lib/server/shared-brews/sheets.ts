import "server-only";
import type { Recipe } from "@/lib/calc/ledger";
import type { Member } from "../session";
import { findSharedBrew } from "./reads";

/** What one member brews by in a shared brew. */
export interface SharedSheet {
  readonly userId: string;
  readonly userName: string;
  readonly equipmentId: string;
  readonly kettleName: string;
  /** null until a brew is planned. */
  readonly brewId: string | null;
  readonly recipe: Recipe;
}

/** The sheets of everybody who takes part; nothing where there is no such shared brew. */
export async function listSheets(member: Member, sharedBrewId: string): Promise<readonly SharedSheet[]> {
  const shared = await findSharedBrew(member, sharedBrewId);
  return (shared?.brews ?? []).map(({ id, brewerId, brewerName, equipmentName, recipe }) => ({
    userId: brewerId,
    userName: brewerName,
    equipmentId: "",
    kettleName: equipmentName,
    brewId: id,
    recipe,
  }));
}
