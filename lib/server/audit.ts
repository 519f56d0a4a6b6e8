import "server-only";
import type { DirectoryTransaction } from "./db";
import { requestId } from "./operations";

export interface AuditEntry {
  readonly action:
    | "sign-in"
    | "sign-out everywhere"
    | "password"
    | "account"
    | "account closed"
    | "own data"
    | "hand over"
    | "club"
    | "invitation"
    | "join"
    | "publish"
    | "withdraw"
    | "reveal";
  readonly outcome: "ok" | "denied";
  readonly actor?: string | null;
  readonly spaceId?: string;
  readonly target?: string;
  readonly meta?: Readonly<Record<string, string>>;
}

/** Notes who did what to accounts and clubs. The log takes no e-mail address, password or token. */
export async function writeAudit(tx: Pick<DirectoryTransaction, "auditLog">, entry: AuditEntry): Promise<void> {
  const { action, outcome, actor = null, spaceId = null, target = null, meta = {} } = entry;
  await tx.auditLog.create({ data: { action, outcome, actor, spaceId, target, meta, requestId: requestId() } });
}
