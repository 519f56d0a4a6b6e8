import { randomUUID } from "node:crypto";
import { withClient } from "@/tests/support/open-client";
import { DEMO_PASSWORD, DEMO_PEOPLE } from "@/seed-demo/people";
import { callOf } from "./support/access-actions";
import { nowhereAt } from "./support/access-places";
import { ask, forEachOf, type Answered } from "./support/plain-request";
import { expect, test } from "./support/test";
import { cookiesOf, startTwoProcesses, trySignIn, type TwoProcesses } from "./support/two-processes";

// Requests as any program can send them, without a browser.
test.describe.configure({ mode: "default", timeout: 300_000 });

let apps: TwoProcesses;
test.beforeAll(async () => {
  apps = await startTwoProcesses();
});
test.afterAll(() => apps.end());

const BURST = 10;
/** A turn comes back after this. */
const INTERVAL_MS = 30_000;

test("tries to sign in are counted together by all processes, and nobody else is kept out", async () => {
  const email = `${randomUUID()}@nobody.example`;
  const begun = Date.now();
  const tries = Array.from({ length: 3 * BURST }, (_, n) => (n % 2 === 0 ? apps.first : apps.second));
  const made = await forEachOf(tries, (at) => trySignIn(at, apps.origin, { email, password: "a wrong passphrase" }));
  const refused = made.filter(({ outcome }) => outcome === "refused").length;
  expect(made.filter(({ outcome }) => outcome === "throttled")).toHaveLength(3 * BURST - refused);
  expect(refused).toBeGreaterThanOrEqual(BURST);
  expect(refused).toBeLessThanOrEqual(BURST + Math.ceil((Date.now() - begun) / INTERVAL_MS));
  expect((await signIn()).length).toBeGreaterThan(0);
});

test("wrong keys of sensors are counted together by all processes", async () => {
  const key = `gyle_${"a".repeat(43)}`;
  const tries = Array.from({ length: 60 }, (_, n) => (n % 2 === 0 ? apps.first : apps.second));
  const send = (at: string): Promise<Answered> =>
    ask(at, {
      ...{ method: "POST", path: "/api/v1/readings", body: "{}" },
      headers: { authorization: `Bearer ${key}`, "content-type": "application/json" },
    });
  const begun = Date.now();
  const statuses = (await forEachOf(tries, send)).map(({ status }) => status);
  const unknown = statuses.filter((status) => status === 401).length;
  expect(statuses.filter((status) => status === 429)).toHaveLength(60 - unknown);
  expect(unknown).toBeGreaterThanOrEqual(30);
  expect(unknown).toBeLessThanOrEqual(30 + Math.ceil((Date.now() - begun) / 10_000));
});

test("whoever has written sees it at once in the other process, however far the standby is behind", async () => {
  const session = await signIn();
  const { path, ...saving } = callOf("saveComparisonAction", nowhereAt("hollowmere"));
  const list = (cookie: string): Promise<Answered> =>
    ask(apps.second, { method: "GET", path: "/s/hollowmere/comparisons", headers: { cookie } });
  await withClient(apps.standby, (client) => client.query("SELECT pg_wal_replay_pause()"));
  try {
    const proxied = { "x-forwarded-host": new URL(apps.origin).host };
    const headers = { ...saving.headers, ...proxied, cookie: session, origin: apps.origin };
    const saved = await ask(apps.first, { ...saving, path, headers });
    const written = cookiesOf(saved.headers);
    expect(written).toMatch(/^gylebook-written=[0-9A-F]+(?:%2F|\/)[0-9A-F]+$/);
    expect((await list(`${session}; ${written}`)).text).toContain("Never kept");
    // Whoever has written nothing is shown the standby: it was asked, and it is behind.
    expect((await list(session)).text).not.toContain("Never kept");
  } finally {
    await withClient(apps.standby, (client) => client.query("SELECT pg_wal_replay_resume()"));
  }
  await expect.poll(async () => (await list(session)).text).toContain("Never kept");
});

async function signIn(): Promise<string> {
  const member = DEMO_PEOPLE.find(({ key }) => key === "member");
  const { cookie } = await trySignIn(apps.first, apps.origin, { email: member?.email ?? "", password: DEMO_PASSWORD });
  return cookie;
}
