import { apiDocument } from "@/lib/model/sensor/api-document";
import { apiRoute } from "@/lib/server/api-route";
import { environment } from "@/lib/server/environment";

/** The readings API as OpenAPI 3.1, made from the schemas that the server reads with. */
export const GET = apiRoute(async (request: Request) => {
  const document = apiDocument(environment.appOrigin ?? new URL(request.url).origin);
  return Promise.resolve(
    Response.json(document, {
      headers: { "cache-control": "public, max-age=300", "x-content-type-options": "nosniff" },
    }),
  );
});
