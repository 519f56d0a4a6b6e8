import { listSpaces } from "@/lib/server/spaces/reads";
import { optionalViewer } from "@/lib/server/session";
import { PageMain } from "@/lib/ui/page-main";
import { FoundClubForm } from "./found-club-form";
import { PublicPage } from "./public-page";
import { SpaceList } from "./space-list";

export default async function HomePage() {
  const viewer = await optionalViewer();
  if (viewer === null) return <PublicPage />;
  const spaces = await listSpaces(viewer);
  const clubs = spaces.filter((space) => space.kind === "club");
  const benches = spaces.filter((space) => space.kind === "person");
  return (
    <PageMain narrow>
      <h1 className="mb-6">Your clubs and your bench</h1>
      <SpaceList spaces={[...clubs, ...benches]} />
      {clubs.length > 0 ? null : (
        <p className="mt-4 text-muted">
          You belong to no club yet. A club’s organiser can send you an invitation, or you found one yourself.
        </p>
      )}
      <section aria-labelledby="found" className="mt-12">
        <h2 id="found" className="mb-4">
          Found a club
        </h2>
        <FoundClubForm />
      </section>
    </PageMain>
  );
}
