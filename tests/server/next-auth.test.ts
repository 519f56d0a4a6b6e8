import NextAuth from "next-auth";
import type { NextApiRequest, NextApiResponse } from "next";
import { describe, expect, it } from "vitest";
import { authOptions, sessionCookie } from "@/lib/server/auth";
import { signOutEverywhere } from "@/lib/server/accounts/writes";
import { directory } from "@/lib/server/db";
import { proveViewer } from "@/lib/server/session";
import { openSession } from "@/lib/server/sessions/writes";
import { tokenHash } from "@/lib/server/tokens";
import { newAccount, TEST_PASSWORD } from "../support/club";

interface Answer {
  readonly cookies: Readonly<Record<string, string>>;
  readonly body: unknown;
  readonly location: string | null;
}

type Cookies = Readonly<Record<string, string>>;

/** One request to next-auth itself, with the cookies of a browser; the answer has the cookies that it sets. */
async function ask(method: "GET" | "POST", path: string[], cookies: Cookies, body: object = {}): Promise<Answer> {
  const headers = new Headers();
  const response = { status: 200, body: undefined as unknown };
  const out = {
    status: (code: number) => ((response.status = code), out),
    setHeader: (name: string, value: string | string[]) => {
      headers.delete(name);
      for (const one of [value].flat()) headers.append(name, one);
      return out;
    },
    getHeader: (name: string) => (name.toLowerCase() === "set-cookie" ? headers.getSetCookie() : headers.get(name)),
    json: (value: unknown) => void (response.body = value),
    send: (value: unknown) => void (response.body = value),
    end: () => undefined,
  };
  const request = { method, cookies, headers: {}, query: { nextauth: path }, body };
  const facts = { ip: "192.0.2.7", userAgent: "test", reference: cookies[sessionCookie()] ?? null };
  // The parts of a request and a response that next-auth uses; a server is not needed for them.
  await NextAuth(request as unknown as NextApiRequest, out as unknown as NextApiResponse, authOptions(facts));
  const set = headers.getSetCookie().map((line) => line.split(";")[0]?.split("=") ?? []);
  const jar = Object.fromEntries(set.map(([name = "", value = ""]) => [name, decodeURIComponent(value)]));
  return { cookies: { ...cookies, ...jar }, body: response.body, location: headers.get("location") };
}

async function signIn(email: string, password: string, before: Cookies = {}): Promise<Answer> {
  const csrf = await ask("GET", ["csrf"], before);
  const { csrfToken } = csrf.body as { csrfToken: string };
  return ask("POST", ["callback", "credentials"], csrf.cookies, { email, password, csrfToken });
}

// next-auth warns on every request when it does not know its own address.
process.env.NEXTAUTH_URL = "http://localhost:3000";

describe("sign-in through next-auth", () => {
  it("gives a reference whose hash alone is in the database", async () => {
    const { email, userId } = await newAccount("Ada");
    const { cookies } = await signIn(email, TEST_PASSWORD);
    const reference = cookies[sessionCookie()] ?? "";
    expect(reference).toMatch(/^[\w-]{43}$/); // 32 bytes in base64url
    const rows = await directory.authSession.findMany({ where: { userId } });
    expect(rows.map((row) => Buffer.from(row.tokenHash))).toEqual([Buffer.from(tokenHash(reference))]);
    expect((await proveViewer(reference))?.userId).toBe(userId);
  });

  it("tells a wrong password and an unknown address in the same words", async () => {
    const { email } = await newAccount("Ada");
    const wrong = await signIn(email, "not the password");
    const unknown = await signIn(`x${email}`, TEST_PASSWORD);
    expect(wrong.location).toBe(unknown.location);
    expect(wrong.location).toContain("error=CredentialsSignin");
    expect(wrong.cookies[sessionCookie()] ?? "").toBe("");
  });

  it("makes a new session at each sign-in and ends the one before", async () => {
    const { email } = await newAccount("Ada");
    const first = await signIn(email, TEST_PASSWORD);
    const second = await signIn(email, TEST_PASSWORD, first.cookies);
    expect(second.cookies[sessionCookie()]).not.toBe(first.cookies[sessionCookie()]);
    expect(await proveViewer(first.cookies[sessionCookie()] ?? "")).toBeNull();
    expect(await proveViewer(second.cookies[sessionCookie()] ?? "")).not.toBeNull();
  });

  it("does not take over a reference that somebody else put into the browser", async () => {
    const { email } = await newAccount("Ada");
    const planted = "a".repeat(43);
    const { cookies } = await signIn(email, TEST_PASSWORD, { [sessionCookie()]: planted });
    expect(cookies[sessionCookie()]).not.toBe(planted);
    expect(await proveViewer(planted)).toBeNull();
  });

  it("says the name and nothing else about who is signed in, and keeps the reference", async () => {
    const { email } = await newAccount("Ada");
    const { cookies } = await signIn(email, TEST_PASSWORD);
    const session = await ask("GET", ["session"], cookies);
    expect(session.body).toEqual({ user: { name: "Ada" }, expires: expect.any(String) as string });
    expect(session.cookies[sessionCookie()]).toBe(cookies[sessionCookie()]);
  });

  it("ends the session at sign-out", async () => {
    const { email } = await newAccount("Ada");
    const { cookies } = await signIn(email, TEST_PASSWORD);
    const csrf = await ask("GET", ["csrf"], cookies);
    const { csrfToken } = csrf.body as { csrfToken: string };
    await ask("POST", ["signout"], csrf.cookies, { csrfToken });
    expect(await proveViewer(cookies[sessionCookie()] ?? "")).toBeNull();
  });
});

describe("sessions", () => {
  it("are over everywhere at the next request after signing out everywhere", async () => {
    const { userId } = await newAccount("Ada");
    const open = () => openSession({ userId, userAgent: null });
    const [phone, desk] = [await open(), await open()];
    const viewer = await proveViewer(phone);
    if (viewer === null) throw new Error("the session was not open");
    await signOutEverywhere(viewer);
    expect(await proveViewer(phone)).toBeNull();
    expect(await proveViewer(desk)).toBeNull();
  });

  it("end when idle for too long, at the absolute end, and with the account", async () => {
    const past = new Date(Date.now() - 1000);
    for (const change of [{ idleExpiresAt: past }, { idleExpiresAt: past, absoluteExpiresAt: past }]) {
      const { userId } = await newAccount("Ada");
      const reference = await openSession({ userId, userAgent: null });
      await directory.authSession.updateMany({ where: { userId }, data: change });
      expect(await proveViewer(reference)).toBeNull();
    }
    const { userId } = await newAccount("Ada");
    const reference = await openSession({ userId, userAgent: null });
    await directory.appUser.update({ where: { id: userId }, data: { disabledAt: past } });
    expect(await proveViewer(reference)).toBeNull();
  });

  it("slide their idle end with use, but not past the absolute one", async () => {
    const { userId } = await newAccount("Ada");
    const reference = await openSession({ userId, userAgent: null });
    const inTenDays = new Date(Date.now() + 10 * 86_400_000);
    await directory.authSession.updateMany({
      where: { userId },
      data: { lastSeenAt: new Date(0), idleExpiresAt: new Date(Date.now() + 1000), absoluteExpiresAt: inTenDays },
    });
    expect(await proveViewer(reference)).not.toBeNull();
    const { idleExpiresAt } = await directory.authSession.findFirstOrThrow({ where: { userId } });
    expect(idleExpiresAt).toEqual(inTenDays);
  });
});
