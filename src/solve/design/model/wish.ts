/** The maker's wishes and notes, with the parts that they are about. Types only. */
import type { Span } from "../../../findings/span.ts";
import type { NoteDraft, SubjectDraft, Verb } from "../../../parse/draft.ts";

export interface Subject extends Pick<SubjectDraft, "at" | "said"> {
  readonly verb?: Verb;
  readonly cuts?: readonly string[];
  /** Null: any part. */
  readonly parts: readonly string[] | null;
}

export type Wish = { readonly at: Span } & (
  | { readonly kind: "before"; readonly first: readonly Subject[]; readonly next: readonly Subject[] }
  | { readonly kind: "first" | "last"; readonly what: readonly Subject[] }
  | { readonly kind: "dry fit"; readonly parts: readonly string[]; readonly check?: string }
  | { readonly kind: "unit"; readonly parts: readonly string[]; readonly said: string }
  | { readonly kind: "one step"; readonly what: readonly Subject[]; readonly title?: string }
  | { readonly kind: "own step"; readonly what: Subject }
  | { readonly kind: "title"; readonly step: Subject; readonly title: string }
);

export interface Note extends Omit<NoteDraft, "about"> {
  readonly about: Subject;
}
