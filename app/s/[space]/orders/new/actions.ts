"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import type { ActionResult } from "@/lib/model/action-result";
import { newOrder } from "@/lib/model/order/order-input";
import { formAction } from "@/lib/server/action";
import { createOrder } from "@/lib/server/orders/writes";
import { requireMember } from "@/lib/server/session";

const orderForm = z
  .strictObject({
    title: z.string(),
    sharedBrewId: z.string(),
    currency: z.string(),
    closesAt: z.string(),
    note: z.string(),
  })
  .transform((form): unknown => ({
    ...form,
    sharedBrewId: form.sharedBrewId === "" ? null : form.sharedBrewId,
    closesAt: form.closesAt === "" ? null : form.closesAt,
  }))
  .pipe(newOrder);

export async function createOrderAction(
  space: string,
  previous: ActionResult<void> | null,
  form: FormData,
): Promise<ActionResult<void>> {
  const run = formAction(orderForm, async (order): Promise<void> => {
    const { id } = await createOrder(await requireMember(space), order);
    redirect(`/s/${space}/orders/${id}`);
  });
  return run(previous, form);
}
