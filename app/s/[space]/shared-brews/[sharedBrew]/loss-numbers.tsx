import Link from "next/link";
import type { ExtractAccount } from "@/lib/calc/compare";
import type { Preferences } from "@/lib/model/preferences";
import { Quantity } from "@/lib/ui/quantity";
import { LossPart } from "./loss-part";
import { lossShares } from "./loss-shares";

interface LossNumbersProps {
  readonly name: string;
  readonly href: string;
  readonly account: ExtractAccount;
  readonly preferences: Preferences;
}

/** What the bars show, as text; the pattern in front of each line is its key. */
export function LossNumbers({ name, href, account, preferences }: LossNumbersProps) {
  return (
    <table className="mt-1 w-full text-sm">
      <caption className="sr-only">Shares of the extract, {name}</caption>
      <thead>
        <tr className="text-muted">
          <th scope="col">
            <span className="sr-only">Part</span>
          </th>
          <th scope="col" className="pl-4 text-end font-normal">
            planned
          </th>
          <th scope="col" className="pl-4 text-end font-normal">
            measured
          </th>
        </tr>
      </thead>
      <tbody>
        {lossShares(account).map(({ part, planned, measured }) => (
          <tr key={part.id} className="border-t border-rule">
            <th scope="row" className="py-1 text-start font-normal">
              <svg className="loss-key" viewBox="0 0 14 10" aria-hidden>
                <LossPart pattern={part.pattern} x={0.5} width={13} height={9} />
              </svg>
              <Link href={href} className="no-underline hover:underline">
                {part.label}
              </Link>
            </th>
            <td className="pl-4 text-end">
              <Quantity value={planned} dimension="fraction" preferences={preferences} digits={0} />
            </td>
            <td className="pl-4 text-end">
              <Quantity
                value={measured}
                dimension="fraction"
                preferences={preferences}
                digits={0}
                reason="needs readings that are not there"
              />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
