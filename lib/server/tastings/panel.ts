import "server-only";
import type { FlightPanel } from "@/lib/model/tasting/prepare";
import { AppError } from "../app-error";
import { directory } from "../db";
import type { Member } from "../session";
import { inDraft } from "./draft";
import { requireFlight } from "./flights";

/** Says who judges a flight and who pours it. The steward knows all, so judges nothing; nobody judges what they pour. */
export async function setPanel(member: Member, input: FlightPanel): Promise<void> {
  const { spaceId, userId } = member;
  const { id: tastingId, flightNo } = input;
  const [judges, pourers] = [new Set(input.judges), new Set(input.pourers)];
  if (judges.has(userId))
    throw new AppError("INVALID", "Judges: the steward knows what is in the glasses and does not judge.");
  const both = [...judges].find((each) => pourers.has(each));
  if (both !== undefined) throw new AppError("INVALID", "Pourers: nobody judges a flight and pours it as well.");
  await requireMembers(spaceId, [...judges, ...pourers]);
  const within = { spaceId, tastingId, flightNo };
  await inDraft(member, input, async (tx) => {
    await requireFlight(tx, within);
    await tx.tastingPanel.deleteMany({ where: within });
    await tx.tastingPanel.createMany({
      data: [
        ...[...judges].map((each) => ({ ...within, userId: each, part: "judge" })),
        ...[...pourers].map((each) => ({ ...within, userId: each, part: "pourer" })),
      ],
    });
  });
}

async function requireMembers(spaceId: string, userIds: readonly string[]): Promise<void> {
  const found = await directory.membership.count({
    where: { spaceId, userId: { in: [...userIds] }, status: "active" },
  });
  if (found !== userIds.length) throw new AppError("NOT_FOUND", "There is no such member here.");
}
