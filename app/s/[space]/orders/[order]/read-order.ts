import "server-only";
import { notFound } from "next/navigation";
import { cache } from "react";
import { findOrder } from "@/lib/server/orders/reads";
import { requireMember } from "@/lib/server/session";

/** The order of a page, read once a request; "not found" where the reader has none. */
export const readOrder = cache(
  async (space: string, id: string) => (await findOrder(await requireMember(space), id)) ?? notFound(),
);
