import { afterEach, describe, expect, it, vi } from "vitest";
import { checkSettings } from "@/lib/server/check-settings";

afterEach(() => {
  vi.unstubAllEnvs();
});

const GOOD = "k3Jx9QmW2vZr7TnB4cYp8LdF6hSg1aUe";

describe("the settings of a server", () => {
  it("are taken as they are in the tests, with a secret that a machine made", () => {
    vi.stubEnv("NEXTAUTH_SECRET", GOOD);
    expect(() => checkSettings()).not.toThrow();
  });

  it.each([
    ["", "NEXTAUTH_SECRET must be set."],
    [GOOD.slice(0, 31), "NEXTAUTH_SECRET must have at least 32 characters."],
    ["a".repeat(64), "NEXTAUTH_SECRET is easily guessed"],
    ["abcabcabcabcabcabcabcabcabcabcabc", "NEXTAUTH_SECRET is easily guessed"],
    [`${GOOD}-change-me`, "NEXTAUTH_SECRET is easily guessed"],
    ["my-secret-for-signing-sessions-2026", "NEXTAUTH_SECRET is easily guessed"],
  ])("are refused with the secret “%s”", (secret, told) => {
    vi.stubEnv("NEXTAUTH_SECRET", secret);
    expect(() => checkSettings()).toThrow(told);
  });

  it.each([
    ["APP_ORIGIN", "brewing.example", "APP_ORIGIN must be an address"],
    ["DATABASE_URL", "mysql://localhost/x", "DATABASE_URL must be an address that begins with postgresql://"],
    ["SMTP_URL", "https://mail.example", "SMTP_URL must be an address that begins with smtp://"],
    ["S3_ENDPOINT", "https://store.example", "S3_BUCKET must be set"],
    ["VAPID_PUBLIC_KEY", "short", "VAPID_PUBLIC_KEY must be a VAPID key"],
  ])("are refused with %s=%s", (name, value, told) => {
    vi.stubEnv("NEXTAUTH_SECRET", GOOD);
    vi.stubEnv(name, value);
    expect(() => checkSettings()).toThrow(told);
  });

  it("are refused without an address of the pages", () => {
    vi.stubEnv("NEXTAUTH_SECRET", GOOD);
    vi.stubEnv("APP_ORIGIN", "");
    vi.stubEnv("NEXTAUTH_URL", "");
    expect(() => checkSettings()).toThrow("APP_ORIGIN must be set");
  });
});
