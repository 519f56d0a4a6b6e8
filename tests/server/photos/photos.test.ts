import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { blobsOf } from "@/lib/server/blobs/open-blobs";
import { inSpace } from "@/lib/server/db";
import { findPhoto } from "@/lib/server/photos/reads";
import { keepPhoto } from "@/lib/server/photos/writes";
import type { Member } from "@/lib/server/session";
import { newBrewing } from "../../support/brewing";
import { join as joinClub, newClub } from "../../support/club";
import { gpsJpeg, noisyJpeg, pictureBomb } from "../../support/pictures";
import { HASH } from "../../support/content-rows";
import { connectAs, insert } from "../../support/sql-session";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "gylebook-photos-"));
  vi.stubEnv("BLOB_FOLDER", folder);
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await rm(folder, { recursive: true });
});

async function clubWithBrew() {
  const club = await newClub("member", "judge");
  return { ...club, ...(await newBrewing(club.organiser, club.member)) };
}

const rowsOf = ({ spaceId, userId }: Member) =>
  inSpace(spaceId, userId, (tx) => tx.attachment.findMany({ where: { spaceId } }));

/** Rows as if so many photos had been kept before. */
async function fill(member: Member, brewId: string, count: number, bytes: number): Promise<void> {
  const { spaceId, userId } = member;
  const picture = { mime: "image/webp", width: 10, height: 10, sha256: HASH, thumbSha256: HASH, sentSha256: HASH };
  const data = Array.from({ length: count }, () => ({
    ...picture,
    spaceId,
    brewId,
    id: randomUUID(),
    uploaderId: userId,
    bytes,
    thumbBytes: 1,
  }));
  await inSpace(spaceId, userId, (tx) => tx.attachment.createMany({ data }));
}

