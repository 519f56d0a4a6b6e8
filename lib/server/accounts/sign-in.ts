import "server-only";
import { emailAddress } from "@/lib/model/credentials";
import { writeAudit } from "../audit";
import { directory } from "../db";
import { passwordMatches } from "../password";
import { giveTurnBack, takeTurn, type Limit } from "../throttle";
import { sha256 } from "../tokens";

const PER_ACCOUNT: Limit = { burst: 10, intervalS: 30 };
const PER_ADDRESS: Limit = { burst: 100, intervalS: 3 };

export interface SignInAttempt {
  readonly email: string;
  readonly password: string;
  readonly ip: string;
}

export type SignInOutcome =
  | { readonly ok: true; readonly userId: string; readonly displayName: string }
  | { readonly ok: false; readonly reason: "refused" | "throttled" };

/**
 * Checks an address and a password. An unknown address, a disabled account and a wrong password get the same answer
 * after the same work, and count against the same limits.
 */
export async function checkSignIn({ email, password, ip }: SignInAttempt): Promise<SignInOutcome> {
  const address = emailAddress.safeParse(email).data ?? email.trim().toLowerCase();
  const keys = [
    [`login:ip:${ip}`, PER_ADDRESS],
    [`login:acct:${Buffer.from(sha256(address)).toString("hex")}`, PER_ACCOUNT],
  ] as const;
  for (const [key, limit] of keys) {
    if (await takeTurn(key, limit)) continue;
    await writeAudit(directory, { action: "sign-in", outcome: "denied", meta: { reason: "throttled" } });
    return { ok: false, reason: "throttled" };
  }

  const user = await directory.appUser.findUnique({
    where: { emailNorm: address },
    select: { id: true, displayName: true, passwordHash: true, disabledAt: true },
  });
  const usable = user !== null && user.disabledAt === null ? user : null;
  if (!(await passwordMatches(usable?.passwordHash ?? null, password)) || usable === null) {
    await writeAudit(directory, { action: "sign-in", outcome: "denied", actor: user?.id ?? null });
    return { ok: false, reason: "refused" };
  }
  for (const [key, limit] of keys) await giveTurnBack(key, limit);
  await writeAudit(directory, { action: "sign-in", outcome: "ok", actor: usable.id });
  return { ok: true, userId: usable.id, displayName: usable.displayName };
}
