/** What is known of how few boards or sheets can do. */
export interface LayoutProof {
  readonly stocks: readonly string[];
  /** Boards or sheets that are bought, and the fewest that can do. */
  readonly count: number;
  readonly countBound: number;
  /** Cents for what is bought, and a sum below which no purchase can come; absent where prices are not known. */
  readonly cost?: number;
  readonly costBound?: number;
  /** True only when the bound is reached: that of the cost where there is one, else that of the count. */
  readonly optimal: boolean;
  readonly method: string;
  readonly assumes: string;
}
