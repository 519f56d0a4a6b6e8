import { applyMigrations } from "@/lib/ops/apply-migrations";
import { startThrowAwayDatabase } from "@/lib/ops/embedded-database.mjs";
import { freePort } from "@/lib/ops/free-port.mjs";
import { run, typescriptCommand } from "@/lib/ops/run.mjs";
import { passingEnvironment, serve } from "@/lib/ops/server.mjs";
import { MIGRATIONS } from "@/tests/support/database";
import { startStandby } from "@/tests/support/standby";
import { ask, type Answered } from "./plain-request";

/** Two processes of the app as built, as behind one proxy: one database, of which both read from a hot standby too. */
export interface TwoProcesses {
  /** What their pages believe to be their address. */
  readonly origin: string;
  readonly first: string;
  readonly second: string;
  /** Of the standby, for somebody who may stop and resume what it does. */
  readonly standby: string;
  readonly end: () => Promise<void>;
}

/** Starts them on a database of their own that has the demo club. */
export async function startTwoProcesses(): Promise<TwoProcesses> {
  // What is committed is written, as on a server that people rely on: the place of the log is known by that.
  const flags = ["-c fsync=off", "-c wal_keep_size=256MB"];
  const database = await startThrowAwayDatabase("gylebook", { flags });
  const ended: (() => unknown)[] = [database.stop];
  const end = async (): Promise<void> => {
    for (const stop of ended.reverse()) await stop();
  };
  try {
    await applyMigrations({ databaseUrl: database.url, folder: MIGRATIONS });
    const origin = `http://localhost:${String(await freePort())}`;
    const env = passingEnvironment({ databaseUrl: database.url, origin });
    const [command, args] = typescriptCommand("lib/ops/seed.ts");
    const { code, output } = await run(command, args, { env });
    if (code !== 0) throw new Error(`the demo club was not made: ${output}`);
    const standby = await startStandby(database);
    ended.push(standby.stop);
    const open = async (): Promise<string> => {
      const port = await freePort();
      const app = await serve({ host: "127.0.0.1", port, env: { ...env, DATABASE_REPLICA_URL: standby.url } });
      ended.push(() => {
        app.kill();
        return app.ended;
      });
      return `http://127.0.0.1:${String(port)}`;
    };
    return { origin, first: await open(), second: await open(), standby: standby.superuserUrl, end };
  } catch (error) {
    await end();
    throw error;
  }
}

/** What became of a try to sign in, with the cookie of the session where there is one. */
export interface SignInTry {
  readonly outcome: "signed in" | "refused" | "throttled";
  readonly cookie: string;
}

interface Credentials {
  readonly email: string;
  readonly password: string;
}

/** Tries to sign in at a process, as a page that came from it does. */
export async function trySignIn(at: string, origin: string, { email, password }: Credentials): Promise<SignInTry> {
  const { text, headers } = await ask(at, { method: "GET", path: "/api/auth/csrf" });
  const { csrfToken } = JSON.parse(text) as { readonly csrfToken: string };
  const answer = await ask(at, {
    ...{ method: "POST", path: "/api/auth/callback/credentials" },
    headers: { "content-type": "application/x-www-form-urlencoded", origin, cookie: cookiesOf(headers) },
    body: new URLSearchParams({ csrfToken, email, password, json: "true" }).toString(),
  });
  const cookie = /gylebook-session=[^;]+/.exec(cookiesOf(answer.headers))?.[0] ?? "";
  if (cookie !== "") return { outcome: "signed in", cookie };
  return { outcome: isThrottled(answer) ? "throttled" : "refused", cookie };
}

function isThrottled({ text, headers }: Answered): boolean {
  return `${text} ${headers.get("location") ?? ""}`.includes("error=Throttled");
}

/** What a browser would send back of the cookies that it was given. */
export function cookiesOf(headers: Headers): string {
  return headers
    .getSetCookie()
    .map((each) => each.split(";")[0] ?? "")
    .join("; ");
}
