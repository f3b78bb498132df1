/**
 * Pages of device-independent drawing commands. Page builders write a Document, the writers only replay it, tests read it. Types only.
 * Lengths are points (1/72 in), the origin is the top left corner of the page, y runs down. Text stands on its baseline.
 */
export interface Document {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly language: "en-US";
  /** ISO date from the plan's edition or the caller; never the clock. */
  readonly date: string;
  /** Program and version, for the file's metadata. */
  readonly producer: string;
  readonly paper: Paper;
  readonly pages: readonly Page[];
}

export interface Paper {
  readonly name: "letter" | "a4";
  readonly width: number;
  readonly height: number;
}

export interface Page {
  readonly number: number;
  /** "cover", "views", "exploded", "buy", "cut list", "layouts", "steps" ... */
  readonly kind: string;
  /** What it shows: "step 4", "stock rails". */
  readonly of: readonly string[];
  readonly items: readonly Item[];
}

/** Red, green, blue, each 0 to 1. */
export type Ink = readonly [number, number, number];

export type Font = "regular" | "bold" | "italic";

export interface Stroke {
  readonly width: number;
  readonly ink: Ink;
  /** Lengths of dash and gap in turn; absent: solid. */
  readonly dash?: readonly number[];
  readonly cap?: "butt" | "round";
}

export type PathStep =
  | { readonly to: "move"; readonly x: number; readonly y: number }
  | { readonly to: "line"; readonly x: number; readonly y: number }
  | {
      readonly to: "curve";
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly to: "close" };

export type Item =
  | { readonly kind: "path"; readonly steps: readonly PathStep[]; readonly stroke?: Stroke; readonly fill?: Ink }
  | {
      readonly kind: "text";
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly font: Font;
      readonly size: number;
      readonly ink: Ink;
      /** Degrees counter-clockwise about (x, y). */
      readonly turn?: number;
      /** Advance width as measured when it was set. */
      readonly width: number;
      /** Name of an anchor: its page is added where that is neither this page nor the one before. */
      readonly cites?: string;
    }
  | {
      readonly kind: "link";
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly to: string;
    }
  | {
      readonly kind: "anchor";
      readonly name: string;
      readonly y: number;
      /** Entry of the bookmarks; level 2 stands below the last of level 1. */
      readonly bookmark?: { readonly title: string; readonly level: 1 | 2 };
    }
  | {
      readonly kind: "group";
      readonly role: Role;
      readonly alt?: string;
      /** What a figure shows, for the name of its file: "step 4". */
      readonly about?: string;
      readonly items: readonly Item[];
    };

/** What a group means to a reader who cannot see the page. */
export type Role =
  | "heading 1"
  | "heading 2"
  | "paragraph"
  | "list"
  | "list item"
  | "figure"
  | "table"
  | "row"
  | "header cell"
  | "cell"
  | "decoration";
