import type { z } from "zod";
import { ambientInput } from "../ambient";
import { equipmentInput } from "../equipment";
import { leftoverEntries } from "../exchange/leftover";
import { recipeContent, recipeInput } from "../recipe-content";

/** One table of a club's content, as it stands in the file of the whole club. */
export interface ClubPart {
  readonly table: string;
  /** What makes a row one, in the order that rows are written in. */
  readonly key: readonly string[];
  /** Columns that name records of this club: they get new identifiers when the file is taken. */
  readonly ids: readonly string[];
  /** Columns that name people. */
  readonly people: readonly string[];
  /** Columns that may name something in another space, which keeps its identifier. */
  readonly outside?: readonly string[];
  /** Columns that the pages read back by a schema; a file that does not pass it is not taken. */
  readonly checked?: Readonly<Record<string, z.ZodType>>;
  /** Where other parts are only written while a row is in its first state: rows go in so, and are moved on after all. */
  readonly moved?: Moved;
}

/** By which steps a row comes from its first state to each of the others. */
export interface Moved {
  readonly column: string;
  readonly first: string;
  readonly steps: Readonly<Record<string, readonly string[]>>;
}

/** An order is asked for, offered and shared out while it is open; the database lets it go on by these steps alone. */
const ORDER_STATES: Moved = {
  column: "state",
  first: "open",
  steps: {
    open: [],
    locked: ["locked"],
    placed: ["locked", "placed"],
    received: ["locked", "placed", "received"],
    "handed out": ["locked", "placed", "received", "handed out"],
    cancelled: ["cancelled"],
  },
};

/** Every part in an order in which each refers only to those before it. A test holds it against the database. */
export const CLUB_PARTS: readonly ClubPart[] = [
  {
    table: "recipe",
    key: ["id"],
    ids: ["id"],
    people: ["created_by"],
    outside: ["root_id", "origin_space_id", "origin_recipe_id"],
  },
  {
    table: "recipe_revision",
    key: ["recipe_id", "rev"],
    ids: ["recipe_id"],
    people: ["author_id"],
    checked: { content: recipeContent },
  },
  {
    table: "recipe_leftover",
    key: ["recipe_id", "rev"],
    ids: ["recipe_id", "import_id"],
    people: ["imported_by"],
    checked: { leftover: leftoverEntries },
  },
  { table: "equipment", key: ["id"], ids: ["id"], people: ["owner_user_id"] },
  {
    table: "equipment_revision",
    key: ["equipment_id", "rev"],
    ids: ["equipment_id"],
    people: [],
    checked: { figures: equipmentInput },
  },
  {
    table: "commissioning_trial",
    key: ["id"],
    ids: ["id", "equipment_id"],
    people: ["begun_by", "accepted_by"],
  },
  { table: "trial_reading", key: ["id"], ids: ["id", "trial_id", "replaces"], people: ["actor_id"] },
  { table: "ingredient", key: ["id"], ids: ["id"], people: ["created_by"] },
  { table: "ingredient_lot", key: ["id"], ids: ["id"], people: ["owner_user_id", "created_by"] },
  {
    table: "adaptation",
    key: ["recipe_id", "rev", "equipment_id"],
    ids: ["recipe_id", "equipment_id"],
    people: ["changed_by"],
  },
  { table: "shared_brew", key: ["id"], ids: ["id", "recipe_id"], people: ["created_by"] },
  {
    table: "shared_brew_plan",
    key: ["shared_brew_id", "version"],
    ids: ["shared_brew_id", "recipe_id"],
    people: ["made_by"],
  },
  {
    table: "shared_brew_participant",
    key: ["shared_brew_id", "user_id", "equipment_id"],
    ids: ["shared_brew_id", "equipment_id"],
    people: ["user_id", "joined_by"],
  },
  {
    table: "brew",
    key: ["id"],
    ids: ["id", "shared_brew_id", "recipe_id", "equipment_id"],
    people: ["brewer_user_id", "dropped_by"],
    outside: ["recipe_root"],
    checked: { recipe: recipeInput, equipment_snapshot: equipmentInput, ambient: ambientInput },
  },
  { table: "brew_collaborator", key: ["brew_id", "user_id"], ids: ["brew_id"], people: ["user_id"] },
  { table: "brew_lot", key: ["brew_id", "row_path"], ids: ["brew_id", "lot_id"], people: [] },
  { table: "ingredient_lot_movement", key: ["lot_id", "version"], ids: ["lot_id", "brew_id"], people: ["actor_id"] },
  { table: "brew_event", key: ["id"], ids: ["id", "brew_id", "device_id", "target_id"], people: ["actor_id"] },
  { table: "attachment", key: ["id"], ids: ["id", "brew_id"], people: ["uploader_id"] },
  { table: "brew_reminder", key: ["brew_id", "kind"], ids: ["brew_id"], people: [] },
  {
    table: "saved_comparison",
    key: ["id"],
    ids: ["id", "recipe_id", "shared_brew_id"],
    people: ["brewer_user_id", "created_by", "deleted_by"],
  },
  { table: "vessel", key: ["id"], ids: ["id"], people: [] },
  { table: "vessel_booking", key: ["id"], ids: ["id", "vessel_id", "brew_id"], people: ["booked_by"] },
  { table: "order_round", key: ["id"], ids: ["id", "shared_brew_id"], people: ["created_by"], moved: ORDER_STATES },
  { table: "order_item", key: ["round_id", "id"], ids: ["round_id", "id"], people: ["left_over_to"] },
  {
    table: "order_offer",
    key: ["round_id", "item_id", "id"],
    ids: ["round_id", "item_id", "id"],
    people: [],
  },
  { table: "order_want", key: ["round_id", "item_id", "user_id"], ids: ["round_id", "item_id"], people: ["user_id"] },
  {
    table: "order_substitution",
    key: ["round_id", "id"],
    ids: ["round_id", "id", "from_item_id", "to_item_id"],
    people: ["user_id", "proposed_by", "decided_by"],
  },
  {
    table: "order_share",
    key: ["round_id", "item_id", "user_id"],
    ids: ["round_id", "item_id", "lot_id"],
    people: ["user_id", "handed_by"],
  },
  { table: "order_event", key: ["round_id", "id"], ids: ["round_id", "id"], people: ["actor_id"] },
  { table: "former_member", key: ["id"], ids: [], people: ["id"] },
];

