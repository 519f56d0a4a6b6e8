import type { ServingBalance, Spread } from "@/lib/calc/judging";
import type { PreparedFlight } from "@/lib/server/tastings/preparation";
import { ExplainedCall } from "@/lib/ui/explained-call";

interface OrdersSectionProps {
  readonly flight: PreparedFlight;
}

/** Who is kept from what, and how even the orders of serving are. */
export function OrdersSection({ flight }: OrdersSectionProps) {
  const { orders, judges, kind } = flight;
  const conflicted = judges.filter(({ own }) => own.length > 0);
  return (
    <section aria-labelledby="orders" className="mt-6">
      <h2 id="orders" className="mb-2">
        Panel and orders
      </h2>
      <p>Judges: {judges.length === 0 ? "nobody yet" : judges.map(({ name }) => name).join(", ")}.</p>
      {conflicted.map(({ userId, name, own }) => (
        <p key={userId}>
          {name} brewed {own.join(" and ")}
          {kind === "scored"
            ? ", so is served the others only; the rest get as few, so that the number tells nothing."
            : "."}
        </p>
      ))}
      {orders?.ok === true ? (
        <>
          <BalanceList each={orders.each} balance={orders.balance} />
          <ExplainedCall id="judging/servingOrders" args={[orders.asked]} />
        </>
      ) : null}
      {flight.obstacles.map((obstacle) => (
        <p key={obstacle}>{obstacle}</p>
      ))}
      {kind === "scored" ? null : (
        <p className="text-muted">
          The glasses are numbered when the tasting is opened: all orders equally often, dealt out by chance.
        </p>
      )}
    </section>
  );
}

function BalanceList({ each, balance }: { readonly each: number; readonly balance: ServingBalance }) {
  const { tastings, places, successions, together, connected } = balance;
  return (
    <>
      <p className="mt-2">Each judge tastes {each}.</p>
      <ul className="mt-1 list-disc ps-5">
        <li>An entry is tasted by {range(tastings, "judge", "judges")}.</li>
        <li>It stands in the same place {range(places, "time", "times")}.</li>
        <li>It comes straight after a given other one {range(successions, "time", "times")}.</li>
        <li>Two entries meet in one judge {range(together, "time", "times")}.</li>
        <li>
          {connected
            ? "All entries can be compared through judges that they share."
            : "Some entries share no judge, so they cannot be compared: raise the limit or add judges."}
        </li>
      </ul>
    </>
  );
}

function range({ fewest, most }: Spread, one: string, more: string): string {
  const counted = `${String(most)} ${most === 1 ? one : more}`;
  return fewest === most ? counted : `${String(fewest)} to ${counted}`;
}
