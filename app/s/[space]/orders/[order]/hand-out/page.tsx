import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { requireMember } from "@/lib/server/session";
import { Caution } from "@/lib/ui/caution";
import { readOrder } from "../read-order";
import { handOutAction, stockShareAction } from "./actions";
import { weightLists } from "./weight-lists";
import { WeightListTable } from "./weight-list-table";

interface HandOutPageProps {
  readonly params: Promise<{ readonly space: string; readonly order: string }>;
}

export async function generateMetadata({ params }: HandOutPageProps): Promise<Metadata> {
  const { space, order } = await params;
  return { title: `Weight list, ${(await readOrder(space, order)).title}` };
}

export default async function HandOutPage({ params }: HandOutPageProps) {
  const { space, order: id } = await params;
  const [member, order] = [await requireMember(space), await readOrder(space, id)];
  if (order.state === "open" || order.state === "cancelled") notFound();
  const mayWeigh = order.mayOrganise && order.state === "received";
  return (
    <>
      <h1>Weight list</h1>
      <p className="mb-4">
        Of the order <Link href={`/s/${space}/orders/${id}`}>{order.title}</Link>, which is {order.state}.
        {order.state === "locked" || order.state === "placed"
          ? " Weights are noted once everything that came is noted."
          : ""}
      </p>
      <Caution>
        Lift sacks with a straight back and bent knees, or two at a time. Weigh grain where the dust can draw off: it
        harms the lungs, and a cloud of it burns.
      </Caution>
      {order.items.some(({ kind }) => kind === "acid") ? (
        <Caution>
          Acid: gloves and eye protection; pour slowly over a sink, into a bottle made for it, close it and write on it
          what it is and how strong. Water is to hand for rinsing. Acid goes into water, never water into acid.
        </Caution>
      ) : null}
      {weightLists(order).map((list) => (
        <WeightListTable
          key={list.userId}
          list={list}
          preferences={member.preferences}
          action={mayWeigh ? handOutAction.bind(null, space, id) : null}
          stockAction={list.userId === member.userId ? stockShareAction.bind(null, space, id) : null}
        />
      ))}
    </>
  );
}
