import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join as joinPath } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { accountClosing } from "@/lib/model/account-closing";
import { eraseEndedSpaces } from "@/lib/ops/erase-ended-spaces";
import { closeAccount } from "@/lib/server/accounts/close-account";
import { closingClubs } from "@/lib/server/accounts/closing-clubs";
import { displayNames } from "@/lib/server/accounts/names";
import { checkSignIn } from "@/lib/server/accounts/sign-in";
import { listBrews } from "@/lib/server/brews/reads";
import { blobsOf } from "@/lib/server/blobs/open-blobs";
import { directory, inSpace } from "@/lib/server/db";
import { findPhoto } from "@/lib/server/photos/reads";
import { keepPhoto } from "@/lib/server/photos/writes";
import { proveMember, proveViewer, type Member, type Viewer } from "@/lib/server/session";
import { openSession } from "@/lib/server/sessions/writes";
import { makeOrganiser } from "@/lib/server/spaces/hand-over";
import { newBrewing } from "../../support/brewing";
import { join, newAccount, newClub, TEST_PASSWORD } from "../../support/club";
import { gpsJpeg, noisyJpeg } from "../../support/pictures";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(joinPath(tmpdir(), "gylebook-closing-"));
  vi.stubEnv("BLOB_FOLDER", folder);
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await rm(folder, { recursive: true });
});

const close = (viewer: Viewer) => closeAccount(viewer, { password: TEST_PASSWORD });
const rowOf = ({ userId }: Viewer) => directory.appUser.findUniqueOrThrow({ where: { id: userId } });

async function setName({ userId }: Viewer, displayName: string): Promise<string> {
  const { emailNorm } = await directory.appUser.update({ where: { id: userId }, data: { displayName } });
  return emailNorm;
}

/** Everything that the database holds, as text, for a search after what should be gone. */
async function everythingIn({ spaceId, userId }: Member): Promise<string> {
  const content = await inSpace(spaceId, userId, async (tx) => [
    await tx.brew.findMany({ where: { spaceId } }),
    await tx.equipment.findMany({ where: { spaceId } }),
    await tx.notice.findMany({ where: { spaceId } }),
    await tx.publicRecipe.findMany(),
    await tx.outbox.findMany({ where: { spaceId } }),
  ]);
  const people = await directory.appUser.findMany();
  const invites = await directory.invite.findMany({ where: { spaceId } });
  const audit = await directory.auditLog.findMany({ where: { spaceId } });
  return JSON.stringify([content, people, invites, audit], (_key, value: unknown) =>
    typeof value === "bigint" ? value.toString() : value,
  );
}

describe("closing an account", () => {
  it("asks for the password, and does nothing without it", async () => {
    const { member } = await newClub("member");
    await expect(closeAccount(member, { password: "not the password" })).rejects.toThrow(
      "The present password is not right.",
    );
    expect(await rowOf(member)).toMatchObject({ closedAt: null, displayName: "Some member" });
  });

  it("asks for words that are not typed by mistake", () => {
    const { error } = accountClosing.safeParse({ password: TEST_PASSWORD, words: "close it" });
    expect(error?.issues).toMatchObject([{ path: ["words"], message: "These words are not “close my account”" }]);
  });

  it("keeps the brew for the others, under a number that leads to nobody", async () => {
    const { organiser, member } = await newClub("member");
    const email = await setName(member, "Nora Nearly-Gone");
    const { brewId, equipmentId } = await newBrewing(organiser, member);
    await inSpace(member.spaceId, member.userId, (tx) =>
      tx.equipment.updateMany({ where: { id: equipmentId }, data: { name: "Nora Nearly-Gone's kettle" } }),
    );
    await close(member);
    const brews = await listBrews(organiser);
    expect(brews.map(({ id }) => id)).toContain(brewId);
    expect((await displayNames(organiser, [member.userId]))(member.userId)).toBe("a former member");
    const left = await everythingIn(organiser);
    expect(left).not.toContain("Nora");
    expect(left).not.toContain(email);
    expect(await rowOf(member)).toMatchObject({
      displayName: "A former member",
      emailNorm: `${member.userId}@closed.invalid`,
      passwordHash: null,
    });
  });

  it("ends every way in: sessions, the password, keys, calendars, devices, invitations made and received", async () => {
    const { organiser, member } = await newClub("member");
    const { userId, spaceId } = member;
    const email = await setName(member, "Ida");
    const reference = await openSession({ userId, userAgent: null });
    const hash = () => new Uint8Array(Buffer.from(`${randomUUID()}${randomUUID()}`.replaceAll("-", ""), "hex"));
    const soon = new Date(Date.now() + 60_000);
    await directory.sensorToken.create({
      data: { id: randomUUID(), spaceId, userId, name: "Ida's float", tokenHash: hash(), expiresAt: soon },
    });
    await directory.calendarToken.create({ data: { spaceId, userId, tokenHash: hash() } });
    await directory.pushSubscription.create({
      data: {
        id: randomUUID(),
        userId,
        endpoint: "https://push.example/x",
        endpointHash: hash(),
        p256dh: new Uint8Array(65).fill(4),
        auth: new Uint8Array(16),
      },
    });
    await directory.invite.createMany({
      data: [
        { spaceId, id: randomUUID(), tokenHash: hash(), role: "guest", createdBy: userId, expiresAt: soon },
        {
          spaceId,
          id: randomUUID(),
          tokenHash: hash(),
          role: "guest",
          createdBy: organiser.userId,
          expiresAt: soon,
          emailNorm: email,
        },
      ],
    });
    await close(member);
    expect(await proveViewer(reference)).toBeNull();
    expect(await proveMember(member, member.spaceSlug)).toBeNull();
    expect((await checkSignIn({ email, password: TEST_PASSWORD, ip: randomUUID() })).ok).toBe(false);
    const of = { where: { userId } };
    expect(await directory.sensorToken.count(of)).toBe(0);
    expect(await directory.calendarToken.count(of)).toBe(0);
    expect(await directory.pushSubscription.count(of)).toBe(0);
    expect(await directory.invite.count({ where: { spaceId, revokedAt: null } })).toBe(0);
    expect(await directory.invite.count({ where: { emailNorm: email } })).toBe(0);
  });

  it("removes the photos, but not one that somebody else sent as well", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId } = await newBrewing(organiser, member);
    const [own, both] = [randomUUID(), randomUUID()];
    await keepPhoto(member, { id: own, brewId, bytes: await gpsJpeg(1) });
    await keepPhoto(member, { id: both, brewId, bytes: await gpsJpeg(3) });
    await keepPhoto(organiser, { id: randomUUID(), brewId, bytes: await gpsJpeg(3) });
    await close(member);
    expect(await findPhoto(organiser, { brewId, id: own, size: "whole" })).toBeNull();
    expect(await findPhoto(organiser, { brewId, id: both, size: "whole" })).not.toBeNull();
  });

  it("is noted, without a name or an address", async () => {
    const { member } = await newClub("member");
    await close(member);
    const [entry] = await directory.auditLog.findMany({ where: { actor: member.userId, action: "account closed" } });
    expect(entry).toMatchObject({ outcome: "ok", target: null, meta: {} });
  });

  it("cannot be taken back, and the address is free for a new account", async () => {
    const { member } = await newClub("member");
    await close(member);
    await expect(
      directory.appUser.update({ where: { id: member.userId }, data: { closedAt: null } }),
    ).rejects.toThrow();
    const naming = directory.appUser.update({ where: { id: member.userId }, data: { displayName: "Somebody" } });
    await expect(naming).rejects.toThrow();
    expect((await newAccount("Some member")).userId).not.toBe(member.userId);
  });
});

