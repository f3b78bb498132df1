/** The kinds of wooden buttons of a piece, each with a name by which the steps speak of it. */
import { inches, type Length, millimetres } from "../../units/length.ts";
import { add } from "../../units/rational.ts";
import { roundTo } from "../../units/round.ts";
import type { Button, Fastener, Joint, Units } from "../design.ts";
import { sitsAt } from "./drilling/sits-at.ts";

export interface ButtonKind {
  /** "button 1"; with a capital where it begins a sentence. */
  readonly id: string;
  /** As it is bought. */
  readonly item: string;
  readonly button: Button;
  /** That its hole is bored with. */
  readonly bit: Length;
  readonly fasteners: readonly Fastener[];
  /** Ids of the rails that it sits at, and of what it holds. */
  readonly rails: readonly string[];
  readonly holds: readonly string[];
}

type Buttoned = Fastener & { readonly button: Button; readonly with: readonly string[] };

export const isButtoned = (fastener: Fastener): fastener is Buttoned =>
  fastener.button !== undefined && fastener.with !== undefined;

/** A little wider than the screw, to a bit that is sold (common practice, no source). */
const PLAY = { inch: inches(1, 128), mm: millimetres(1, 5) } as const;
const BIT = { inch: inches(1, 64), mm: millimetres(1, 2) } as const;

/** In the order in which they are first needed. */
export function buttonKinds(
  fasteners: readonly Fastener[],
  joints: readonly Joint[],
  units: Units,
): readonly ButtonKind[] {
  const kinds = new Map<string, Buttoned[]>();
  for (const each of fasteners.filter(isButtoned)) {
    const key = each.with.join();
    kinds.set(key, [...(kinds.get(key) ?? []), each]);
  }
  return [...kinds.values()].map((own, i) => {
    const [first] = own as [Buttoned];
    return {
      id: `button ${i + 1}`,
      item: first.with.join(),
      button: first.button,
      bit: roundTo(add(first.rod, PLAY[units]), BIT[units], "up"),
      fasteners: own,
      rails: [...new Set(own.flatMap((each) => sitsAt(joints, each)))],
      holds: [...new Set(own.map(({ into }) => into))],
    };
  });
}
