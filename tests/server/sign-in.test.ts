import { randomUUID } from "node:crypto";
import * as argon2 from "@node-rs/argon2";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { checkSignIn } from "@/lib/server/accounts/sign-in";
import { directory } from "@/lib/server/db";
import { newAccount, TEST_PASSWORD } from "../support/club";

// The work itself is done as ever, and counted.
vi.mock("@node-rs/argon2", async (original) => {
  const real = await original<typeof argon2>();
  return { ...real, verify: vi.fn(real.verify), hash: vi.fn(real.hash) };
});
beforeEach(() => {
  vi.mocked(argon2.verify).mockClear();
});

const ip = () => randomUUID();

describe("checkSignIn", () => {
  it("lets somebody in with address and password, in whatever letters the address is typed", async () => {
    const { userId, email } = await newAccount("Ada");
    const outcome = await checkSignIn({ email: ` ${email.toUpperCase()} `, password: TEST_PASSWORD, ip: ip() });
    expect(outcome).toEqual({ ok: true, userId, displayName: "Ada" });
  });

  it("answers an unknown address, a wrong password, a disabled account and no address alike", async () => {
    const { email } = await newAccount("Ada");
    const disabled = await newAccount("Bea");
    await directory.appUser.update({ where: { id: disabled.userId }, data: { disabledAt: new Date() } });
    const refused = { ok: false, reason: "refused" };
    const attempts = [
      { email, password: "not the password" },
      { email: `${randomUUID()}@example.org`, password: TEST_PASSWORD },
      { email: disabled.email, password: TEST_PASSWORD },
      { email: "nobody", password: TEST_PASSWORD },
      { email: `${email},${email}`, password: TEST_PASSWORD },
    ];
    for (const attempt of attempts) expect(await checkSignIn({ ...attempt, ip: ip() })).toEqual(refused);
  });

  it("hashes one password of the same cost for each of them, so that no answer comes sooner than another", async () => {
    const { email } = await newAccount("Ada");
    const disabled = await newAccount("Bea");
    await directory.appUser.update({ where: { id: disabled.userId }, data: { disabledAt: new Date() } });
    const addresses = [email, `${randomUUID()}@example.org`, disabled.email, "nobody"];
    for (const address of addresses) await checkSignIn({ email: address, password: "not the password", ip: ip() });
    const costs = vi
      .mocked(argon2.verify)
      .mock.calls.map(([stored]) => /^\$argon2id\$v=19\$[^$]+/.exec(String(stored))?.[0]);
    expect(costs).toEqual(addresses.map(() => "$argon2id$v=19$m=19456,t=2,p=1"));
  });

  it("lets ten of forty wrong passwords through that two servers are asked at once", async () => {
    const here = { checkSignIn, directory };
    // The client is kept on the global object while modules come and go.
    delete (globalThis as { gylebookClients?: unknown }).gylebookClients;
    vi.resetModules();
    const there = {
      ...(await import("@/lib/server/accounts/sign-in")),
      directory: (await import("@/lib/server/db")).directory,
    };
    expect(there.directory === here.directory).toBe(false);
    const address = `${randomUUID()}@example.org`;
    const tries = Array.from({ length: 40 }, (_, n) =>
      (n % 2 === 0 ? here : there).checkSignIn({ email: address, password: "wrong", ip: ip() }),
    );
    const reasons = (await Promise.all(tries)).map((outcome) => (outcome.ok ? "in" : outcome.reason));
    expect(reasons.filter((reason) => reason === "refused")).toHaveLength(10);
    expect(reasons.filter((reason) => reason === "throttled")).toHaveLength(30);
    await there.directory.$disconnect();
  });

  it("lets ten wrong passwords through and then makes even the right one wait, known address or not", async () => {
    const { email } = await newAccount("Ada");
    for (const address of [email, `${randomUUID()}@example.org`]) {
      const reasons = [];
      for (let attempt = 0; attempt < 10; attempt += 1) {
        const outcome = await checkSignIn({ email: address, password: `wrong ${String(attempt)}`, ip: ip() });
        reasons.push(outcome.ok ? "in" : outcome.reason);
      }
      expect(reasons).toEqual(Array.from({ length: 10 }, () => "refused"));
      const outcome = await checkSignIn({ email: address, password: TEST_PASSWORD, ip: ip() });
      expect(outcome).toEqual({ ok: false, reason: "throttled" });
    }
  });

  it("does not count sign-ins that were rightful", async () => {
    const { email } = await newAccount("Ada");
    for (let attempt = 0; attempt < 12; attempt += 1) {
      expect((await checkSignIn({ email, password: TEST_PASSWORD, ip: "192.0.2.1" })).ok).toBe(true);
    }
  });

  it("notes the attempt in the audit log without address or password", async () => {
    const { userId, email } = await newAccount("Ada");
    await checkSignIn({ email, password: "not the password", ip: ip() });
    const entries = await directory.auditLog.findMany({ where: { actor: userId, action: "sign-in" } });
    expect(entries.map((entry) => entry.outcome)).toEqual(["denied"]);
    // A bigint column has no JSON of its own.
    const text = JSON.stringify(entries, (_key, value: unknown) => (typeof value === "bigint" ? Number(value) : value));
    expect(text).not.toContain(email);
    expect(text).not.toContain("not the password");
  });
});
