/** The little of fontkit that the tests read. */
declare module "fontkit" {
  export interface Font {
    readonly characterSet: readonly number[];
    readonly familyName: string;
    readonly name: { readonly records: { readonly [key: string]: { readonly en: string } | undefined } };
  }
  export function create(bytes: Uint8Array): Font;
}
