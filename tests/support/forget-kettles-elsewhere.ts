import { environment } from "@/lib/server/environment";
import { withClient } from "./open-client";

/** What clubs of other tests have given of their kettles: all tests share one database, and these figures cross clubs. */
export async function forgetKettlesElsewhere(): Promise<void> {
  await withClient(environment.databaseUrl, (client) => client.query("TRUNCATE kettle_contribution"));
}
