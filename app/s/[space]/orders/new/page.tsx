import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { requireMember } from "@/lib/server/session";
import { listSharedBrews } from "@/lib/server/shared-brews/reads";
import { createOrderAction } from "./actions";
import { OrderForm } from "./order-form";

export const metadata: Metadata = { title: "Open an order" };

interface NewOrderPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<{ readonly sharedBrew?: string | string[] }>;
}

export default async function NewOrderPage({ params, searchParams }: NewOrderPageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "organise")) notFound();
  const shared = await listSharedBrews(member);
  const asked = (await searchParams).sharedBrew;
  const open = shared.filter(({ id, state }) => state === "planned" || state === "open" || id === asked);
  const choices = [
    { value: "", text: "No shared brew: only what members want" },
    ...open.map(({ id, title }) => ({ value: id, text: title })),
  ];
  const chosen = open.find(({ id }) => id === asked)?.id ?? "";
  return (
    <div className="max-w-xl">
      <h1>Open an order</h1>
      <p className="my-4 text-muted">
        An order of a shared brew takes its amounts from everybody’s sheets, less what each has on hand. Members add
        what they want beside it until you lock it.
      </p>
      <OrderForm choices={choices} chosen={chosen} action={createOrderAction.bind(null, member.spaceSlug)} />
    </div>
  );
}
