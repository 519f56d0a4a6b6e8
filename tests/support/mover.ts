import { withClient } from "./open-client";

const PASSWORD = "moves-clubs-in-tests";

/** The account that moves clubs, as docs/scale.md has it made; returns the address of a server for it. */
export async function moverAddress(databaseUrl: string, superuserUrl: string): Promise<string> {
  const admin = new URL(superuserUrl);
  admin.pathname = new URL(databaseUrl).pathname;
  await withClient(admin.href, async (client) => {
    const known = await client.query("SELECT FROM pg_roles WHERE rolname = 'gylebook_mover'");
    if (known.rowCount === 0) await client.query(`CREATE ROLE gylebook_mover LOGIN BYPASSRLS PASSWORD '${PASSWORD}'`);
    await client.query(`
      GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA public TO gylebook_mover;
      GRANT SET ON PARAMETER session_replication_role TO gylebook_mover;`);
  });
  return Object.assign(new URL(databaseUrl), { username: "gylebook_mover", password: PASSWORD }).href;
}
