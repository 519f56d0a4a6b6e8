import type { ActionRow } from "./action-row";
import { BREW_ACTIONS } from "./brew-actions";
import { CLUB_ACTIONS } from "./club-actions";
import { ORDER_ACTIONS } from "./order-actions";
import { RECIPE_ACTIONS } from "./recipe-actions";
import { TASTING_ACTIONS } from "./tasting-actions";

/** Every action of the app with what it takes. An action without a row fails the tests. */
export const ACTION_ROWS: Readonly<Record<string, ActionRow>> = {
  ...CLUB_ACTIONS,
  ...RECIPE_ACTIONS,
  ...BREW_ACTIONS,
  ...ORDER_ACTIONS,
  ...TASTING_ACTIONS,
};