describe("the last organiser of a club", () => {
  it("is told to make somebody else organiser first, and may go after that", async () => {
    const { organiser, member } = await newClub("member");
    const { userId, spaceName } = organiser;
    expect(await closingClubs(directory, userId)).toMatchObject([{ name: spaceName, outcome: "needs an organiser" }]);
    await expect(close(organiser)).rejects.toThrow(`You are the last organiser of ${spaceName}`);
    expect(await rowOf(organiser)).toMatchObject({ closedAt: null });
    await makeOrganiser(organiser, member.userId);
    expect(await closingClubs(directory, userId)).toMatchObject([{ outcome: "goes on" }]);
    await close(organiser);
    expect(await proveMember(member, member.spaceSlug)).toMatchObject({ role: "organiser" });
  });

  it("leaves together with another one only one after the other: a club never ends without", async () => {
    const { organiser } = await newClub();
    const second = await join(organiser, "organiser");
    await join(organiser, "member");
    const ended = await Promise.allSettled([close(organiser), close(second)]);
    expect(ended.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
    const left = { spaceId: organiser.spaceId, role: "organiser", status: "active" };
    expect(await directory.membership.count({ where: left })).toBe(1);
  });

  it("takes a club along in which nobody is left, as the bench", async () => {
    const { organiser } = await newClub();
    const { userId, spaceId } = organiser;
    expect(await closingClubs(directory, userId)).toMatchObject([{ outcome: "goes too" }]);
    await close(organiser);
    const spaces = await directory.space.findMany({ where: { memberships: { some: { userId } } } });
    expect(spaces.map(({ id }) => id)).toContain(spaceId);
    expect(spaces.every(({ deletedAt, name }) => deletedAt !== null && name === "An ended space")).toBe(true);
  });

  it("leaves nothing in it once the operator has erased what ended, and other clubs as they were", async () => {
    const { organiser } = await newClub();
    const { organiser: neighbour } = await newClub();
    const [{ brewId }, { brewId: theirs }] = [
      await newBrewing(organiser, organiser),
      await newBrewing(neighbour, neighbour),
    ];
    await keepPhoto(organiser, { id: randomUUID(), brewId, bytes: await noisyJpeg(40, 40) });
    await close(organiser);
    expect(await eraseEndedSpaces(process.env.DATABASE_URL ?? "")).toBeGreaterThan(0);
    expect(await listBrews(organiser)).toEqual([]);
    expect(await blobsOf(organiser.spaceId).list()).toEqual([]);
    expect((await listBrews(neighbour)).map(({ id }) => id)).toContain(theirs);
    expect(await eraseEndedSpaces(process.env.DATABASE_URL ?? "")).toBe(0);
    const { spaceId, userId } = neighbour;
    const altered = inSpace(spaceId, userId, (tx) => tx.$executeRaw`DELETE FROM recipe_revision`);
    await expect(altered).rejects.toThrow();
  });
});

describe("making an organiser", () => {
  it("is an organiser's to do, within the club only, and noted", async () => {
    const { organiser, member, judge } = await newClub("member", "judge");
    await expect(makeOrganiser(member, judge.userId)).rejects.toThrow("Only an organiser does this.");
    const { member: stranger } = await newClub("member");
    await expect(makeOrganiser(organiser, stranger.userId)).rejects.toThrow("There is no such member here");
    await expect(makeOrganiser(organiser, "nobody")).rejects.toThrow("There is no such member here");
    await makeOrganiser(organiser, judge.userId);
    const noted = { action: "hand over", actor: organiser.userId, target: judge.userId };
    expect(await directory.auditLog.count({ where: noted })).toBe(1);
  });
});
