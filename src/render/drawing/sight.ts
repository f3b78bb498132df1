/** What is seen of items some of which are glass: what stands behind a pane shows, and the pane is hidden by what stands before it. */
import {
  type HiddenLineOptions,
  hiddenLines,
  type Placed,
  Stage,
  type View,
  visibleFaces,
} from "../../geometry/picture/index.ts";
import type { PictureItem, VisibleFace } from "../../geometry/types.ts";

export class Sight {
  /** Of what cannot be seen through. */
  readonly stage: Stage;
  private readonly items: readonly Placed[];
  private readonly clear: ReadonlySet<string>;
  /** Of everything: panes hide one another, and their own backs. */
  private readonly whole: Stage;

  /** `clear`: ids of what is glass. */
  constructor(items: readonly Placed[], view: View, clear: ReadonlySet<string>) {
    this.items = items;
    this.clear = clear;
    const solid = items.filter(({ id }) => !clear.has(id));
    this.whole = new Stage(items, view);
    this.stage = solid.length === items.length ? this.whole : new Stage(solid, view);
  }

  /** One entry for each item, in their order. */
  lines(options: HiddenLineOptions = {}): readonly PictureItem[] {
    return this.each((items, stage) => hiddenLines(items, stage.view, options, stage));
  }

  /** The faces of everything, those of glass last. */
  faces(): readonly VisibleFace[] {
    return [...visibleFaces(this.solid, this.stage.view, this.stage), ...this.panes()];
  }

  /** The faces of glass alone. */
  panes(): readonly VisibleFace[] {
    return this.glass.length === 0 ? [] : visibleFaces(this.glass, this.whole.view, this.whole);
  }

  private get solid(): readonly Placed[] {
    return this.items.filter(({ id }) => !this.clear.has(id));
  }
  private get glass(): readonly Placed[] {
    return this.items.filter(({ id }) => this.clear.has(id));
  }

  private each<T>(take: (items: readonly Placed[], stage: Stage) => readonly T[]): readonly T[] {
    const { solid, glass } = this;
    if (glass.length === 0) return take(solid, this.stage);
    const [one, other] = [take(solid, this.stage), take(glass, this.whole)].map((all) => all[Symbol.iterator]());
    return this.items.map(({ id }) => (this.clear.has(id) ? other : one)?.next().value as T);
  }
}
