import "server-only";
import { NOBODY } from "../nobody";
import { z } from "zod";
import { recordId } from "@/lib/model/written";
import { acrossServers, inSpace } from "../db";
import { MAIL_TOPIC } from "../notices/writes";
import { composeMail } from "./compose";
import type { Mailer } from "./mailer";

/** For so long a message belongs to the sender who took it; after that it is anybody's again. */
const LEASE_S = 300;
const FIRST_WAIT_S = 60;
const LONGEST_WAIT_S = 6 * 3600;
const MOST_ATTEMPTS = 12;

const body = z.strictObject({ noticeId: recordId, userId: recordId });

interface Claimed {
  readonly id: string;
  readonly body: unknown;
  readonly attempts: number;
}

/**
 * Sends what is due in any space, and says how much went out. One statement says where that is; the rest is done in each
 * space by itself. Any number of processes may do so at once: each message
 * is taken by one of them for a while, in a statement that passes over what another one is taking, and no transaction
 * stays open while the mail is on its way.
 */
export async function dispatchMail(mailer: Mailer): Promise<number> {
  const due = await acrossServers(
    (client) => client.$queryRaw<{ readonly id: string }[]>`SELECT id FROM spaces_with_due(${MAIL_TOPIC}) AS id`,
  );
  let sent = 0;
  for (const { id } of due) sent += await dispatchIn(id, mailer);
  return sent;
}

async function dispatchIn(spaceId: string, mailer: Mailer): Promise<number> {
  let sent = 0;
  for (let claimed = await claim(spaceId); claimed !== null; claimed = await claim(spaceId)) {
    if (await deliver(spaceId, claimed, mailer)) sent++;
  }
  return sent;
}

async function claim(spaceId: string): Promise<Claimed | null> {
  const [row] = await inSpace(
    spaceId,
    NOBODY,
    (tx) => tx.$queryRaw<Claimed[]>`
      UPDATE outbox SET attempts = attempts + 1,
                        next_try_at = clock_timestamp() + make_interval(secs => ${LEASE_S}::float8)
      WHERE space_id = ${spaceId}::uuid AND id = (
        SELECT id FROM outbox
        WHERE space_id = ${spaceId}::uuid AND topic = ${MAIL_TOPIC}
          AND done_at IS NULL AND given_up_at IS NULL AND next_try_at <= clock_timestamp()
        ORDER BY next_try_at LIMIT 1
        FOR UPDATE SKIP LOCKED)
      RETURNING id, body, attempts`,
  );
  return row ?? null;
}

/** Whether the message went out. */
async function deliver(spaceId: string, { id, body: told, attempts }: Claimed, mailer: Mailer): Promise<boolean> {
  try {
    const { noticeId, userId } = body.parse(told);
    const mail = await composeMail(id, { spaceId, userId, noticeId });
    if (mail !== null) await mailer.send(mail);
    await finish(spaceId, id, { noticeId, userId, wasSent: mail !== null });
    return mail !== null;
  } catch (error) {
    await putOff(spaceId, id, attempts, error);
    return false;
  }
}

async function finish(
  spaceId: string,
  id: string,
  { noticeId, userId, wasSent }: z.output<typeof body> & { readonly wasSent: boolean },
): Promise<void> {
  const now = new Date();
  // As the one who was told, whose notice it is.
  await inSpace(spaceId, userId, async (tx) => {
    await tx.outbox.update({
      where: { spaceId_id: { spaceId, id } },
      data: { doneAt: now, lastError: wasSent ? null : "not wanted" },
    });
    if (wasSent) await tx.notice.updateMany({ where: { spaceId, id: noticeId }, data: { mailedAt: now } });
  });
}

async function putOff(spaceId: string, id: string, attempts: number, error: unknown): Promise<void> {
  const lastError = (error instanceof Error ? error.message : String(error)).slice(0, 500);
  const waitS = Math.min(LONGEST_WAIT_S, FIRST_WAIT_S * 2 ** (attempts - 1));
  const now = Date.now();
  await inSpace(spaceId, NOBODY, (tx) =>
    tx.outbox.update({
      where: { spaceId_id: { spaceId, id } },
      data: {
        lastError,
        nextTryAt: new Date(now + waitS * 1000),
        givenUpAt: attempts >= MOST_ATTEMPTS ? new Date(now) : null,
      },
    }),
  );
}
