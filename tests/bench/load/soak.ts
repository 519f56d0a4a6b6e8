import { readFile, rm } from "node:fs/promises";
import { setTimeout as pause } from "node:timers/promises";
import { z } from "zod";
import type { HttpClient } from "./http";
import type { Target } from "./targets";

/** Memory of the app after a collection, in bytes. */
const memory = z.object({ rss: z.number(), heapUsed: z.number(), external: z.number() });
type Memory = z.infer<typeof memory>;

export interface Probe {
  readonly pid: number;
  readonly file: string;
}

const AT_ONCE = 4;

/** Asks the app to collect and to say what is left; `heap-probe.mjs` answers in a file. */
async function memoryOf({ pid, file }: Probe): Promise<Memory> {
  await rm(file, { force: true });
  process.kill(pid, "SIGUSR2");
  for (;;) {
    const text = await readFile(file, "utf8").catch(() => "");
    if (text !== "") return memory.parse(JSON.parse(text));
    await pause(100);
  }
}

/** Asks for everything over and over, and looks at the memory at the start, in the middle and at the end. */
export async function soak(a: {
  readonly http: HttpClient;
  readonly targets: readonly Target[];
  readonly port: number;
  readonly seconds: number;
  readonly probe: Probe;
}): Promise<{ readonly requests: number; readonly memory: readonly Memory[] }> {
  let requests = 0;
  const run = async (seconds: number): Promise<void> => {
    const until = performance.now() + seconds * 1000;
    await Promise.all(
      Array.from({ length: AT_ONCE }, async (_, who) => {
        for (let turn = who; performance.now() < until; turn += 1) {
          const target = a.targets[turn % a.targets.length];
          if (target === undefined) return;
          const answered = await a.http.ask(a.port, target.next());
          if (!target.isDone(answered))
            throw new Error(`${target.name} answered ${String(answered.status)}: ${answered.body}`);
          requests += 1;
        }
      }),
    );
  };
  // What is made once, such as compiled code, is not what grows.
  await run(a.seconds / 10);
  const looked = [await memoryOf(a.probe)];
  for (let part = 0; part < 4; part += 1) {
    await run((a.seconds * 0.9) / 4);
    looked.push(await memoryOf(a.probe));
  }
  return { requests, memory: looked };
}
