import type { Ability } from "@/lib/model/roles";
import { BREW_ACTIONS } from "./brew-actions";
import { CLUB_ACTIONS } from "./club-actions";
import { ORDER_ACTIONS } from "./order-actions";
import { RECIPE_ACTIONS } from "./recipe-actions";
import { TASTING_ACTIONS } from "./tasting-actions";

/** Identifiers by the names that the addresses of the app give them. */
export type Ids = Readonly<Record<string, string>>;

export interface ActionRow {
  /**
   * Who may: whoever has an ability in the club, everybody in it, whoever is signed in, everybody at all. An action for
   * the owner of a record names the ability without which nobody owns one.
   */
  readonly may: Ability | "be here" | "be signed in" | "come";
  /** Whether it names a record; without one there is nothing of another club's to ask for. */
  readonly named: boolean;
  /** What its page binds to it before what somebody typed. */
  readonly bound: (ids: Ids) => readonly unknown[];
  /** What it is sent, which passes the border whatever the identifiers are; a form has fields of text. */
  readonly input: (ids: Ids) => Readonly<Record<string, unknown>>;
  readonly sent: "form" | "value";
}

/** Every action of the app with what it takes. An action without a row fails the tests. */
export const ACTION_ROWS: Readonly<Record<string, ActionRow>> = {
  ...CLUB_ACTIONS,
  ...RECIPE_ACTIONS,
  ...BREW_ACTIONS,
  ...ORDER_ACTIONS,
  ...TASTING_ACTIONS,
};
