import { Client } from "pg";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { directory, inSpace } from "@/lib/server/db";
import { dispatchMail } from "@/lib/server/mail/dispatch";
import { createMailer, type Mailer } from "@/lib/server/mail/mailer";
import { listNotices } from "@/lib/server/notices/reads";
import { changePlan } from "@/lib/server/shared-brews/change-plan";
import { joinSharedBrew } from "@/lib/server/shared-brews/participants";
import type { Member } from "@/lib/server/session";
import { newClub } from "../../support/club";
import { catchMail, type MailCatcher } from "../../support/mail-catcher";
import { callSharedBrew, joiningOf, newKettle, planChangeOf } from "../../support/shared-brew";
import { connectAs } from "../../support/sql-session";

const FROM = "Brewing circle <circle@club.example>";

let catcher: MailCatcher;
let mailers: Mailer[];

beforeEach(async () => {
  catcher = await catchMail();
  vi.stubEnv("SMTP_URL", catcher.url);
  vi.stubEnv("MAIL_FROM", FROM);
  mailers = [0, 1].map(() => createMailer({ smtpUrl: catcher.url, from: FROM }));
});

afterEach(async () => {
  vi.unstubAllEnvs();
  mailers.forEach((mailer) => mailer.close());
  await catcher.stop();
});

interface Joined {
  readonly organiser: Member;
  readonly member: Member;
  readonly sharedBrewId: string;
}

async function joined(): Promise<Joined> {
  const { organiser, member } = await newClub("member");
  const { sharedBrewId } = await callSharedBrew(organiser);
  await joinSharedBrew(member, joiningOf(sharedBrewId, await newKettle(member)));
  return { organiser, member, sharedBrewId };
}

const [first, second] = [() => mailers[0] as Mailer, () => mailers[1] as Mailer]; // both were made before each test

const outboxOf = ({ spaceId, userId }: Member) =>
  inSpace(spaceId, userId, (tx) => tx.outbox.findMany({ where: { spaceId } }));

/** What waits is due now. */
const hurry = ({ spaceId, userId }: Member) =>
  inSpace(spaceId, userId, (tx) => tx.outbox.updateMany({ where: { spaceId }, data: { nextTryAt: new Date(0) } }));

