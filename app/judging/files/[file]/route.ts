import { fileResponse } from "@/lib/server/day-files/respond";

interface FileContext {
  readonly params: Promise<{ readonly file: string }>;
}

/** A built file of the page. */
export async function GET(_request: Request, { params }: FileContext): Promise<Response> {
  return fileResponse("judging", (await params).file);
}
