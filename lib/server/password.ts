import "server-only";
import { hash, verify } from "@node-rs/argon2";

/** Argon2id (the package's default) at 19 MiB, 2 passes, 1 lane: OWASP Password Storage Cheat Sheet. */
const COST = { memoryCost: 19456, timeCost: 2, parallelism: 1 } as const;

export function hashPassword(password: string): Promise<string> {
  return hash(password, COST);
}

/**
 * Whether the password belongs to the hash. Without a hash it does the same work and says no, so that the answer for
 * an unknown address takes as long as the one for a wrong password.
 */
export async function passwordMatches(stored: string | null, password: string): Promise<boolean> {
  const matches = await verify(stored ?? (await decoyHash()), password);
  return stored !== null && matches;
}

let decoy: Promise<string> | undefined;

function decoyHash(): Promise<string> {
  decoy ??= hashPassword("nobody has this password");
  return decoy;
}