describe("a change of the plan", () => {
  it("reaches the member by mail once, also when two processes send at the same time", async () => {
    const { organiser, member, sharedBrewId } = await joined();
    await changePlan(organiser, planChangeOf(sharedBrewId));
    await Promise.all([dispatchMail(first()), dispatchMail(second()), dispatchMail(first()), dispatchMail(second())]);
    await dispatchMail(first());

    expect(catcher.mails).toHaveLength(1);
    const [mail] = catcher.mails;
    expect(mail?.from?.text).toBe('"Brewing circle" <circle@club.example>');
    expect(mail?.subject).toBe("The plan of Spring brew has changed: version 2");
    expect(mail?.text).toContain("The malt comes later");
    expect(mail?.text).toContain(
      "- Brew day: Sat, 3 Apr 2027 to Sun, 18 Apr 2027 instead of Sun, 14 Mar 2027 to Sun, 28 Mar 2027",
    );
    expect(mail?.text).toContain(`http://localhost:3000/s/${member.spaceSlug}/shared-brews/${sharedBrewId}`);
    expect(mail?.text).toMatch(/no more mails .*: http:\/\/localhost:3000\/account#mail/);
    expect((await listNotices(member))[0]?.mailedAt).toBeInstanceOf(Date);
  });

  it("is sent again after a refusal, later each time, and then as the same message", async () => {
    const { organiser, member, sharedBrewId } = await joined();
    await changePlan(organiser, planChangeOf(sharedBrewId));
    catcher.refuse(2);
    const waits: number[] = [];
    for (const attempts of [1, 2]) {
      expect(await dispatchMail(first())).toBe(0);
      const [waiting] = await outboxOf(member);
      expect(waiting).toMatchObject({
        attempts,
        doneAt: null,
        lastError: expect.stringContaining("try again later") as string,
      });
      waits.push((waiting?.nextTryAt.getTime() ?? 0) - Date.now());
      // It is not tried before its time.
      expect(await dispatchMail(first())).toBe(0);
      await hurry(member);
    }
    expect(waits[1] ?? 0).toBeGreaterThan(1.5 * (waits[0] ?? Infinity));
    expect(await dispatchMail(second())).toBe(1);
    const [done] = await outboxOf(member);
    expect(done).toMatchObject({ lastError: null, attempts: 3 });
    expect(catcher.mails.map(({ messageId }) => messageId)).toEqual([`<${done?.id ?? ""}@club.example>`]);
  });

  it("is given up after many tries", async () => {
    const { organiser, member, sharedBrewId } = await joined();
    await changePlan(organiser, planChangeOf(sharedBrewId));
    const { spaceId, userId } = member;
    await inSpace(spaceId, userId, (tx) => tx.outbox.updateMany({ where: { spaceId }, data: { attempts: 11 } }));
    catcher.refuse(1);
    await dispatchMail(first());
    expect((await outboxOf(member))[0]?.givenUpAt).toBeInstanceOf(Date);
    await hurry(member);
    expect(await dispatchMail(first())).toBe(0);
    expect(catcher.mails).toEqual([]);
  });

  it("is mailed neither to somebody who wants none, nor to somebody who has left", async () => {
    const one = await joined();
    await directory.appUser.update({ where: { id: one.member.userId }, data: { mailChanges: false } });
    await changePlan(one.organiser, planChangeOf(one.sharedBrewId));
    const two = await joined();
    await changePlan(two.organiser, planChangeOf(two.sharedBrewId));
    await directory.membership.update({
      where: { spaceId_userId: { spaceId: two.member.spaceId, userId: two.member.userId } },
      data: { status: "left" },
    });
    expect(await dispatchMail(first())).toBe(0);
    expect(catcher.mails).toEqual([]);
    expect(await listNotices(one.member)).toMatchObject([{ kind: "plan changed", mailedAt: null }]);
    expect(await outboxOf(one.member)).toMatchObject([{ lastError: "not wanted" }]);
  });

  it("is a notice on the site alone where no mail server is set up", async () => {
    vi.stubEnv("SMTP_URL", "");
    const { organiser, member, sharedBrewId } = await joined();
    await changePlan(organiser, planChangeOf(sharedBrewId));
    expect(await listNotices(member)).toHaveLength(1);
    expect(await outboxOf(member)).toEqual([]);
  });

  it("that is undone is told to nobody", async () => {
    const { organiser, member, sharedBrewId } = await joined();
    await expect(changePlan(organiser, planChangeOf(sharedBrewId, { rev: 99 }))).rejects.toThrow();
    expect(await listNotices(member)).toEqual([]);
    expect(await outboxOf(member)).toEqual([]);
  });
});

describe("the question where mail is due", () => {
  const due = async () => {
    const app = await connectAs("gyle_app");
    const { rows } = await app.query<{ id: string }>("SELECT id FROM spaces_with_due('notice by mail') AS id");
    await app.end();
    return rows.map(({ id }) => id);
  };

  it("names the spaces where something is due now, and no other", async () => {
    const { organiser, sharedBrewId } = await joined();
    const { organiser: idle } = await joined();
    expect(await due()).not.toContain(organiser.spaceId);
    await changePlan(organiser, planChangeOf(sharedBrewId));
    expect(await due()).toContain(organiser.spaceId);
    expect(await due()).not.toContain(idle.spaceId);
    await dispatchMail(first());
    expect(await due()).not.toContain(organiser.spaceId);
  });

  it("is one statement where nothing is due, however many spaces there are", async () => {
    await joined();
    await dispatchMail(first());
    const query = vi.spyOn(Client.prototype, "query");
    expect(await dispatchMail(first())).toBe(0);
    expect(query).toHaveBeenCalledTimes(1);
    query.mockRestore();
  });

  it("shows nobody a line of another space, and is nobody's to ask as", async () => {
    const { organiser, sharedBrewId } = await joined();
    await changePlan(organiser, planChangeOf(sharedBrewId));
    const app = await connectAs("gyle_app");
    expect((await app.query("SELECT id FROM outbox")).rows).toEqual([]);
    const owner = await connectAs("owner");
    for (const client of [app, owner]) {
      await expect(client.query("SET ROLE gyle_postman")).rejects.toThrow("permission denied");
      await client.end();
    }
  });
});

describe("a header", () => {
  it("is not begun by a line break in a title or a name", async () => {
    await first().send({
      id: "m1",
      to: { name: 'Eve\r\nBcc: all@club.example, "x" <y@club.example>', address: "eve@club.example" },
      subject: "Spring\r\nBcc: everybody@club.example",
      text: "Hello",
      stopUrl: null,
    });
    const [mail] = catcher.mails;
    expect(mail?.headers.has("bcc")).toBe(false);
    expect(mail?.subject).toBe("Spring Bcc: everybody@club.example");
    const to = mail?.to === undefined || Array.isArray(mail.to) ? undefined : mail.to;
    expect(to?.value.map(({ address }) => address)).toEqual(["eve@club.example"]);
  });
});

describe("the settings for mail", () => {
  it.each(["circle@club.example\r\nBcc: x@y.example", "nobody", "a@b.example, c@d.example"])(
    "refuse the sender %j",
    async (from) => {
      vi.stubEnv("MAIL_FROM", from);
      const { organiser, sharedBrewId } = await joined();
      await expect(changePlan(organiser, planChangeOf(sharedBrewId))).rejects.toThrow("MAIL_FROM");
    },
  );
});
