import "server-only";
import { planDifferences } from "@/lib/model/plan-difference";
import { noticeInWords, noticePath, type Notice } from "@/lib/model/notice";
import { directory, inSpace } from "../db";
import { environment } from "../environment";
import { findNotice } from "../notices/reads";
import { PLAN_COLUMNS, toPlanVersion } from "../shared-brews/from-row";
import type { Mail } from "./mailer";

interface Told {
  readonly spaceId: string;
  readonly userId: string;
  readonly noticeId: string;
}

/** The mail for a notice, as things are when it is sent; null for somebody who is not to be written to. */
export async function composeMail(id: string, told: Told): Promise<Mail | null> {
  const [reader, notice] = await Promise.all([findReader(told), findNotice(told, told.noticeId)]);
  if (reader === null || notice === null) return null;
  const { space, user } = reader;
  const { appOrigin } = environment;
  const stopUrl = appOrigin === null ? null : `${appOrigin}/account#mail`;
  const page = `/s/${space.slug}${noticePath(notice)}`;
  const subject = noticeInWords(notice);
  const lines = [
    `${subject}.`,
    ...(notice.payload.note === "" ? [] : ["", notice.payload.note]),
    "",
    ...(await changes(told, notice)).map((words) => `- ${words}`),
    ...(appOrigin === null ? [] : ["", `${appOrigin}${page}`]),
    "",
    "--",
    `You get this because you take part in a ${takesPartIn(notice)} of ${space.name}.`,
    "To get no more mails about changes and reminders, choose so under your account" +
      (stopUrl === null ? "." : `: ${stopUrl}`),
  ];
  return {
    id,
    to: { name: user.displayName, address: user.emailNorm },
    subject,
    text: `${lines.join("\n")}\n`,
    stopUrl,
  };
}

function takesPartIn({ payload }: Notice): string {
  if ("brewId" in payload) return "brew";
  return "tastingId" in payload ? "tasting" : "shared brew";
}

async function findReader({ spaceId, userId }: Told) {
  return directory.membership.findFirst({
    where: {
      spaceId,
      userId,
      status: "active",
      user: { disabledAt: null, mailChanges: true },
      space: { deletedAt: null },
    },
    select: { user: { select: { displayName: true, emailNorm: true } }, space: { select: { name: true, slug: true } } },
  });
}

async function changes({ spaceId, userId }: Told, { kind, payload }: Notice): Promise<readonly string[]> {
  if (kind !== "plan changed") return [];
  const { sharedBrewId, version } = payload;
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.sharedBrewPlan.findMany({
      where: { spaceId, sharedBrewId, version: { in: [version - 1, version] } },
      select: PLAN_COLUMNS,
      orderBy: { version: "asc" },
    }),
  );
  const [before, after] = rows.map((row) => toPlanVersion(row, () => ""));
  return before === undefined || after === undefined ? [] : planDifferences(before, after);
}
