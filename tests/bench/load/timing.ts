import type { HttpClient } from "./http";
import type { Target } from "./targets";

export interface Place {
  readonly ports: readonly number[];
  /** The number of the recording, where the floor is asked. */
  readonly recording: number | null;
}

/** Times in order of size, ms. */
export type Times = readonly number[];

export const percentile = (times: Times, share: number): number =>
  times[Math.min(times.length - 1, Math.floor(share * times.length))] ?? NaN;

const WARM_UPS = 4;

async function once(http: HttpClient, target: Target, place: Place, turn: number): Promise<number> {
  const port = place.ports[turn % place.ports.length] ?? 0;
  if (place.recording !== null) {
    const answered = await http.ask(port, { path: `/${String(place.recording)}` });
    if (answered.status !== 200) throw new Error(`floor of ${target.name}: ${answered.body.slice(0, 300)}`);
    return answered.ms;
  }
  const answered = await http.ask(port, target.next());
  if (!target.isDone(answered)) {
    throw new Error(`${target.name} answered ${String(answered.status)}: ${answered.body.slice(0, 300)}`);
  }
  return answered.ms;
}

/** Asks each place in turn, one request at a time, so that a slow moment of the machine falls on all of them. */
export async function takeTurns(a: {
  readonly http: HttpClient;
  readonly target: Target;
  readonly places: readonly Place[];
  readonly rounds: number;
}): Promise<readonly Times[]> {
  const times = a.places.map((): number[] => []);
  const warmUp = Math.ceil(a.rounds / 5);
  for (let round = 0; round < a.rounds + warmUp; round += 1) {
    for (const [at, place] of a.places.entries()) {
      const ms = await once(a.http, a.target, place, round);
      if (round >= warmUp) times[at]?.push(ms);
    }
  }
  return times.map((each) => each.sort((x, y) => x - y));
}

/** Requests a second, of several that each make the next request when they have their answer. */
export async function throughput(a: {
  readonly http: HttpClient;
  readonly target: Target;
  readonly place: Place;
  readonly atOnce: number;
  readonly seconds: number;
}): Promise<number> {
  // A process that has never made the page would be measured at compiling.
  for (let turn = 0; turn < WARM_UPS * a.place.ports.length; turn += 1) await once(a.http, a.target, a.place, turn);
  const begun = performance.now();
  const until = begun + a.seconds * 1000;
  let done = 0;
  await Promise.all(
    Array.from({ length: a.atOnce }, async (_, who) => {
      for (let turn = who; performance.now() < until; turn += a.atOnce + 1) {
        await once(a.http, a.target, a.place, turn);
        done += 1;
      }
    }),
  );
  return (done * 1000) / (performance.now() - begun);
}
