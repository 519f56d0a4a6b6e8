import { ImageResponse } from "next/og";
import { beerSrgb } from "@/lib/calc/colour";
import { ebc, srmFromEbc } from "@/lib/calc/units";
import { CARD_SIZE } from "./card-size";
import { drawableText } from "./drawable-text";

export interface LinkCard {
  readonly title: string;
  /** What it is and whose, in one line. */
  readonly line: string;
  readonly figures: readonly { readonly label: string; readonly text: string }[];
  /** Of the beer, EBC; null where it is not known. */
  readonly colourEbc: number | null;
}

const PAPER = "#faf8f2";
const INK = "#1f1d1a";
const MUTED = "#5c574e";
/** A glass held to the light. */
const PATH_CM = 7.5;
const LONG_TITLE = 48;
const LONGEST_SHOWN = 110;

/**
 * The picture of a link as a PNG. It is drawn here, from a font that comes with the framework, and asks nothing of the
 * network; it is not kept, for what it shows can be withdrawn.
 */
export function linkCard({ title, line, figures, colourEbc }: LinkCard): ImageResponse {
  const shown = drawableText(title) || "Without a title that can be drawn";
  const isLong = shown.length > LONG_TITLE;
  return new ImageResponse(
    <div style={{ display: "flex", width: "100%", height: "100%", background: PAPER, color: INK }}>
      <div style={{ display: "flex", width: 56, background: beerColour(colourEbc), borderRight: `2px solid ${INK}` }} />
      <div style={{ display: "flex", flex: 1, flexDirection: "column", justifyContent: "space-between", padding: 64 }}>
        <div style={{ display: "flex", flexDirection: "column" }}>
          <div style={{ display: "flex", fontSize: isLong ? 56 : 76, lineHeight: 1.15, letterSpacing: -1 }}>
            {shortened(shown)}
          </div>
          <div style={{ display: "flex", marginTop: 20, fontSize: 32, color: MUTED }}>
            {shortened(drawableText(line))}
          </div>
        </div>
        <div style={{ display: "flex", gap: 56, borderTop: `2px solid ${INK}`, paddingTop: 28 }}>
          {figures.map(({ label, text }) => (
            <div key={label} style={{ display: "flex", flexDirection: "column" }}>
              <div style={{ display: "flex", fontSize: 26, color: MUTED }}>{drawableText(label)}</div>
              <div style={{ display: "flex", fontSize: 44 }}>{drawableText(text)}</div>
            </div>
          ))}
        </div>
        <div style={{ display: "flex", fontSize: 26, color: MUTED }}>Gylebook</div>
      </div>
    </div>,
    { ...CARD_SIZE, headers: { "cache-control": "no-store" } },
  );
}

function beerColour(colourEbc: number | null): string {
  if (colourEbc === null) return PAPER;
  const [red, green, blue] = beerSrgb({ srm: srmFromEbc(ebc(colourEbc)), pathCm: PATH_CM });
  return `rgb(${String(red)}, ${String(green)}, ${String(blue)})`;
}

function shortened(text: string): string {
  return text.length <= LONGEST_SHOWN ? text : `${text.slice(0, LONGEST_SHOWN - 1).trimEnd()}…`;
}
