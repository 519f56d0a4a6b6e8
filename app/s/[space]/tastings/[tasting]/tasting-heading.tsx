import Link from "next/link";
import { dayInWords } from "@/lib/model/plain-day";
import { TASTING_STATE_WORDS, type Tasting } from "@/lib/model/tasting/tasting";

interface TastingHeadingProps {
  readonly home: string;
  readonly tasting: Tasting;
  readonly isSteward: boolean;
  /** Of the reader: organisers follow how many sheets are in. */
  readonly organises?: boolean;
  readonly page: "tasting" | "prepare" | "pour" | "labels" | "sheets-to-print" | "paper" | "results";
}

/** Which tasting this is and where it stands; and the pages that the reader has of it. */
export function TastingHeading({ home, tasting, isSteward, organises = false, page }: TastingHeadingProps) {
  const { id, title, state, heldOn, stewardName, sharedBrew } = tasting;
  const own = `${home}/tastings/${id}`;
  const pages = pagesOf(own, state, { isSteward, organises });
  return (
    <header>
      <h1>{title}</h1>
      <p className="text-muted">
        {heldOn === null ? "No day yet" : dayInWords(heldOn)}; steward {stewardName}
        {sharedBrew === null ? null : (
          <>
            ; after <Link href={`${home}/shared-brews/${sharedBrew.id}`}>{sharedBrew.title}</Link>
          </>
        )}
        .
      </p>
      <p className="mt-2">
        <strong>This tasting is {TASTING_STATE_WORDS[state]}.</strong>
      </p>
      {pages.length < 2 ? null : (
        <nav aria-label="This tasting" className="local-nav no-print mt-2">
          <ul className="flex flex-wrap gap-x-5">
            {pages.map(({ id: each, href, text }) => (
              <li key={each}>
                <Link href={href} aria-current={each === page ? "page" : undefined}>
                  {text}
                </Link>
              </li>
            ))}
          </ul>
        </nav>
      )}
    </header>
  );
}

/** The pages of a tasting that the reader has, as it stands now. */
function pagesOf(
  own: string,
  state: Tasting["state"],
  { isSteward, organises }: { readonly isSteward: boolean; readonly organises: boolean },
) {
  return [
    { id: "tasting", href: own, text: "Tasting", isShown: true },
    { id: "prepare", href: `${own}/prepare`, text: "Preparation", isShown: isSteward },
    { id: "labels", href: `${own}/labels`, text: "Labels", isShown: isSteward },
    { id: "pour", href: `${own}/pour`, text: "Pour list", isShown: isSteward && state !== "draft" },
    { id: "sheets-to-print", href: `${own}/sheets-to-print`, text: "Paper", isShown: isSteward && state !== "draft" },
    {
      id: "paper",
      href: `${own}/paper`,
      text: "Enter paper",
      isShown: isSteward && (state === "open" || state === "closed"),
    },
    {
      id: "results",
      href: `${own}/results`,
      text: "Results",
      isShown: state === "revealed" || ((isSteward || organises) && state !== "draft"),
    },
  ].filter(({ isShown }) => isShown);
}
