import type { Ability } from "@/lib/model/roles";

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
