import type { ActionRow, Ids } from "./action-rows";

const inSpace = ({ space }: Ids): readonly unknown[] => [space];

/** A form of the club that names no record. */
export const form = (
  may: ActionRow["may"],
  input: ActionRow["input"],
  bound: ActionRow["bound"] = inSpace,
): ActionRow => ({
  ...{ may, named: false, bound, input },
  sent: "form",
});

/** The same of one record, or of several. */
export const formOf = (may: ActionRow["may"], input: ActionRow["input"], bound?: ActionRow["bound"]): ActionRow => ({
  ...form(may, input, bound),
  named: true,
});

/** A value that a script sends, and not a form. */
export const valueOf = (
  may: ActionRow["may"],
  input: ActionRow["input"],
  bound: ActionRow["bound"] = inSpace,
): ActionRow => ({
  ...formOf(may, input, bound),
  sent: "value",
});

export const unbound = (): readonly unknown[] => [];
/** What somebody saw when the form was opened. */
export const SEEN = { lockVersion: "1" } as const;
