import "server-only";
import { isPublicAddress } from "@/lib/model/publication";
import { readPublic } from "../db";

/** Whether something was published at an address and taken back; not where there never was anything. */
export async function isWithdrawn(address: string): Promise<boolean> {
  if (!isPublicAddress(address)) return false;
  const found = await readPublic(async (tx) => {
    const where = { address, withdrawnAt: { not: null } };
    return (await tx.publicRecipe.count({ where })) + (await tx.publicResult.count({ where })) > 0 ? address : null;
  });
  return found !== null;
}
