import { apiRoute } from "@/lib/server/api-route";
import { answerAuth } from "@/lib/server/auth-route";

export const GET = answerAuth;
export const POST = apiRoute(answerAuth);
