/**
 * The moisture that wood comes to in air of a temperature (°C) and a relative humidity (0 to 1, below 1), in % of its dry weight.
 * Two hydrates of water in wood, Hailwood and Horrobin; constants of Simpson, FPL-RN-0268 (1998), which is Wood Handbook
 * FPL-GTR-190, Eq. 4-5, for degrees Celsius, from a reproduction. Over the Handbook's Table 4-2 (30 to 130 °F, 5 to 85 %) it is within 0.06.
 */
export function equilibriumMoisture(celsius: number, humidity: number): number {
  const t = celsius;
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = k * humidity;
  const dissolved = kh / (1 - kh);
  const hydrated = (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh);
  return (1800 / w) * (dissolved + hydrated);
}
