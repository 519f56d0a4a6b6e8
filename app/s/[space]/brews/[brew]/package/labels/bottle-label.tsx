import { QrCode } from "@/lib/ui/cellar/qr-code";

interface BottleLabelProps {
  readonly beer: string;
  readonly brewer: string;
  readonly packaged: string;
  readonly alcohol: string | null;
  readonly allergens: string;
  /** Where its brew is found. */
  readonly address: string;
}

/** One label: what it is, whose, how strong, what is in it, and the way to its brew. */
export function BottleLabel({ beer, brewer, packaged, alcohol, allergens, address }: BottleLabelProps) {
  return (
    <div className="label">
      <div>
        <p className="label-beer">{beer}</p>
        <p>
          {brewer}, {packaged}
        </p>
        {alcohol === null ? null : <p>alc. {alcohol}</p>}
        {allergens.trim() === "" ? null : <p>{allergens}</p>}
        <p>Contains alcohol: not for children or in pregnancy.</p>
      </div>
      <QrCode text={address} label={`QR code of ${beer}: ${address}`} />
    </div>
  );
}
