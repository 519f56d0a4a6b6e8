/** Linear thermal expansion of what kettles are made of, near 20 °C, 1/K (docs/sources.md#crc-handbook). */
export const LINEAR_EXPANSION = {
  "stainless steel": 17.3e-6,
  aluminium: 23.1e-6,
  copper: 16.5e-6,
} as const;

export type VesselMaterial = keyof typeof LINEAR_EXPANSION;
