import { createHash, randomUUID } from "node:crypto";
import type { Client } from "pg";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import { insert, type Row, type SpaceContext } from "./sql-session";

export const HASH = createHash("sha256").update("any").digest();

export interface SpaceRows {
  readonly recipe: Row;
  readonly recipeRevision: Row;
  readonly equipment: Row;
  readonly equipmentRevision: Row;
  readonly brew: Row;
}

/** Rows that the database takes, as it sees them; a test changes one value to see it refused. */
export function spaceRows({ spaceId, userId }: SpaceContext): SpaceRows {
  const [recipeId, equipmentId] = [randomUUID(), randomUUID()];
  const common = { space_id: spaceId };
  return {
    recipe: { ...common, id: recipeId, title: "Bitter", head_rev: 1, root_id: recipeId, created_by: userId },
    recipeRevision: {
      ...common,
      recipe_id: recipeId,
      rev: 1,
      content: {},
      content_hash: HASH,
      calc_version: "test",
      author_id: userId,
    },
    equipment: { ...common, id: equipmentId, owner_user_id: userId, name: "Kettle", head_rev: 1 },
    equipmentRevision: {
      ...common,
      equipment_id: equipmentId,
      rev: 1,
      kettle_l: 30,
      rated_w: 2500,
      rated_v: 230,
      supply_v: 230,
      figures: {},
      content_hash: HASH,
    },
    brew: {
      ...common,
      id: randomUUID(),
      title: "Bitter",
      recipe_id: recipeId,
      recipe_rev: 1,
      recipe_root: recipeId,
      equipment_id: equipmentId,
      equipment_rev: 1,
      brewer_user_id: userId,
      target_volume_l: 20,
      recipe: {},
      equipment_snapshot: {},
      ambient: {},
      run_sheet: [],
      predicted: {},
      calc_version: "test",
    },
  };
}

/** A reading of 20 °P, as the log keeps it. */
export function eventRow(brew: Row, actorId: string): Row {
  return {
    space_id: brew.space_id,
    id: randomUUID(),
    brew_id: brew.id,
    device_id: randomUUID(),
    device_seq: 1,
    actor_id: actorId,
    kind: "gravity",
    occurred_at: new Date("2026-03-01T10:00:00Z"),
    value: 1.083,
    unit: "sg",
    payload: { quantity: "fermenter.originalExtract" },
    payload_hash: HASH,
  };
}

/** A thermometer read in a commissioning trial. */
export function trialReadingRow(trial: Row, actorId: string): Row {
  return {
    space_id: trial.space_id,
    id: randomUUID(),
    trial_id: trial.id,
    part: "heating",
    run: 1,
    kind: "temperature",
    occurred_at: new Date("2026-03-01T10:00:00Z"),
    value: 42.5,
    payload: { sd: 0.3 },
    actor_id: actorId,
    payload_hash: HASH,
  };
}

/** The first plan of a shared brew of the brew's recipe, which holds what the recipe says. */
export function planRow({ space_id, shared_brew_id, recipe_id, recipe_rev, brewer_user_id }: Row): Row {
  return {
    space_id,
    shared_brew_id,
    version: 1,
    recipe_id,
    recipe_rev,
    state: "open",
    window_from: "2026-03-01",
    window_to: "2026-03-31",
    rules: AS_WRITTEN,
    made_by: brewer_user_id,
  };
}

/** Fills a space with one recipe, one kettle and one brew. */
export async function fillSpace(client: Client, rows: SpaceRows): Promise<void> {
  await insert(client, "recipe", rows.recipe);
  await insert(client, "recipe_revision", rows.recipeRevision);
  await insert(client, "equipment", rows.equipment);
  await insert(client, "equipment_revision", rows.equipmentRevision);
  await insert(client, "brew", rows.brew);
}

/** A sack of malt of the club. */
export function lotRow({ spaceId, userId }: SpaceContext): Row {
  return {
    space_id: spaceId,
    id: randomUUID(),
    kind: "fermentable",
    name: "Pale ale malt",
    label: "Sack 7",
    figures: {},
    on_hand: 25,
    unit: "kg",
    created_by: userId,
  };
}
