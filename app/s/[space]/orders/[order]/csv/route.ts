import { z } from "zod";
import { orderRows, sheetNeedRows } from "@/lib/model/order/order-rows";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { csvResponse } from "@/lib/server/csv-response";
import { findOrder } from "@/lib/server/orders/reads";
import { optionalViewer, proveMember } from "@/lib/server/session";

interface CsvContext {
  readonly params: Promise<{ readonly space: string; readonly order: string }>;
}

const query = z.strictObject({ of: z.exactOptional(z.literal("sheets")) });

/** The order as a table: a line for each item and member, or `of` the sheets a line for each that needs some of it. A spreadsheet runs nothing of what members wrote. */
export const GET = apiRoute(async (request: Request, { params }: CsvContext) => {
  const { of } = query.parse(Object.fromEntries(new URL(request.url).searchParams));
  const { space, order: id } = await params;
  const viewer = await optionalViewer();
  if (viewer === null) throw new AppError("UNAUTHENTICATED", "Sign in first.");
  const member = await proveMember(viewer, space);
  const order = member === null ? null : await findOrder(member, id);
  if (order === null) throw new AppError("NOT_FOUND", "There is no such order here.");
  const name = `order-${order.id.slice(0, 8)}`;
  return of === "sheets"
    ? csvResponse(sheetNeedRows(order), `${name}-sheets.csv`)
    : csvResponse(orderRows(order), `${name}.csv`);
});
