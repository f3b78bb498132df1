/** A line of the shopping list. Types only. */
export interface Purchase {
  readonly section: "sheets" | "lumber" | "hardware" | "fasteners" | "supplies";
  readonly item: string;
  readonly quantity: number;
  readonly unit: string;
  /** Of the whole line. */
  readonly price: number | null;
  /** Used up of what there is in the workshop, in what is counted: pieces, not boxes. */
  readonly onHand: number;
  /** Share of what is bought that does not end in parts, 0 to 1. */
  readonly waste: number;
  /** What is in one box or roll; absent: sold singly. */
  readonly content?: { readonly count: number; readonly of: string };
  /** What the reader should know when buying it; no sentence, without a full stop. */
  readonly note?: string;
}
