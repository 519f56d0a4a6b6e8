import { z } from "zod";

/** What somebody wants by e-mail. */
export const mailChoice = z.strictObject({
  changes: z.boolean({ error: "Mail about changes is wanted or not" }),
});
export type MailChoice = z.output<typeof mailChoice>;
