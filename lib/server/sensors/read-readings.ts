import "server-only";
import { CsvError, CsvRecords, type CsvRecord } from "@/lib/model/sensor/csv-records";
import { readHeading, readLine } from "@/lib/model/sensor/csv-readings";
import { readingsRequest } from "@/lib/model/sensor/readings-answer";
import { MOST_READINGS, READINGS_BYTES } from "@/lib/model/sensor/sensor-reading";
import { AppError } from "../app-error";
import { boundedBody, tooLarge } from "../bounded-body";
import { jsonOf } from "../json-body";

/** The readings of a request, as JSON or as CSV, none of them looked at yet. Too many are refused while they come in. */
export async function readReadings(request: Request): Promise<readonly unknown[]> {
  const [type = ""] = (request.headers.get("content-type") ?? "").split(";");
  if (type.trim().toLowerCase() === "text/csv") return readCsv(request);
  if (type.trim().toLowerCase() === "application/json") return readJson(request);
  throw new AppError("INVALID", `Content-Type “${type.slice(0, 60)}”: it takes application/json or text/csv.`);
}

async function readJson(request: Request): Promise<readonly unknown[]> {
  const body = await boundedBody(request, READINGS_BYTES.json, () => tooLarge("request", READINGS_BYTES.json));
  const { readings } = readingsRequest.parse(jsonOf(body));
  const most = MOST_READINGS.json;
  if (readings.length >= 1 && readings.length <= most) return readings;
  throw new AppError(
    readings.length === 0 ? "INVALID" : "TOO_LARGE",
    `readings: there are ${String(readings.length)}; a request takes 1 to ${String(most)}. Nothing was kept.`,
  );
}

async function readCsv(request: Request): Promise<readonly unknown[]> {
  const said = Number(request.headers.get("content-length") ?? "0");
  if (said > READINGS_BYTES.csv) {
    await request.body?.cancel();
    throw tooManyLines();
  }
  try {
    const [heading, ...lines] = await recordsOf(request);
    if (heading === undefined || lines.length === 0) throw new CsvError("there is no line of readings in it");
    const columns = readHeading(heading);
    return lines.map((line) => readLine(columns, line));
  } catch (cause) {
    if (!(cause instanceof CsvError)) throw cause;
    throw new AppError("INVALID", `The table cannot be read: ${cause.message}. Nothing was kept.`, { cause });
  }
}

async function recordsOf(request: Request): Promise<readonly CsvRecord[]> {
  const table = new CsvRecords();
  const decoder = new TextDecoder("utf-8", { fatal: true });
  const records: CsvRecord[] = [];
  let bytes = 0;
  const reader = request.body?.getReader();
  try {
    for (let part = await reader?.read(); part !== undefined && !part.done; part = await reader?.read()) {
      bytes += part.value.length;
      records.push(...table.read(textOf(decoder, part.value)));
      // One line is the heading.
      if (bytes > READINGS_BYTES.csv || records.length > MOST_READINGS.csv + 1) throw tooManyLines();
    }
    records.push(...table.read(textOf(decoder)), ...table.end());
    if (records.length > MOST_READINGS.csv + 1) throw tooManyLines();
    return records;
  } finally {
    await reader?.cancel();
  }
}

function textOf(decoder: TextDecoder, bytes?: Uint8Array): string {
  try {
    return bytes === undefined ? decoder.decode() : decoder.decode(bytes, { stream: true });
  } catch (cause) {
    throw new CsvError("it is not UTF-8", { cause });
  }
}

function tooManyLines(): AppError {
  const [lines, megabytes] = [MOST_READINGS.csv.toLocaleString("en-GB"), READINGS_BYTES.csv / 1024 / 1024];
  return new AppError(
    "TOO_LARGE",
    `The table has too many lines: a request takes ${lines} readings and ${String(megabytes)} MB. Nothing was kept; send it in parts.`,
  );
}
