import { z } from "zod";
import { brewsPage, brewsQuery, MOST_OF_BREWS_PAGE } from "../summary/brews-page";
import { CSV_COLUMNS } from "./csv-readings";
import { readingsAnswer } from "./readings-answer";
import { MOST_OF_PAGE, readingsPage, readingsQuery } from "./readings-page";
import { MOST_READINGS, READINGS_BYTES, sensorReading } from "./sensor-reading";

type JsonSchema = Readonly<Record<string, unknown>>;

/** The schema that the server itself reads with, as JSON Schema. */
function schemaOf(schema: z.ZodType, io: "input" | "output"): JsonSchema {
  const { $schema: _dialect, ...rest } = z.toJSONSchema(schema, { target: "draft-2020-12", io });
  return rest;
}

const ref = (name: string): JsonSchema => ({ $ref: `#/components/schemas/${name}` });
const json = (name: string): JsonSchema => ({ "application/json": { schema: ref(name) } });
const answer = (description: string, name: string): JsonSchema => ({ description, content: json(name) });

const message = { type: "object", properties: { message: { type: "string" } }, required: ["message"] };
const byField = {
  type: "object",
  properties: { fieldErrors: { type: "object", additionalProperties: { type: "string" } } },
  required: ["fieldErrors"],
};

const SCHEMAS = {
  Reading: schemaOf(sensorReading, "input"),
  Readings: {
    type: "object",
    properties: { readings: { type: "array", items: ref("Reading"), minItems: 1, maxItems: MOST_READINGS.json } },
    required: ["readings"],
    additionalProperties: false,
  },
  Answer: schemaOf(readingsAnswer, "output"),
  Page: schemaOf(readingsPage, "output"),
  Brews: schemaOf(brewsPage, "output"),
  Refusal: { anyOf: [message, byField] },
};

const REFUSED = {
  "401": answer("There is no key, or it is altered, revoked or expired. Nothing was kept.", "Refusal"),
  "429": answer("Too many requests at once: Retry-After says when.", "Refusal"),
};

const EXAMPLE = {
  readings: [
    {
      brew: "0198f2a0-0000-7000-8000-000000000001",
      at: "2026-11-28T10:00:00Z",
      quantity: "fermenter.temperature",
      value: 19.4,
      unit: "°C",
    },
  ],
};

const POST_READINGS = {
  operationId: "postReadings",
  summary: "Post readings",
  description:
    "Every reading is kept once, however often it is sent, and answered for on its own: those that are right are kept in " +
    "one transaction beside those that are not. A request of which nothing was right has the status 400, 403 or 404.",
  requestBody: {
    required: true,
    content: {
      "application/json": { schema: ref("Readings"), example: EXAMPLE },
      "text/csv": {
        schema: { type: "string" },
        example: "at,quantity,value,unit\r\n2026-11-28T10:00:00Z,fermenter.temperature,19.4,°C\r\n",
      },
    },
  },
  responses: {
    "200": answer("At least one reading is in the log now, or was already.", "Answer"),
    "400": {
      description: "No reading was right, or the request cannot be read.",
      content: { "application/json": { schema: { anyOf: [ref("Answer"), ref("Refusal")] } } },
    },
    "403": answer("The maker of the key may not write to these brews.", "Answer"),
    "404": answer("There are no such brews in the club of the key.", "Answer"),
    "413": answer(
      `More than ${String(MOST_READINGS.json)} readings or ${String(READINGS_BYTES.json / 1024)} kB of JSON, or more than ` +
        `${String(MOST_READINGS.csv)} lines or ${String(READINGS_BYTES.csv / 1024 / 1024)} MB of CSV. Nothing was kept.`,
      "Refusal",
    ),
    ...REFUSED,
  },
};

function queryParameters(query: z.ZodType): readonly JsonSchema[] {
  const { properties = {} } = z.toJSONSchema(query, { io: "input" });
  return Object.entries(properties).map(([name, schema]) => {
    const { description, ...rest } = typeof schema === "object" ? schema : {};
    return { name, in: "query", required: false, description, schema: rest };
  });
}

const GET_READINGS = {
  operationId: "getReadings",
  summary: "Read the readings of a brew",
  description:
    `Up to ${String(MOST_OF_PAGE)} a page, in the order in which the server received them. What was corrected is told with ` +
    "the value that counts now.",
  parameters: [
    { name: "brew", in: "path", required: true, schema: { type: "string", format: "uuid" } },
    ...queryParameters(readingsQuery),
  ],
  responses: {
    "200": answer("A page of readings.", "Page"),
    "400": answer("The query cannot be read.", "Refusal"),
    "404": answer("There is no such brew in the club of the key, or the key is for another one.", "Refusal"),
    ...REFUSED,
  },
};

const GET_BREWS = {
  operationId: "getBrews",
  summary: "Read what the brews of the club come to",
  description:
    `Up to ${String(MOST_OF_BREWS_PAGE)} a page, each with its quantities, planned and measured, in the library's units: ` +
    "L, °C, °P, min, % vol, and shares of 1. Brews that were dropped are left out.",
  parameters: queryParameters(brewsQuery),
  responses: {
    "200": answer("A page of brews.", "Brews"),
    "400": answer("The query cannot be read.", "Refusal"),
    ...REFUSED,
  },
};

/** What programs can do here, as an OpenAPI 3.1 document. */
export function apiDocument(origin: string) {
  return {
    openapi: "3.1.0",
    info: {
      title: "Gylebook readings",
      version: "1.0.0",
      description: `Readings of sensors and scripts, for the logs of brews. Columns of CSV: ${CSV_COLUMNS.join(", ")}.`,
    },
    servers: [{ url: origin }],
    security: [{ key: [] }],
    paths: {
      "/api/v1/readings": { post: POST_READINGS },
      "/api/v1/brews": { get: GET_BREWS },
      "/api/v1/brews/{brew}/readings": { get: GET_READINGS },
    },
    components: {
      securitySchemes: {
        key: {
          type: "http",
          scheme: "bearer",
          description: "A key that a member makes on the page “Sensors and scripts”.",
        },
      },
      schemas: SCHEMAS,
    },
  };
}
