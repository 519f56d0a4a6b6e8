import { z } from "zod";
import { counted } from "../measured";
import { recordId, written } from "../written";

export const KEY_DAYS = { min: 1, max: 400, usual: 365 } as const;
/** As many keys as one member has at once in a club. */
export const MOST_KEYS = 20;

const ALL_BREWS = "";

export const newSensorKey = z.strictObject({
  name: written("Name of the sensor", 80),
  /** Empty: every brew that the member may write to. */
  brewId: z.union([z.literal(ALL_BREWS), recordId]).transform((id) => (id === ALL_BREWS ? null : id)),
  days: counted("Days until it expires", KEY_DAYS),
});
export type NewSensorKey = z.output<typeof newSensorKey>;

export const sensorKeyId = z.strictObject({ id: recordId });

/** A key as its owner sees it; the secret itself is shown once, when it is made. */
export interface SensorKey {
  readonly id: string;
  readonly name: string;
  /** null: every brew of its owner. */
  readonly brew: { readonly id: string; readonly title: string } | null;
  readonly createdAt: Date;
  readonly expiresAt: Date;
  readonly revokedAt: Date | null;
  readonly lastUsedAt: Date | null;
}
