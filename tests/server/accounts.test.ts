import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { DEFAULT_PREFERENCES, type Preferences } from "@/lib/model/preferences";
import { checkSignIn } from "@/lib/server/accounts/sign-in";
import { changePassword, findMailChoice, saveMailChoice, savePreferences } from "@/lib/server/accounts/writes";
import { directory } from "@/lib/server/db";
import { hashPassword, passwordMatches } from "@/lib/server/password";
import { proveViewer } from "@/lib/server/session";
import { openSession } from "@/lib/server/sessions/writes";
import { listSpaces } from "@/lib/server/spaces/reads";
import { foundClub } from "@/lib/server/spaces/writes";
import { newAccount, newViewer, TEST_PASSWORD } from "../support/club";

describe("passwords", () => {
  it("are kept as argon2id with the cost of the OWASP Password Storage Cheat Sheet: 19 MiB, 2 passes, 1 lane", async () => {
    expect(await hashPassword("any password")).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
  });

  it("match their own hash, and nothing where there is none", async () => {
    const hash = await hashPassword("any password");
    expect(await passwordMatches(hash, "any password")).toBe(true);
    expect(await passwordMatches(hash, "another password")).toBe(false);
    expect(await passwordMatches(null, "nobody has this password")).toBe(false);
  });

  it("change with the present one, and then every session is over", async () => {
    const { userId, email } = await newAccount("Ada");
    const reference = await openSession({ userId, userAgent: null });
    const viewer = await proveViewer(reference);
    if (viewer === null) throw new Error("the session was not open");
    const replacement = "quite another passphrase";
    await expect(changePassword(viewer, { current: "not the password", replacement })).rejects.toThrow(
      "The present password is not right.",
    );
    await changePassword(viewer, { current: TEST_PASSWORD, replacement });
    expect(await proveViewer(reference)).toBeNull();
    expect((await checkSignIn({ email, password: TEST_PASSWORD, ip: randomUUID() })).ok).toBe(false);
    expect((await checkSignIn({ email, password: replacement, ip: randomUUID() })).ok).toBe(true);
  });
});

describe("preferences", () => {
  const ofViewer = async (userId: string) =>
    (await proveViewer(await openSession({ userId, userAgent: null })))?.preferences;

  it("are the defaults until somebody chooses, and then what they chose", async () => {
    const viewer = await newViewer("Ada");
    expect(viewer.preferences).toEqual(DEFAULT_PREFERENCES);
    const chosen: Preferences = { units: "us", gravity: "plato", colour: "srm", theme: "dark" };
    await savePreferences(viewer, chosen);
    expect(await ofViewer(viewer.userId)).toEqual(chosen);
  });

  it("survive a choice that was added or taken away since", async () => {
    const viewer = await newViewer("Ada");
    const save = (preferences: object) =>
      directory.appUser.update({ where: { id: viewer.userId }, data: { preferences } });
    await save({ units: "us" });
    expect(await ofViewer(viewer.userId)).toEqual({ ...DEFAULT_PREFERENCES, units: "us" });
    await save({ units: "cubits" });
    expect(await ofViewer(viewer.userId)).toEqual(DEFAULT_PREFERENCES);
  });
});

describe("mail about changes", () => {
  it("is wanted until somebody says otherwise, and does not touch how numbers look", async () => {
    const viewer = await newViewer("Ada");
    expect(await findMailChoice(viewer)).toEqual({ changes: true });
    await savePreferences(viewer, { ...DEFAULT_PREFERENCES, units: "us" });
    await saveMailChoice(viewer, { changes: false });
    expect(await findMailChoice(viewer)).toEqual({ changes: false });
    const again = await proveViewer(await openSession({ userId: viewer.userId, userAgent: null }));
    expect(again?.preferences.units).toBe("us");
  });
});

describe("spaces", () => {
  it("begin with a bench of one's own, and a club adds one", async () => {
    const viewer = await newViewer("Ada");
    expect(await listSpaces(viewer)).toMatchObject([{ kind: "person", role: "organiser" }]);
    const slug = `club-${randomUUID().slice(0, 8)}`;
    await foundClub(viewer, { name: "A club", slug });
    expect(await listSpaces(viewer)).toContainEqual({ slug, name: "A club", kind: "club", role: "organiser" });
  });

  it("have addresses of their own: a taken one is refused, and no half club stays", async () => {
    const [first, second] = [await newViewer("Ada"), await newViewer("Bea")];
    const slug = `club-${randomUUID().slice(0, 8)}`;
    await foundClub(first, { name: "A club", slug });
    await expect(foundClub(second, { name: "Another", slug })).rejects.toThrow(
      `The address “${slug}” is taken; choose another one.`,
    );
    expect(await listSpaces(second)).toHaveLength(1);
  });
});
