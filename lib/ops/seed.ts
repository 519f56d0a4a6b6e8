/** Fills an empty database with the demo club, and prints its sign-ins where it is there: `npm run seed`. */
import { directory } from "@/lib/server/db";
import { environment } from "@/lib/server/environment";
import { DEMO_EMAILS, DEMO_SIGN_INS, seedDemoClub } from "../../seed-demo/seed";
import { emptyDatabase } from "./empty-database";

const FOUND_A_CLUB =
  'There is no account yet. Found a club: npm run found-club -- --club "Name" --slug name --email you@example.org --name "You"';
const HALF_THERE =
  "The demo club is only half there, because filling the database was interrupted, and other accounts have been made since: they are left alone.";

async function seed(): Promise<string> {
  const accounts = await directory.appUser.count();
  if (process.env.GYLEBOOK_DEMO === "off") return accounts === 0 ? FOUND_A_CLUB : "";
  const ofDemo = await directory.appUser.count({ where: { emailNorm: { in: [...DEMO_EMAILS] } } });
  if (accounts > 0 && ofDemo === 0) return "";
  if (accounts > 0 && !(await isComplete())) {
    if (accounts > ofDemo) return HALF_THERE;
    await emptyDatabase(environment.databaseUrl);
  }
  if (!(await isComplete())) {
    await seedDemoClub();
    await directory.auditLog.create({ data: { action: "demo club", outcome: "ok" } });
  }
  return ["Demo sign-ins (an invented club):", ...DEMO_SIGN_INS.map(toLine)].join("\n");
}

/** The mark is written last, so it says that everything before it was written too. */
async function isComplete(): Promise<boolean> {
  return (await directory.auditLog.count({ where: { action: "demo club" } })) > 0;
}

function toLine({ role, email, password }: (typeof DEMO_SIGN_INS)[number]): string {
  return `  ${role.padEnd(10)} ${email.padEnd(30)} ${password}`;
}

try {
  console.log(await seed());
} catch (error) {
  console.error(error);
  process.exitCode = 1;
} finally {
  await directory.$disconnect();
}
