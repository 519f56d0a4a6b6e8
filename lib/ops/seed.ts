/** Fills an empty database with the demo club, and prints its sign-ins where it is there: `npm run seed`. */
import { directory } from "@/lib/server/db";
import { DEMO_SIGN_INS, seedDemoClub } from "../../seed-demo/seed";

const FOUND_A_CLUB =
  'There is no account yet. Found a club: npm run found-club -- --club "Name" --slug name --email you@example.org --name "You"';
const HALF_THERE =
  "The demo club is only half there, because filling the database was interrupted: remove .data/postgres, or empty the database at DATABASE_URL, and start again.";

async function seed(): Promise<string> {
  const isEmpty = (await directory.appUser.count()) === 0;
  if (process.env.GYLEBOOK_DEMO === "off") return isEmpty ? FOUND_A_CLUB : "";
  if (isEmpty) {
    await seedDemoClub();
    await directory.auditLog.create({ data: { action: "demo club", outcome: "ok" } });
  }
  const emails = DEMO_SIGN_INS.map((signIn) => signIn.email);
  if ((await directory.appUser.count({ where: { emailNorm: { in: emails } } })) === 0) return "";
  // Written last, so it says that everything before it was written too.
  if ((await directory.auditLog.count({ where: { action: "demo club" } })) === 0) throw new Error(HALF_THERE);
  return ["Demo sign-ins (an invented club):", ...DEMO_SIGN_INS.map(toLine)].join("\n");
}

function toLine({ role, email, password }: (typeof DEMO_SIGN_INS)[number]): string {
  return `  ${role.padEnd(10)} ${email.padEnd(30)} ${password}`;
}

try {
  console.log(await seed());
} catch (error) {
  console.error(error instanceof Error && error.message === HALF_THERE ? HALF_THERE : error);
  process.exitCode = 1;
} finally {
  await directory.$disconnect();
}
