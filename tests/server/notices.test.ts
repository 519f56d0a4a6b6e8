import { describe, expect, it } from "vitest";
import { inSpace } from "@/lib/server/db";
import { countUnread, findNotice, listNotices } from "@/lib/server/notices/reads";
import { markRead, tell } from "@/lib/server/notices/writes";
import type { Member } from "@/lib/server/session";
import { join, newClub } from "../support/club";

const about = {
  kind: "plan changed",
  payload: { sharedBrewId: crypto.randomUUID(), title: "Spring brew", version: 2, note: "", kettle: "" },
} as const;

const told = (by: Member, ...to: readonly Member[]) =>
  inSpace(by.spaceId, by.userId, (tx) =>
    tell(
      tx,
      by,
      to.map(({ userId }) => userId),
      about,
    ),
  );

describe("a notice", () => {
  it("is read by the one whom it tells, and by nobody else in the club", async () => {
    const { organiser, member } = await newClub("member");
    const other = await join(organiser, "member");
    await told(organiser, member);
    const [notice] = await listNotices(member);
    expect(notice).toMatchObject({ ...about, readAt: null });
    for (const nosy of [organiser, other]) {
      expect(await listNotices(nosy)).toEqual([]);
      expect(await findNotice(nosy, notice?.id ?? "")).toBeNull();
      await markRead(nosy, { ids: [notice?.id ?? ""] });
    }
    expect(await countUnread(member)).toBe(1);
  });

  it("is hidden by the database itself from whoever asks without the member’s name", async () => {
    const { organiser, member } = await newClub("member");
    await told(organiser, member);
    const { spaceId } = organiser;
    expect(await inSpace(spaceId, organiser.userId, (tx) => tx.notice.count({ where: { spaceId } }))).toBe(0);
    const taken = inSpace(spaceId, organiser.userId, (tx) =>
      tx.notice.updateMany({ where: { spaceId }, data: { userId: organiser.userId } }),
    );
    expect(await taken).toEqual({ count: 0 });
    expect(await inSpace(spaceId, member.userId, (tx) => tx.notice.count({ where: { spaceId } }))).toBe(1);
  });

  it("is counted until it is read", async () => {
    const { organiser, member } = await newClub("member");
    await told(organiser, member, member);
    await told(organiser, member, organiser);
    expect(await countUnread(member)).toBe(2);
    const [first] = await listNotices(member);
    await markRead(member, { ids: [first?.id ?? ""] });
    expect(await countUnread(member)).toBe(1);
    expect((await listNotices(member)).filter(({ readAt }) => readAt !== null).map(({ id }) => id)).toEqual([
      first?.id,
    ]);
  });
});
