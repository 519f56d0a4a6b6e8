import type { OrderDifference } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { Notice } from "@/lib/ui/notice";
import { OrderAmount } from "@/lib/ui/order/order-amount";

interface DifferenceListProps {
  readonly differences: readonly OrderDifference[];
  readonly preferences: Preferences;
}

/** What the sheets ask for now, other than at the lock. The order stays as it is. */
export function DifferenceList({ differences, preferences }: DifferenceListProps) {
  if (differences.length === 0) return null;
  return (
    <div className="mt-4">
      <Notice kind="attention">
        <h2>Changed since the lock</h2>
        <p>The order stays as it was locked. To take this in, open it again and lock it anew.</p>
        <ul className="mt-2 list-disc ps-5">
          {differences.map(({ userId, userName, thing, atLock, now }) => (
            <li key={`${userId} ${thing.kind} ${thing.name}`}>
              {userName} needs{" "}
              <OrderAmount thing={thing} amount={Math.abs(now - atLock)} preferences={preferences} exact />{" "}
              {now > atLock ? "more" : "less"} of {thing.name}.
            </li>
          ))}
        </ul>
      </Notice>
    </div>
  );
}
