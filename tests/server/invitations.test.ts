import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { newInvitation } from "@/lib/model/invitation";
import { directory } from "@/lib/server/db";
import { acceptInvitation } from "@/lib/server/invitations/accept";
import { listInvitations } from "@/lib/server/invitations/reads";
import { createInvitation, revokeInvitation } from "@/lib/server/invitations/writes";
import { proveMember } from "@/lib/server/session";
import { listSpaces } from "@/lib/server/spaces/reads";
import { tokenHash } from "@/lib/server/tokens";
import { newAccount, newClub, newViewer, TEST_PASSWORD } from "../support/club";

const forAnybody = newInvitation.parse({ role: "member", email: null, maxUses: 1, days: 7 });
const newcomer = (token: string, email = `${randomUUID()}@example.org`) => ({
  viewer: null,
  token,
  email,
  displayName: "Newcomer",
  password: TEST_PASSWORD,
  ip: randomUUID(),
});

describe("invitations", () => {
  it("make an account with a bench and the membership of a newcomer", async () => {
    const { organiser } = await newClub();
    const { token } = await createInvitation(organiser, forAnybody);
    const email = `${randomUUID()}@example.org`;
    expect(await acceptInvitation(newcomer(token, email))).toEqual({ spaceSlug: organiser.spaceSlug });
    const user = await directory.appUser.findUniqueOrThrow({
      where: { emailNorm: email },
      select: { memberships: { select: { role: true, space: { select: { kind: true } } } } },
    });
    expect(user.memberships).toHaveLength(2);
    expect(user.memberships).toEqual(
      expect.arrayContaining([
        { role: "organiser", space: { kind: "person" } },
        { role: "member", space: { kind: "club" } },
      ]),
    );
  });

  it("let somebody with an account join, once", async () => {
    const { organiser } = await newClub();
    const { token } = await createInvitation(organiser, { ...forAnybody, maxUses: 5 });
    const viewer = await newViewer("Joiner");
    await acceptInvitation({ viewer, token });
    expect((await listSpaces(viewer)).map((space) => space.slug)).toContain(organiser.spaceSlug);
    await expect(acceptInvitation({ viewer, token })).rejects.toThrow("You belong to this club already.");
    const [invitation] = await listInvitations(organiser);
    expect(invitation).toMatchObject({ uses: 1, maxUses: 5 }); // the refused second time was not counted
  });

  it("with one use let one of fifty simultaneous newcomers in, and leave nothing of the others", async () => {
    const { organiser } = await newClub();
    const { token } = await createInvitation(organiser, forAnybody);
    const newcomers = Array.from({ length: 50 }, () => newcomer(token));
    const outcomes = await Promise.allSettled(newcomers.map((one) => acceptInvitation(one)));
    expect(outcomes.filter((outcome) => outcome.status === "fulfilled")).toHaveLength(1);
    expect(await directory.appUser.count({ where: { emailNorm: { in: newcomers.map((one) => one.email) } } })).toBe(1);
    expect(await directory.membership.count({ where: { spaceId: organiser.spaceId, role: "member" } })).toBe(1);
  });

  it("are refused when they are over, revoked, used up, forged or for somebody else", async () => {
    const { organiser } = await newClub();
    const over = await createInvitation(organiser, forAnybody);
    await directory.invite.updateMany({
      where: { tokenHash: tokenHash(over.token) },
      data: { expiresAt: new Date(Date.now() - 1000) },
    });
    const revoked = await createInvitation(organiser, forAnybody);
    const row = await directory.invite.findUniqueOrThrow({ where: { tokenHash: tokenHash(revoked.token) } });
    await revokeInvitation(organiser, row.id);
    const used = await createInvitation(organiser, forAnybody);
    await acceptInvitation(newcomer(used.token));
    const personal = await createInvitation(organiser, { ...forAnybody, email: "else@example.org" });

    const viewer = await newViewer("Joiner");
    for (const token of [over.token, revoked.token, used.token, "x".repeat(43)]) {
      const message = "This invitation is not valid any more. Ask the club for a new one.";
      await expect(acceptInvitation(newcomer(token))).rejects.toThrow(message);
      await expect(acceptInvitation({ viewer, token })).rejects.toThrow(message);
    }
    await expect(acceptInvitation({ viewer, token: personal.token })).rejects.toThrow(
      "This invitation is for another e-mail address.",
    );
    expect(await proveMember(viewer, organiser.spaceSlug)).toBeNull();
  });

  it("ask for the password of an address that has an account", async () => {
    const { organiser } = await newClub();
    const { token } = await createInvitation(organiser, { ...forAnybody, maxUses: 5 });
    const { email, userId } = await newAccount("Ada");
    await expect(acceptInvitation({ ...newcomer(token, email), password: "not the password" })).rejects.toThrow(
      "This address and password do not go together.",
    );
    await acceptInvitation(newcomer(token, email));
    expect(await directory.membership.count({ where: { spaceId: organiser.spaceId, userId } })).toBe(1);
  });

  it("never make an organiser, not even past the form", async () => {
    const { organiser } = await newClub();
    const forged = { ...forAnybody, role: "organiser" as "member" };
    await expect(createInvitation(organiser, forged)).rejects.toThrow();
    expect(await listInvitations(organiser)).toEqual([]);
  });

  it("are made, seen and revoked by organisers only", async () => {
    const { organiser, member } = await newClub("member");
    await createInvitation(organiser, forAnybody);
    const [invitation] = await listInvitations(organiser);
    const refusal = "Only an organiser does this.";
    await expect(createInvitation(member, forAnybody)).rejects.toThrow(refusal);
    await expect(listInvitations(member)).rejects.toThrow(refusal);
    await expect(revokeInvitation(member, invitation?.id ?? "")).rejects.toThrow(refusal);
  });

  it("keep the token out of the database", async () => {
    const { organiser } = await newClub();
    const { token } = await createInvitation(organiser, forAnybody);
    const row = await directory.invite.findUniqueOrThrow({ where: { tokenHash: tokenHash(token) } });
    expect(JSON.stringify(row)).not.toContain(token);
  });
});
