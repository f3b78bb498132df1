/**
 * The only door to files, environment and terminal. The commands are handed a World; `process-world.ts` is the real one.
 * What cannot be read or written is a `Misuse` with words for the maker.
 */
export interface World {
  readonly version: string;
  readonly out: Stream;
  readonly err: Stream;
  /** The value of an environment variable; an empty one counts as not set. */
  env(name: string): string | undefined;
  /** Standard input for "-", else the file; at most `limit` bytes, whatever more there is. */
  read(path: string, limit: number): Promise<Uint8Array>;
  /** One of the program's own files, from `assets`. */
  asset(path: string): Uint8Array;
  /** Makes folders that are not there yet, and those they stand in. */
  folders(paths: readonly string[]): void;
  /** All of the files or, when one cannot be written, none. */
  write(outputs: readonly Output[], rules: WriteRules): void;
}

export interface Stream {
  readonly isTerminal: boolean;
  /** Columns of the terminal; 80 where there is none. */
  readonly columns: number;
  /** Resolves when it is written, or when nobody reads any more. */
  write(data: string | Uint8Array): Promise<void>;
}

export interface Output {
  readonly path: string;
  readonly bytes: Uint8Array;
}

export interface WriteRules {
  /** Files that must not be written over. */
  readonly sources: readonly string[];
  /** Whether a file that is already there may be replaced. */
  readonly replace: boolean;
}
