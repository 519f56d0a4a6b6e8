/**
 * `npm run faults -- service`: the whole service instead, in faults-service.mjs.
 *
 * `npm run faults`: twenty phones log brews while connections are cut and the app and the database are killed again and
 * again; in the end every reading that a phone showed as safe must be on the server, exactly once and unaltered.
 *
 * `npm run faults -- --readings=2000 --kills=10` is a shorter run; `--control` lets the database confirm what it has not
 * written yet, and must find losses: a run that cannot fail proves nothing.
 */
import { parseArgs } from "node:util";
import { startThrowAwayDatabase } from "./embedded-database.mjs";
import { freePort } from "./free-port.mjs";
import { migrate } from "./open-database.mjs";
import { ensureBuild, ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { attemptService } from "./faults-service.mjs";
import { mailbox } from "./mailbox.mjs";
import { Refusal } from "./refusal.mjs";
import { start, typescriptCommand } from "./run.mjs";
import { runCommand } from "./run-command.mjs";
import { passingEnvironment, serve } from "./server.mjs";
import { onShutdown } from "./shutdown.mjs";

const USUAL = { readings: "10000", kills: "52", phones: "20", seed: "1", rounds: "5" };

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  await ensureClient();
  await ensureBuild();
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      readings: { type: "string", default: USUAL.readings },
      kills: { type: "string", default: USUAL.kills },
      phones: { type: "string", default: USUAL.phones },
      seed: { type: "string", default: USUAL.seed },
      rounds: { type: "string", default: USUAL.rounds },
      control: { type: "boolean", default: false },
    },
  });
  const wanted = Object.fromEntries(
    ["readings", "kills", "phones", "seed", "rounds"].map((name) => [name, wholeNumber(name, values[name])]),
  );
  const [which = "log"] = positionals;
  if (which !== "log" && which !== "service") throw new Refusal(`There is no ${which}: it is log or service.`);
  if (which === "service") return attemptService({ ...wanted, isControl: values.control });
  return attempt({ ...wanted, isControl: values.control });
});

function wholeNumber(name, text) {
  const number = Number(text);
  if (Number.isInteger(number) && number >= 1) return number;
  throw new Refusal(`--${name}=${text} is no whole number from 1.`);
}

async function attempt({ readings, kills, phones, seed, isControl }) {
  const flags = isControl ? ["-c synchronous_commit=off", "-c wal_writer_delay=10s"] : [];
  const database = await startThrowAwayDatabase("gylebook", { flags });
  onShutdown(database.stop);
  await migrate(database.url);
  const port = await freePort();
  const proxyPort = await freePort();
  const origin = `http://localhost:${port}`;
  const env = passingEnvironment({ databaseUrl: database.url, origin });
  const server = { host: "127.0.0.1", port, env };
  let app = await serve(server);
  const [command, args] = typescriptCommand("tests/faults/run-phones.ts");
  const setting = { readings, phones, seed, port, proxyPort, origin };
  const child = start(command, args, {
    env: { ...env, GYLEBOOK_FAULTS: JSON.stringify(setting) },
    stdio: ["ignore", "inherit", "inherit", "ipc"],
  });
  const told = mailbox(child);
  await told.until("writing");
  const times = [];
  for (let i = 0; i < kills; i += 1) {
    await new Promise((resolve) => setTimeout(resolve, 1500 + ((i * 977) % 2500)));
    const begun = Date.now();
    if (i % 2 === 0) {
      app.kill();
      await app.ended;
      app = await serve(server);
    } else {
      await database.crash();
      await database.revive();
    }
    child.send({ kind: "killed", what: i % 2 === 0 ? "app" : "database", at: begun });
    times.push(Date.now() - begun);
  }
  child.send({ kind: "quiet" });
  const result = await told.until("result");
  report({ ...result, appKills: Math.ceil(kills / 2), databaseKills: Math.floor(kills / 2), isControl });
  child.disconnect();
  const isSound = result.lost === 0 && result.doubled === 0 && result.altered === 0 && result.stranded === 0;
  if (isControl) return result.lost > 0 ? 0 : 1;
  return isSound ? 0 : 1;
}

function report(result) {
  const lines = [
    ["readings shown as kept on a phone", result.created],
    ["of these shown as safe on the server", result.safe],
    ["on the server in the end", result.stored],
    ["app killed (SIGKILL)", result.appKills],
    ["database killed (SIGKILL of all its processes)", result.databaseKills],
    ["connections cut in the middle", result.cuts],
    ["pages loaded anew", result.reloads],
    ["deliveries sent", result.deliveries],
    ["deliveries sent twice, or again later out of order", result.repeats],
    ["duplicates that the server absorbed", result.duplicates],
    ["safe on a phone and not on the server", result.lost],
    ["on the server more than once", result.doubled],
    ["on the server with another value", result.altered],
    ["on no phone and not on the server, or still waiting in the end", result.stranded],
    ["from a kill to the next acknowledged reading, median", `${(result.recoveryMedianMs / 1000).toFixed(1)} s`],
    ["the same, longest", `${(result.recoveryLongestMs / 1000).toFixed(1)} s`],
    ["from the last fault until all phones were empty", `${(result.drainMs / 1000).toFixed(1)} s`],
  ];
  console.log(result.isControl ? "\nControl, with a database that confirms too early:" : "");
  for (const [what, count] of lines) console.log(`${what.padEnd(68)} ${count}`);
}