/** Tables of a club's content that the file does not have, and why. */
export const LEFT_OUT: Readonly<Record<string, string>> = {
  tasting: "Tastings stay here until judging is finished: a file could show what is blind.",
  tasting_flight: "Tastings stay here until judging is finished: a file could show what is blind.",
  tasting_entry: "Tastings stay here until judging is finished: a file could show what is blind.",
  tasting_identity: "Tastings stay here until judging is finished: a file could show what is blind.",
  tasting_panel: "Tastings stay here until judging is finished: a file could show what is blind.",
  tasting_serving: "Tastings stay here until judging is finished: a file could show what is blind.",
  tasting_glass: "Tastings stay here until judging is finished: a file could show what is blind.",
  tasting_glass_key: "Tastings stay here until judging is finished: a file could show what is blind.",
  tasting_event: "Tastings stay here until judging is finished: a file could show what is blind.",
  order_late_wish: "What was asked late is told in the history of its order, which comes as it became.",
  alarm_due: "Alarms are made from the timers of the log, and are of their moment.",
  kettle_contribution: "What is given to other clubs is given again by who wants to.",
  brew_mark: "Marks say that a summary has to be made anew, and all are.",
  brew_summary: "What a brew comes to is made anew from its log.",
  idempotency: "Answers to requests that are sent twice are kept for a day only.",
  space_place: "On which server a club is, that server says.",
  outbox: "Messages on their way stay on it.",
  notice: "Notices are messages to one person.",
  recipe_draft: "Drafts are one person's own until they are saved.",
  recipe_lineage: "Which recipe is a copy of which is noted anew.",
  search_document: "Search is made anew from the content.",
  search_word: "Search is made anew from the content.",
};
