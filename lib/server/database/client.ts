import "server-only";
import { PrismaPg } from "@prisma/adapter-pg";
import { PrismaClient, type Prisma } from "../../../prisma/generated/client";
import { oneAtATime } from "../one-at-a-time";
import { watchQuery } from "../watch-queries";
import { openPool, type PoolOrder } from "./pool";

type DirectoryModel =
  | "appUser"
  | "authAccount"
  | "authSession"
  | "oneTimeToken"
  | "rateLimit"
  | "space"
  | "membership"
  | "invite"
  | "calendarToken"
  | "sensorToken"
  | "pushSubscription"
  | "pushKey"
  | "auditLog";

type RawQuery = "$queryRaw" | "$executeRaw";
type Models = Exclude<keyof Prisma.TransactionClient, `$${string}` | symbol>;

/** The directory within a transaction. */
export type DirectoryTransaction = Pick<Prisma.TransactionClient, DirectoryModel | RawQuery>;

/** People, sessions, spaces and memberships: what no space owns. */
export interface Directory extends DirectoryTransaction {
  readonly $transaction: <R>(work: (tx: DirectoryTransaction) => Promise<R>) => Promise<R>;
  readonly $disconnect: () => Promise<void>;
}

/** The content of one space, within a transaction. */
export type SpaceTransaction = Pick<Prisma.TransactionClient, Exclude<Models, DirectoryModel> | RawQuery>;

export type DatabaseClient = PrismaClient;

const TRANSACTION_LIMITS = { maxWait: 5000, timeout: 10_000 } as const;

async function openAdapter(order: PoolOrder) {
  const adapter = await new PrismaPg(openPool(order), { disposeExternalPool: true }).connect();
  const start = adapter.startTransaction.bind(adapter);
  adapter.startTransaction = async (level) => oneAtATime(await start(level));
  return adapter;
}

/** A client with connections of its own. They are made at the first query: a build loads this without a database. */
export function openClient(order: () => PoolOrder): DatabaseClient {
  const client = new PrismaClient({
    log: [{ emit: "event", level: "query" }],
    adapter: { provider: "postgres", adapterName: "@prisma/adapter-pg", connect: () => openAdapter(order()) },
    transactionOptions: TRANSACTION_LIMITS,
  });
  client.$on("query", watchQuery);
  return client;
}
