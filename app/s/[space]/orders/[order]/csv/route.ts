import { z } from "zod";
import { csvText } from "@/lib/model/csv";
import { orderRows } from "@/lib/model/order/order-rows";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { findOrder } from "@/lib/server/orders/reads";
import { optionalViewer, proveMember } from "@/lib/server/session";

interface CsvContext {
  readonly params: Promise<{ readonly space: string; readonly order: string }>;
}

const query = z.strictObject({});

/** The order as a table: a line for each item and member. A spreadsheet runs nothing of what members wrote. */
export const GET = apiRoute(async (request: Request, { params }: CsvContext) => {
  query.parse(Object.fromEntries(new URL(request.url).searchParams));
  const { space, order: id } = await params;
  const viewer = await optionalViewer();
  if (viewer === null) throw new AppError("UNAUTHENTICATED", "Sign in first.");
  const member = await proveMember(viewer, space);
  const order = member === null ? null : await findOrder(member, id);
  if (order === null) throw new AppError("NOT_FOUND", "There is no such order here.");
  return new Response(csvText(orderRows(order), { byteOrderMark: true }), {
    headers: {
      "Content-Type": "text/csv; charset=utf-8",
      "Content-Disposition": `attachment; filename="order-${order.id.slice(0, 8)}.csv"`,
      "Cache-Control": "no-store",
      "X-Content-Type-Options": "nosniff",
    },
  });
});
