import type { Brew } from "@/lib/model/brew";

interface WhoIsShownProps {
  readonly clubName: string;
  readonly brews: readonly Brew[];
  readonly shown: readonly Brew[];
}

/** What everybody will see of a result, and what nobody will. */
export function WhoIsShown({ clubName, brews, shown }: WhoIsShownProps) {
  const leftOut = brews.filter(({ id }) => shown.every((brew) => brew.id !== id));
  return (
    <section aria-labelledby="who" className="mb-6">
      <h2 id="who" className="mb-2">
        Who sees this?
      </h2>
      <p className="mb-2">Everybody, without signing in, and search engines.</p>
      <h3>Shown</h3>
      <ul className="mb-3 list-disc pl-5">
        <li>
          the title of the shared brew and of its recipe, its revision, and the name of {clubName}: read the titles
        </li>
        <li>strength, bitterness, colour and alcohol of the recipe as written</li>
        <li>how many brewers on how many kettles, and the day of publishing</li>
        <li>
          of each brew that has readings, nine figures of the comparison, planned with the 80 % interval and measured,
          under “Brewer A”, “Brewer B” and so on, in an order drawn by lot
        </li>
      </ul>
      <h3>Not shown</h3>
      <ul className="mb-3 list-disc pl-5">
        <li>names of people and of kettles, the figures of a kettle, and volumes that the comparison does not have</li>
        <li>brew days, notes, instruments, and every reading apart from those nine figures</li>
        <li>amounts and notes of the recipe; its revision is a link where you publish that as well</li>
        <li>whatever is read or corrected after publishing: the figures stay as they are now</li>
      </ul>
      <p>Whoever knows how much each brewer makes may still tell who is who by the volumes. Ask the brewers first.</p>
      <Brewers heading="Now in it" brews={shown} />
      <Brewers heading="Not in it, for nothing of the nine is measured" brews={leftOut} />
    </section>
  );
}

function Brewers({ heading, brews }: { readonly heading: string; readonly brews: readonly Brew[] }) {
  if (brews.length === 0) return null;
  return (
    <p className="mt-3">
      {heading}: {brews.map(({ brewerName, equipmentName }) => `${brewerName} (${equipmentName})`).join(", ")}.
    </p>
  );
}
