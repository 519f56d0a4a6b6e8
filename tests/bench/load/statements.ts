import { Client } from "pg";
import type { Recording, Statement } from "./recorder";

const ROUNDS = 15;
/** What differs by less is noise, whatever its ratio. */
const LEAST_MS = 1;

export interface Growth {
  /** All statements of a request together, the quickest of many times each, ms: what others do on the machine falls away. */
  readonly small: number;
  readonly large: number;
  /** Those that take long in the large database and not in the small one. */
  readonly grown: readonly { readonly text: string; readonly small: number; readonly large: number }[];
}

/** The statements of a page one by one in both databases, in turn: what grows, and where. */
export async function growthOf(
  recording: Recording,
  urls: { readonly small: string; readonly large: string },
): Promise<Growth> {
  const clients = { small: await open(urls.small), large: await open(urls.large) };
  const times = { small: new Map<Statement, number[]>(), large: new Map<Statement, number[]>() };
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const place of ["small", "large"] as const) {
      for (const statement of recording.flat()) {
        const begun = performance.now();
        await clients[place].query(statement.text, [...statement.values]);
        const kept = times[place].get(statement) ?? [];
        times[place].set(statement, [...kept, performance.now() - begun]);
      }
    }
  }
  await Promise.all([clients.small.end(), clients.large.end()]);
  const each = recording.flat().map((statement) => ({
    text: statement.text.replaceAll(/\s+/g, " ").slice(0, 160),
    small: quickest(times.small.get(statement) ?? []),
    large: quickest(times.large.get(statement) ?? []),
  }));
  const sum = (place: "small" | "large"): number => each.reduce((total, one) => total + one[place], 0);
  const grown = each.filter(({ small, large }) => large - small > LEAST_MS && large > 1.3 * small);
  return { small: sum("small"), large: sum("large"), grown };
}

async function open(connectionString: string): Promise<Client> {
  const client = new Client({ connectionString, options: "-c role=gyle_app" });
  await client.connect();
  return client;
}

const quickest = (values: readonly number[]): number => Math.min(...values);
