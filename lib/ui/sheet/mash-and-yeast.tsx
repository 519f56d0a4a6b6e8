import type { ReactElement } from "react";
import type { Recipe } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { Quantity } from "../quantity";

interface MashAndYeastProps {
  readonly recipe: Recipe;
  readonly preferences: Preferences;
}

/** Temperatures and times of the process, on paper. */
export function MashAndYeast({ recipe, preferences }: MashAndYeastProps): ReactElement {
  const { mash, boil, stand, yeast } = recipe;
  return (
    <table className="data-table">
      <caption className="table-caption">Mash, boil and yeast</caption>
      <tbody>
        {mash.map((step, i) => (
          <tr key={`rest ${String(i)}`}>
            <th scope="row">Rest {i + 1}</th>
            <td className="is-number">
              <Quantity value={step.celsius} dimension="temperature" preferences={preferences} />
            </td>
            <td className="is-number">
              <Quantity value={step.minutes} dimension="minutes" preferences={preferences} />
            </td>
          </tr>
        ))}
        <tr>
          <th scope="row">Boil</th>
          <td />
          <td className="is-number">
            <Quantity value={boil} dimension="minutes" preferences={preferences} />
          </td>
        </tr>
        {stand === null ? null : (
          <tr>
            <th scope="row">Hop stand</th>
            <td className="is-number">
              <Quantity value={stand.celsius} dimension="temperature" preferences={preferences} />
            </td>
            <td className="is-number">
              <Quantity value={stand.minutes} dimension="minutes" preferences={preferences} />
            </td>
          </tr>
        )}
        <tr>
          <th scope="row">{yeast.name}</th>
          <td className="is-number">
            <Quantity value={yeast.celsius} dimension="temperature" preferences={preferences} />
          </td>
          <td />
        </tr>
      </tbody>
    </table>
  );
}
