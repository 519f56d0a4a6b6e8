import { flightOrders, ownEntries, type FlightToServe } from "./prepare-orders";
import { isDifferenceTest, type FlightKind } from "./tasting";

export interface PreparedFlight extends FlightToServe {
  readonly title: string;
  readonly kind: FlightKind;
}

/** What keeps a flight from being poured, in words for its steward; empty when it is ready. */
export function flightObstacles(flight: PreparedFlight, nameOf: (userId: string) => string): readonly string[] {
  return isDifferenceTest(flight.kind) ? testObstacles(flight, nameOf) : scoredObstacles(flight, nameOf);
}

function scoredObstacles(flight: PreparedFlight, nameOf: (userId: string) => string): readonly string[] {
  const orders = flightOrders(flight);
  if (orders.ok) return [];
  switch (orders.reason) {
    case "no-entries":
      return [`${flight.title} has no entries.`];
    case "no-judges":
      return [`${flight.title} has no judges.`];
    case "all-own":
      return [`${nameOf(orders.judgeId)} brewed every entry of ${flight.title} and cannot judge it.`];
  }
}

function testObstacles(flight: PreparedFlight, nameOf: (userId: string) => string): readonly string[] {
  const { title, kind, entries, judgeIds } = flight;
  return [
    ...(entries.length === 2 ? [] : [`${title} has ${String(entries.length)} entries; a ${kind} test takes two.`]),
    ...(judgeIds.length > 0 ? [] : [`${title} has no judges.`]),
    ...judgeIds
      .filter((judgeId) => ownEntries(entries, judgeId).length > 0)
      .map((judgeId) => `${nameOf(judgeId)} brewed one of the two beers of ${title} and cannot tell them apart blind.`),
  ];
}
