import { QrCode } from "@/lib/ui/cellar/qr-code";

interface BlindLabelProps {
  readonly entryNo: number;
  readonly title: string;
  /** Of the judge's sheet for this code; it names the code and nothing of the beer. */
  readonly address: string;
}

/** One label for a bottle whose own label is covered. */
export function BlindLabel({ entryNo, title, address }: BlindLabelProps) {
  return (
    <div className="label">
      <div>
        <p className="label-code">{entryNo}</p>
        <p>{title}</p>
        <p>Contains alcohol. Ask the steward about allergens.</p>
      </div>
      <QrCode text={address} label={`QR code of the sheet for ${String(entryNo)}: ${address}`} />
    </div>
  );
}
