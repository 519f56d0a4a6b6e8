import type { Metadata } from "next";
import { apiDocument } from "@/lib/model/sensor/api-document";
import { UNITS_OF_KIND } from "@/lib/model/sensor/reading-units";
import { environment } from "@/lib/server/environment";
import { DataTable } from "@/lib/ui/data-table";
import { PageMain } from "@/lib/ui/page-main";
import { CodeBlock } from "./code-block";
import { DocSection } from "./doc-section";
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
    <PageMain>
      <h1>Posting readings</h1>
      <p className="my-4 max-w-2xl">
        A probe or a script posts readings into the log of a brew with a key. A member makes one on the page “Sensors
        and scripts” of the club; it acts for that member. The same as a document for programs:{" "}
        <a href="/api/v1/openapi.json">OpenAPI 3.1</a>.
      </p>
      <h2 className="mt-8 mb-3">{post.summary}</h2>
      <p className="mb-3 max-w-2xl">{post.description}</p>
      <CodeBlock label="An example with JSON">
        {jsonExample(origin, post.requestBody.content["application/json"].example)}
      </CodeBlock>
      <CodeBlock label="An example with CSV">{csvExample(origin)}</CodeBlock>
      <DocSection id="reading" title="A reading">
        <FieldTable caption="A reading" schema={components.schemas.Reading} />
      </DocSection>
      <DocSection id="quantities" title="Quantities">
        <QuantityTable />
      </DocSection>
      <DocSection id="units" title="Units">
        <DataTable
          caption="Units"
          captionHidden
          columns={[
            { id: "kind", label: "Kind", cell: ({ kind }) => kind },
            { id: "units", label: "Units", cell: ({ list }) => list.join(", ") },
          ]}
          records={units}
          keyOf={({ kind }) => kind}
        />
      </DocSection>
      <DocSection id="answer" title="The answer">
        <FieldTable caption="The answer" schema={components.schemas.Answer} />
      </DocSection>
      <DocSection id="status" title="Status">
        <StatusTable responses={post.responses} />
      </DocSection>
      <h2 className="mt-10 mb-3">{get.summary}</h2>
      <p className="mb-3 max-w-2xl">{get.description}</p>
      <CodeBlock label="An example of reading back">{readExample(origin)}</CodeBlock>
    </PageMain>
  );
}
