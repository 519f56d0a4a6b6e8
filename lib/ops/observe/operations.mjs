import { AsyncLocalStorage } from "node:async_hooks";
import { errorFacts } from "./scrub.mjs";

/**
 * What the operator learns of a running server, in one place of the process: the server's own code is bundled apart and
 * finds it on the global object. Times in seconds, as Prometheus has them.
 */
const BOUNDS_S = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10];

const counters = new Map();
const histograms = new Map();
const gauges = new Map();

export const operations = {
  /** Set when the server is about to end: it answers what comes, and says that it is not ready. */
  isDraining: false,
  /** The request that the present work belongs to. */
  request: new AsyncLocalStorage(),
  log,
  factsOf: errorFacts,
  count,
  observe,
  /** A figure that is asked for whenever somebody looks. */
  gauge: (name, read) => gauges.set(name, read),
};

export function install() {
  globalThis.gylebookOperations = operations;
}

const LOGS = process.env.GYLEBOOK_LOG === "json";

/** One line of JSON, in which a line break of somebody else's is `\n`. */
function log(level, event, facts = {}) {
  if (!LOGS && level === "info") return;
  const requestId = operations.request.getStore()?.id;
  const entry = { ts: new Date().toISOString(), level, event, ...(requestId && { request_id: requestId }), ...facts };
  process[level === "info" ? "stdout" : "stderr"].write(`${JSON.stringify(entry)}\n`);
}

function count(name, labels = {}, by = 1) {
  const key = seriesOf(name, labels);
  counters.set(key, (counters.get(key) ?? 0) + by);
}

function observe(name, labels, seconds) {
  const key = seriesOf(name, labels);
  const found = histograms.get(key) ?? { name, labels, counts: BOUNDS_S.map(() => 0), sum: 0, count: 0 };
  BOUNDS_S.forEach((bound, index) => {
    if (seconds <= bound) found.counts[index] += 1;
  });
  found.sum += seconds;
  found.count += 1;
  histograms.set(key, found);
}

function seriesOf(name, labels) {
  const pairs = Object.entries(labels).map(([label, value]) => `${label}="${escaped(String(value))}"`);
  return pairs.length === 0 ? name : `${name}{${pairs.join(",")}}`;
}

/** As the text format has it. */
function escaped(text) {
  return text.replaceAll("\\", "\\\\").replaceAll('"', '\\"').replaceAll("\n", "\\n");
}

/** Everything that was counted, in the text format of Prometheus, version 0.0.4. */
export function metricsText() {
  const lines = [];
  const typed = new Set();
  const declare = (name, type) => {
    if (!typed.has(name)) lines.push(`# TYPE ${name} ${type}`);
    typed.add(name);
  };
  for (const [series, value] of [...counters].sort()) {
    declare(series.split("{")[0], "counter");
    lines.push(`${series} ${value}`);
  }
  // All series of one name stand together.
  const ordered = [...histograms].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, histogram]) => histogram);
  for (const { name, labels, counts, sum, count: total } of ordered) {
    declare(name, "histogram");
    counts.forEach((each, index) => {
      lines.push(`${seriesOf(`${name}_bucket`, { ...labels, le: BOUNDS_S[index] })} ${each}`);
    });
    lines.push(`${seriesOf(`${name}_bucket`, { ...labels, le: "+Inf" })} ${total}`);
    lines.push(`${seriesOf(`${name}_sum`, labels)} ${sum}`, `${seriesOf(`${name}_count`, labels)} ${total}`);
  }
  for (const [name, read] of gauges) {
    declare(name, "gauge");
    lines.push(`${name} ${read()}`);
  }
  return `${lines.join("\n")}\n`;
}
