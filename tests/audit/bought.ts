/** What a record says of layouts and purchases, as the auditor reads it. */
export interface Rectangle {
  x: number;
  y: number;
  width: number;
  length: number;
}
export interface Layout {
  stock: string;
  kind: string;
  source: string;
  piece?: string | null;
  /** Of this sheet or board. */
  price?: number | null;
  thickness: number;
  width: number;
  length: number;
  kerf: number;
  squaring: number;
  placements: ({ blank: string; mark: string; turned: boolean } & Rectangle)[];
  cuts: { number: number; kind: string; from: [number, number]; to: [number, number]; fence: number }[];
  offcuts: Rectangle[];
}
export interface Proof {
  stocks: string[];
  count: number;
  countBound: number;
  cost: number | null;
  costBound: number | null;
  optimal: boolean;
  method: string;
  assumes: string;
}
export interface Purchase {
  section: string;
  item: string;
  quantity: number;
  unit: string;
  price: number | null;
  onHand: number;
  waste: number;
  /** What is in one box or roll. */
  content?: { count: number; of: string } | null;
  note?: string;
}
