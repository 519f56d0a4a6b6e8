import type { Metadata } from "next";
import { apiDocument } from "@/lib/model/sensor/api-document";
import { UNITS_OF_KIND } from "@/lib/model/sensor/reading-units";
import { environment } from "@/lib/server/environment";
import { DataTable } from "@/lib/ui/data-table";
import { PageMain } from "@/lib/ui/page-main";
import { CodeBlock } from "./code-block";
import { FieldTable } from "./field-table";
import { csvExample, jsonExample, readExample } from "./examples";
import { QuantityTable } from "./quantity-table";
import { StatusTable } from "./status-table";

export const metadata: Metadata = { title: "Posting readings" };

const KIND_WORDS: Readonly<Record<string, string>> = { ph: "pH", gravity: "gravity" };

export default function ApiDocsPage() {
  const origin = environment.appOrigin ?? "http://localhost:3000";
  const { components, paths } = apiDocument(origin);
  const { post } = paths["/api/v1/readings"];
  const { get } = paths["/api/v1/brews/{brew}/readings"];
  const units = Object.entries(UNITS_OF_KIND).map(([kind, list]) => ({ kind: KIND_WORDS[kind] ?? kind, list }));
  return (
    <PageMain narrow>
      <h1>Posting readings</h1>
      <p className="my-4">
        A probe or a script posts readings into the log of a brew with a key. A member makes one on the page “Sensors
        and scripts” of the club; it acts for that member. The same as a document for programs:{" "}
        <a href="/api/v1/openapi.json">OpenAPI 3.1</a>.
      </p>
      <h2 className="mt-8 mb-3">{post.summary}</h2>
      <p className="mb-3">{post.description}</p>
      <CodeBlock label="An example with JSON">
        {jsonExample(origin, post.requestBody.content["application/json"].example)}
      </CodeBlock>
      <CodeBlock label="An example with CSV">{csvExample(origin)}</CodeBlock>
      <FieldTable caption="A reading" schema={components.schemas.Reading} />
      <QuantityTable />
      <DataTable
        caption="Units"
        columns={[
          { id: "kind", label: "Kind", cell: ({ kind }) => kind },
          { id: "units", label: "Units", cell: ({ list }) => list.join(", ") },
        ]}
        records={units}
        keyOf={({ kind }) => kind}
      />
      <FieldTable caption="The answer" schema={components.schemas.Answer} />
      <StatusTable responses={post.responses} />
      <h2 className="mt-8 mb-3">{get.summary}</h2>
      <p className="mb-3">{get.description}</p>
      <CodeBlock label="An example of reading back">{readExample(origin)}</CodeBlock>
    </PageMain>
  );
}