describe("keepPhoto", () => {
  it("keeps both pictures under their hashes, and who sent them", async () => {
    const { member, brewId } = await clubWithBrew();
    const id = randomUUID();
    const kept = await keepPhoto(member, { id, brewId, bytes: await gpsJpeg() });
    expect(kept).toMatchObject({ outcome: "stored", photo: { id, width: 80, height: 40 } });
    const [row] = await rowsOf(member);
    expect(row).toMatchObject({ brewId, uploaderId: member.userId, mime: "image/webp" });
    const hashes = [row?.sha256, row?.thumbSha256].map((hash) => Buffer.from(hash ?? []).toString("hex"));
    expect(await blobsOf(member.spaceId).list()).toEqual([...new Set(hashes)].sort());
    const whole = await findPhoto(member, { brewId, id, size: "whole" });
    expect(whole?.mime).toBe("image/webp");
    expect(whole?.bytes.length).toBe(row?.bytes);
  });

  it("absorbs a photo that is sent again, at once or later", async () => {
    const { member, brewId } = await clubWithBrew();
    const photo = { id: randomUUID(), brewId, bytes: await gpsJpeg() };
    const outcomes = await Promise.all([1, 2, 3, 4].map(() => keepPhoto(member, photo)));
    expect(outcomes.map(({ outcome }) => outcome).sort()).toEqual(["duplicate", "duplicate", "duplicate", "stored"]);
    expect((await keepPhoto(member, photo)).outcome).toBe("duplicate");
    expect(await rowsOf(member)).toHaveLength(1);
  });

  it("never overwrites: another picture, or another brew, under the same number is refused", async () => {
    const { organiser, member, brewId } = await clubWithBrew();
    const photo = { id: randomUUID(), brewId, bytes: await gpsJpeg() };
    await keepPhoto(member, photo);
    const refusal = "Another photo with this identifier is kept already; nothing was changed.";
    await expect(keepPhoto(member, { ...photo, bytes: await noisyJpeg(50, 50) })).rejects.toThrow(refusal);
    const { brewId: other } = await newBrewing(organiser, member);
    await expect(keepPhoto(member, { ...photo, brewId: other })).rejects.toThrow(refusal);
  });

  it("refuses whoever may not write to the brew, and keeps nothing of them", async () => {
    const { organiser, judge, member, brewId } = await clubWithBrew();
    const photo = { id: randomUUID(), brewId, bytes: await gpsJpeg() };
    for (const reader of [judge, await joinClub(organiser, "member")]) {
      await expect(keepPhoto(reader, photo)).rejects.toThrow("Only who brews this");
    }
    const { organiser: outsider } = await newClub();
    await expect(keepPhoto(outsider, photo)).rejects.toThrow("There is no such brew here.");
    expect(await rowsOf(member)).toEqual([]);
    expect(await blobsOf(member.spaceId).list()).toEqual([]);
    expect(await blobsOf(outsider.spaceId).list()).toEqual([]);
  });

  it("keeps nothing of a picture that is refused", async () => {
    const { member, brewId } = await clubWithBrew();
    await expect(keepPhoto(member, { id: randomUUID(), brewId, bytes: pictureBomb() })).rejects.toThrow("too many");
    expect(await rowsOf(member)).toEqual([]);
    expect(await blobsOf(member.spaceId).list()).toEqual([]);
  });

  it("takes forty photos of a brew and no more, also of two at one moment", async () => {
    const { member, brewId } = await clubWithBrew();
    await fill(member, brewId, 39, 1000);
    const sent = await Promise.allSettled(
      [await gpsJpeg(), await noisyJpeg(40, 40)].map((bytes) => keepPhoto(member, { id: randomUUID(), brewId, bytes })),
    );
    expect(sent.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
    const photo = { id: randomUUID(), brewId, bytes: await gpsJpeg() };
    await expect(keepPhoto(member, photo)).rejects.toThrow(
      "this brew has 40, deleted ones included, which is the most",
    );
  });

  it("takes two gigabytes of a club and no more", async () => {
    const { organiser, member, brewId } = await clubWithBrew();
    const full = 10_485_760;
    for (let brews = 0; brews < 6; brews++) {
      const { brewId: other } = await newBrewing(organiser, member);
      await fill(member, other, 34, full);
    }
    // 204 × 10 MB fit into 2048 MB, and 8 MB are left.
    await keepPhoto(member, { id: randomUUID(), brewId, bytes: await gpsJpeg() });
    await fill(member, brewId, 1, 8_380_000);
    const photo = { id: randomUUID(), brewId, bytes: await noisyJpeg(1600, 1600) };
    await expect(keepPhoto(member, photo)).rejects.toThrow("this club keeps 2048 MB of them, which is the most");
  });
});

describe("findPhoto", () => {
  it("shows a photo to everybody of the club and to nobody else", async () => {
    const { member, judge, brewId, organiser } = await clubWithBrew();
    const id = randomUUID();
    await keepPhoto(member, { id, brewId, bytes: await gpsJpeg() });
    const asked = { brewId, id, size: "thumb" } as const;
    expect(await findPhoto(judge, asked)).not.toBeNull();
    expect(await findPhoto((await newClub()).organiser, asked)).toBeNull();
    const { brewId: other } = await newBrewing(organiser, member);
    expect(await findPhoto(member, { ...asked, brewId: other })).toBeNull();
    expect(await findPhoto(member, { ...asked, id: "../../etc/passwd" })).toBeNull();
  });

  it("shows it no more once the entry that shows it is void; the bytes stay", async () => {
    const { member, brewId } = await clubWithBrew();
    const id = randomUUID();
    await keepPhoto(member, { id, brewId, bytes: await gpsJpeg() });
    const asked = { brewId, id, size: "whole" } as const;
    const shown = randomUUID();
    const event = { space_id: member.spaceId, brew_id: brewId, device_id: randomUUID(), actor_id: member.userId };
    const rest = { occurred_at: new Date("2026-03-01T10:00:00Z"), payload_hash: HASH };
    const app = await connectAs("gyle_app", member);
    const photo = { ...event, ...rest, id: shown, device_seq: 1, kind: "photo", payload: { photoId: id, caption: "" } };
    await insert(app, "brew_event", photo);
    expect(await findPhoto(member, asked)).not.toBeNull();
    const taken = { ...event, ...rest, id: randomUUID(), device_seq: 2, kind: "void", target_id: shown, payload: {} };
    await insert(app, "brew_event", taken);
    await app.end();
    expect(await findPhoto(member, asked)).toBeNull();
    expect(await blobsOf(member.spaceId).list()).toHaveLength(2);
  });
});
