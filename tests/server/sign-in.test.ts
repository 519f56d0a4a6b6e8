import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { checkSignIn } from "@/lib/server/accounts/sign-in";
import { directory } from "@/lib/server/db";
import { newAccount, TEST_PASSWORD } from "../support/club";

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
