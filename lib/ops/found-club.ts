/**
 * Makes the first account of a new installation and its club:
 *   npm run found-club -- --club "Name" --slug name --email a@b --name "Person"
 * The password comes from GYLEBOOK_PASSWORD, or is made and printed once.
 */
import { randomBytes } from "node:crypto";
import { parseArgs } from "node:util";
import { z } from "zod";
import { newClub } from "@/lib/model/club";
import { emailAddress, newPassword, personName } from "@/lib/model/credentials";
import { createAccount } from "@/lib/server/accounts/create-account";
import { AppError } from "@/lib/server/app-error";
import { directory, isUniqueViolation } from "@/lib/server/db";
import { hashPassword } from "@/lib/server/password";
import { foundClubFor } from "@/lib/server/spaces/writes";

const order = z.object({ club: newClub, email: emailAddress, name: personName, password: newPassword });

async function foundFirstClub(): Promise<string> {
  const { values } = parseArgs({
    options: {
      club: { type: "string" },
      slug: { type: "string" },
      email: { type: "string" },
      name: { type: "string" },
    },
  });
  const given = process.env.GYLEBOOK_PASSWORD;
  const { club, email, name, password } = order.parse({
    club: { name: values.club, slug: values.slug },
    email: values.email,
    name: values.name,
    password: given ?? randomBytes(15).toString("base64url"),
  });
  const passwordHash = await hashPassword(password);
  const userId = await directory.$transaction(async (tx) => {
    const id = await createAccount(tx, { email, displayName: name, passwordHash });
    await foundClubFor(tx, id, club);
    return id;
  });
  const secret = given === undefined ? `\nPassword, shown only now: ${password}` : "";
  return `${club.name} is founded at /s/${club.slug}. ${name} (${userId}) signs in as ${email}.${secret}`;
}

function inOneSentence(error: unknown): string {
  if (error instanceof z.ZodError) return error.issues.map((issue) => issue.message).join("\n");
  if (error instanceof AppError) return error.message;
  if (isUniqueViolation(error))
    return "There is an account with this e-mail address, or a club at this address, already.";
  return error instanceof Error ? error.message : String(error);
}

try {
  console.log(await foundFirstClub());
} catch (error) {
  console.error(inOneSentence(error));
  process.exitCode = 1;
} finally {
  await directory.$disconnect();
}
