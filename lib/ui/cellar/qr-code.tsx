import type { ReactElement } from "react";
import { encode } from "uqr";

/** A QR code (ISO/IEC 18004) as lines of the page, so that it prints sharp at any size. `label` says where it leads. */
export interface QrCodeProps {
  readonly text: string;
  readonly label: string;
}

/** The standard asks for four light modules around the code. */
const QUIET_ZONE = 4;

export function QrCode({ text, label }: QrCodeProps): ReactElement {
  const { path, size } = drawnOnce(text);
  return (
    <svg
      className="qr-code"
      viewBox={`0 0 ${String(size)} ${String(size)}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <rect width={size} height={size} fill="#ffffff" />
      <path d={path} fill="#000000" />
    </svg>
  );
}

interface Drawn {
  readonly text: string;
  readonly path: string;
  readonly size: number;
}

/** A sheet of labels has one code many times. */
let latest: Drawn | null = null;

function drawnOnce(text: string): Drawn {
  if (latest?.text === text) return latest;
  const { data, size } = encode(text, { ecc: "M", border: QUIET_ZONE });
  latest = { text, size, path: darkModules(data) };
  return latest;
}

function darkModules(data: readonly (readonly boolean[])[]): string {
  return data
    .flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${String(x)} ${String(y)}h1v1h-1z`] : [])))
    .join("");
}
