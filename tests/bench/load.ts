/**
 * The ten most used pages and three writes of a club among many: against a bare handler that asks the database for the
 * same, and against the same club alone in a small database, turn by turn in one run; then how many a second one and two
 * processes answer; then the memory of a process over time. All of it comes from the environment (`npm run load`).
 */
import { once } from "node:events";
import { fork } from "node:child_process";
import { z } from "zod";
import { directory } from "@/lib/server/db";
import { openHttp, type HttpClient } from "./load/http";
import { freshIn, record, type Recording } from "./load/recorder";
import { soak } from "./load/soak";
import { growthOf } from "./load/statements";
import { openSubject } from "./load/subject";
import { targetsOf, type Target } from "./load/targets";
import { percentile, takeTurns, throughput, type Place, type Times } from "./load/timing";

const setting = z
  .object({
    small: z.object({ superuserUrl: z.string(), url: z.string(), port: z.number() }),
    large: z.object({ superuserUrl: z.string(), url: z.string(), ports: z.array(z.number()) }),
    floorPort: z.number(),
    origin: z.string(),
    slug: z.string(),
    rounds: z.number(),
    seconds: z.number(),
    soak: z.number(),
    probe: z.object({ pid: z.number(), file: z.string() }),
  })
  .parse(JSON.parse(process.env["GYLEBOOK_LOAD"] ?? "{}"));

const AT_ONCE = 8;

interface Recorded {
  readonly connections: Recording;
  readonly fresh: readonly string[];
}

/** Records every target twice, after it was asked for once. */
async function recordAll(http: HttpClient, targets: readonly Target[]): Promise<readonly Recorded[]> {
  const [port = 0] = setting.large.ports;
  const recordings: Recorded[] = [];
  for (const target of targets) {
    const asked = async (): Promise<void> => {
      const answered = await http.ask(port, target.next());
      if (!target.isDone(answered))
        throw new Error(`${target.name} answered ${String(answered.status)}: ${answered.body}`);
    };
    await asked();
    const first = await record(setting.large.superuserUrl, asked);
    const second = await record(setting.large.superuserUrl, asked);
    const fresh = target.isWrite ? freshIn(second, first) : [];
    const count = second.reduce((sum, { length }) => sum + length, 0);
    console.log(`  ${target.name}: ${String(count)} statements on ${String(second.length)} connections`);
    recordings.push({ connections: second, fresh });
  }
  return recordings;
}

async function startFloor(recordings: readonly Recorded[]): Promise<{ readonly stop: () => void }> {
  const floor = fork("tests/bench/load-floor.ts", { execArgv: ["--conditions=react-server", "--import", "tsx"] });
  const listening = once(floor, "message");
  floor.send({ database: setting.large.url, port: setting.floorPort, recordings });
  await listening;
  return { stop: () => floor.kill() };
}

const ms = (value: number): string => value.toFixed(value < 10 ? 1 : 0);
const threeOf = (times: Times): string => [0.5, 0.95, 0.99].map((share) => ms(percentile(times, share))).join(" / ");
const ratio = (a: Times, b: Times, share = 0.5): string => (percentile(a, share) / percentile(b, share)).toFixed(2);

async function measureTimes(http: HttpClient, targets: readonly Target[]): Promise<void> {
  console.log(`\n| page or write | bare handler, ms | large, ms | × bare | small, ms | growth p50 | growth p95 |`);
  console.log("| --- | --- | --- | --- | --- | --- | --- |");
  for (const [at, target] of targets.entries()) {
    const places: readonly Place[] = [
      { ports: [setting.floorPort], recording: at },
      { ports: setting.large.ports.slice(0, 1), recording: null },
      { ports: [setting.small.port], recording: null },
    ];
    const [bare = [], large = [], small = []] = await takeTurns({ http, target, places, rounds: setting.rounds });
    const cells = [target.name, threeOf(bare), threeOf(large), ratio(large, bare), threeOf(small)];
    console.log(`| ${[...cells, ratio(large, small), ratio(large, small, 0.95)].join(" | ")} |`);
  }
}

/** The same without the app: what of a page's queries grows with the other clubs. */
async function measureGrowth(targets: readonly Target[], recordings: readonly Recorded[]): Promise<void> {
  console.log("\n| page, its queries alone | small, ms | large, ms | growth |\n| --- | --- | --- | --- |");
  const grown: string[] = [];
  for (const [at, { name, isWrite }] of targets.entries()) {
    if (isWrite) continue;
    const urls = { small: setting.small.url, large: setting.large.url };
    const growth = await growthOf(recordings[at]?.connections ?? [], urls);
    console.log(
      `| ${[name, ms(growth.small), ms(growth.large), (growth.large / growth.small).toFixed(2)].join(" | ")} |`,
    );
    grown.push(...growth.grown.map((one) => `${name}: ${ms(one.small)} to ${ms(one.large)} ms: ${one.text}`));
  }
  console.log(grown.length === 0 ? "No statement has grown." : `\nStatements that have grown:\n${grown.join("\n")}`);
}

async function measureThroughput(http: HttpClient, targets: readonly Target[]): Promise<void> {
  console.log(`\n| page or write | bare handler, /s | one process, /s | of the bare | two processes, /s | of one |`);
  console.log("| --- | --- | --- | --- | --- | --- |");
  for (const [at, target] of targets.entries()) {
    const rates: number[] = [];
    const places = [
      { ports: [setting.floorPort], recording: at },
      { ports: setting.large.ports.slice(0, 1), recording: null },
      { ports: setting.large.ports, recording: null },
    ];
    for (const place of places) {
      rates.push(await throughput({ http, target, place, atOnce: AT_ONCE, seconds: setting.seconds }));
    }
    const [bare = NaN, one = NaN, two = NaN] = rates;
    const cells = [target.name, ms(bare), ms(one), (one / bare).toFixed(2), ms(two), (two / one).toFixed(2)];
    console.log(`| ${cells.join(" | ")} |`);
  }
}

async function measureMemory(http: HttpClient, targets: readonly Target[]): Promise<void> {
  const [port = 0] = setting.large.ports;
  const { probe, soak: seconds } = setting;
  const told = await soak({ http, targets, port, seconds, probe });
  const mb = (bytes: number): string => `${(bytes / 1e6).toFixed(0)} MB`;
  console.log(`\n${String(told.requests)} requests in ${String(seconds)} s; after a collection each time:`);
  console.log("| | heap | outside the heap | resident |\n| --- | --- | --- | --- |");
  for (const [at, { heapUsed, external, rss }] of told.memory.entries()) {
    const when = `${String(Math.round((0.1 + (at * 0.9) / 4) * seconds))} s`;
    console.log(`| ${[when, mb(heapUsed), mb(external), mb(rss)].join(" | ")} |`);
  }
}

const subject = await openSubject([setting.small.superuserUrl, setting.large.superuserUrl], setting.slug);
const targets = await targetsOf(subject, setting.origin);
const http = openHttp();
const recordings = await recordAll(http, targets);
const floor = await startFloor(recordings);
try {
  await measureGrowth(targets, recordings);
  await measureTimes(http, targets);
  await measureThroughput(http, targets);
  if (setting.soak > 0) await measureMemory(http, targets);
} finally {
  floor.stop();
  http.close();
  await directory.$disconnect();
}
