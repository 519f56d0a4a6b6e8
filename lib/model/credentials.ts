import { z } from "zod";
import { written } from "./written";

const LEAST_PASSWORD = 12;
// Long enough for any passphrase, short enough that hashing it is no attack.
const LONGEST_PASSWORD = 200;

/** One address, in the form in which it is stored and compared. */
export const emailAddress = z
  .string({ error: "E-mail address is empty" })
  .trim()
  .toLowerCase()
  .min(1, "E-mail address is empty")
  .max(254, "E-mail address is longer than 254 characters")
  .pipe(z.email({ error: "This is not one e-mail address" }));

export const newPassword = z
  .string({ error: "Password is empty" })
  .min(LEAST_PASSWORD, `Password is shorter than ${String(LEAST_PASSWORD)} characters`)
  .max(LONGEST_PASSWORD, `Password is longer than ${String(LONGEST_PASSWORD)} characters`)
  .refine((password) => new Set(password).size >= 5, { message: "Password repeats the same few characters" });

export const personName = written("Name", 80);

/** What is typed at sign-in. A wrong form is answered as a wrong password is, so the rules stop at the size. */
export const signInInput = z.object({
  email: z.string().max(300),
  password: z.string().max(LONGEST_PASSWORD),
});

export const passwordChange = z.strictObject({
  current: z.string({ error: "Present password is empty" }).min(1, "Present password is empty").max(LONGEST_PASSWORD),
  replacement: newPassword,
});
export type PasswordChange = z.output<typeof passwordChange>;
