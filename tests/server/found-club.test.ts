import { execFile } from "node:child_process";
import { randomUUID } from "node:crypto";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import { checkSignIn } from "@/lib/server/accounts/sign-in";
import { directory } from "@/lib/server/db";

const run = promisify(execFile);
const COMMAND = ["--conditions=react-server", "--import", "tsx", "lib/ops/found-club.ts"];

interface Outcome {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

async function foundClub(flags: Readonly<Record<string, string>>, password?: string): Promise<Outcome> {
  const words = Object.entries(flags).flatMap(([flag, value]) => [`--${flag}`, value]);
  const env = { ...process.env, ...(password === undefined ? {} : { GYLEBOOK_PASSWORD: password }) };
  try {
    return { code: 0, ...(await run(process.execPath, [...COMMAND, ...words], { env })) };
  } catch (error) {
    return error as Outcome; // what execFile rejects with has these fields
  }
}

const order = () => ({
  club: "Two Rivers Brewers",
  slug: `rivers-${randomUUID().slice(0, 8)}`,
  email: `${randomUUID()}@example.org`,
  name: "Ada",
});

describe("found-club", () => {
  it("makes a club with its first organiser, who signs in with the password that is printed", async () => {
    const { slug, email, ...rest } = order();
    const { code, stdout } = await foundClub({ slug, email, ...rest });
    expect(code).toBe(0);
    const password = /shown only now: (\S+)/.exec(stdout)?.[1] ?? "";
    const signedIn = await checkSignIn({ email, password, ip: randomUUID() });
    const members = await directory.membership.findMany({
      where: { space: { slug } },
      select: { userId: true, role: true },
    });
    expect(signedIn).toMatchObject({ ok: true, displayName: "Ada" });
    expect(members).toEqual([{ userId: signedIn.ok ? signedIn.userId : "", role: "organiser" }]);
  });

  it("takes the password from the environment and does not print it", async () => {
    const flags = order();
    const { stdout } = await foundClub(flags, "a password of the operator");
    expect(stdout).not.toContain("a password of the operator");
    const attempt = { email: flags.email, password: "a password of the operator", ip: randomUUID() };
    expect(await checkSignIn(attempt)).toMatchObject({ ok: true });
  });

  it("leaves no account behind when the club's address is taken, and says so in one sentence", async () => {
    const first = order();
    await foundClub(first);
    const second = { ...order(), slug: first.slug };
    const { code, stderr } = await foundClub(second);
    expect(code).toBe(1);
    expect(stderr).toBe("There is an account with this e-mail address, or a club at this address, already.\n");
    expect(await directory.appUser.count({ where: { emailNorm: second.email } })).toBe(0);
  });

  it("names what is missing", async () => {
    const { code, stderr } = await foundClub({ club: "Two Rivers Brewers", slug: "x" });
    expect(code).toBe(1);
    expect(stderr).toContain("Address of the club takes 3 to 40 small letters");
    expect(stderr).toContain("E-mail address is empty");
    expect(stderr).toContain("Name is empty");
  });
});
