/**
 * Moves a club to another PostgreSQL server while it is used: `npm run move-club -- --club=hollowmere --to=1`.
 * MOVER_DATABASE_URL_0, _1 … are the addresses of the servers, for an account as docs/scale.md has it made.
 */
import { parseArgs } from "node:util";
import { moveSpace } from "./move/move-space";
import { Refusal } from "./refusal.mjs";

const NAME = /^MOVER_DATABASE_URL_(\d{1,2})$/;

function readAddresses(): ReadonlyMap<number, string> {
  const found = Object.entries(process.env).flatMap(([name, address = ""]) => {
    const number = NAME.exec(name)?.[1];
    return number === undefined || address === "" ? [] : [[Number(number), address] as const];
  });
  if (found.length < 2)
    throw new Refusal("Set MOVER_DATABASE_URL_0 and MOVER_DATABASE_URL_1 to the servers' addresses.");
  return new Map(found);
}

async function moveClub(): Promise<string> {
  const { values } = parseArgs({ options: { club: { type: "string" }, to: { type: "string" } } });
  const { club: slug, to } = values;
  if (slug === undefined || to === undefined || !/^\d{1,2}$/.test(to)) {
    throw new Refusal("Name a club and a server: npm run move-club -- --club=hollowmere --to=1");
  }
  const moved = await moveSpace({ slug, to: Number(to), addresses: readAddresses() });
  if (moved === null) return `${slug} is on server ${to} already; what an earlier move left elsewhere was removed.`;
  const { from, tables, rows, caughtUp, closedMs } = moved;
  return (
    `Moved ${slug} from server ${from} to ${to}: ${rows} rows of ${tables} tables, equal by count and content. ` +
    `${caughtUp} were written meanwhile; the club was closed for ${Math.round(closedMs)} ms.`
  );
}

try {
  console.log(await moveClub());
} catch (error) {
  console.error(error instanceof Refusal ? error.message : error);
  process.exitCode = 1;
}
