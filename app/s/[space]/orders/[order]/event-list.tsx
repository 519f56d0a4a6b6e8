import type { OrderEvent } from "@/lib/model/order/order";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { Day } from "@/lib/ui/day";

/** Who did what to the order, the latest first. */
export function EventList({ events }: { readonly events: readonly OrderEvent[] }) {
  return (
    <section aria-labelledby="history" className="no-print mt-10">
      <h2 id="history" className="mb-2">
        History
      </h2>
      <ul className="list-ruled">
        {events.map(({ id, at, actorName, text }) => (
          <li key={id} className="py-2">
            <Day at={at} /> <ClockTime at={at} />: {actorName} {text}.
          </li>
        ))}
      </ul>
    </section>
  );
}
