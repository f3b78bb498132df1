import type { SourceFile } from "./source.ts";

export const lines = (file: SourceFile): number => file.text.split("\n").length - 1;

/** The value below which the share `part` of the numbers lies. */
export function quantile(numbers: readonly number[], part: number): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? 0;
}

/** A sentence for each way in which the files are longer than the budget. Tables of data are left out by path. */
export function overBudget(files: readonly SourceFile[], tables: readonly string[]): string[] {
  const counted = files.filter((file) => !tables.includes(file.path));
  const numbers = counted.map(lines);
  const [median, p90] = [quantile(numbers, 0.5), quantile(numbers, 0.9)];
  return [
    ...(median > 90 ? [`the median file has ${median} lines; the budget is 90`] : []),
    ...(p90 > 250 ? [`a tenth of the files has ${p90} lines or more; the budget is 250`] : []),
    ...counted
      .filter((file) => lines(file) > 250)
      .map((file) => `${file.path} has ${lines(file)} lines; the budget is 250`),
  ];
}
