import { z } from "zod";

/** What is typed instead of a tick, which is set too easily. */
export const CLOSING_WORDS = "close my account";

const LONGEST_PASSWORD = 200;

/** The order to close one's own account. */
export const accountClosing = z.strictObject({
  password: z.string({ error: "Password is empty" }).min(1, "Password is empty").max(LONGEST_PASSWORD),
  words: z
    .string({ error: `Type “${CLOSING_WORDS}”` })
    .trim()
    .toLowerCase()
    .refine((words) => words === CLOSING_WORDS, { message: `These words are not “${CLOSING_WORDS}”` }),
});
export type AccountClosing = z.output<typeof accountClosing>;

/** A club in which the account has a part, and what becomes of it when the account is closed. */
export interface ClosingClub {
  readonly slug: string;
  readonly name: string;
  /** Others go on; nobody is left, so that it goes too; or somebody else has to become organiser first. */
  readonly outcome: "goes on" | "goes too" | "needs an organiser";
}
