/** Prints the SHA-256 of the bench's plan. Run in processes with different surroundings. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { render } from "../../../src/render/index.ts";
import { writePdf } from "../../../src/render/write/pdf.ts";
import { bench } from "../fixture/bench.ts";

const folder = process.argv[2] ?? "";
const file = (font: string): Uint8Array => readFileSync(`${folder}/${font}.ttf`);
const { value } = render(bench(), { paper: "letter", date: "2025-03-01", version: "0.0.0" });
if (value === undefined) throw new Error("no document");
const bytes = await writePdf(value, { regular: file("regular"), bold: file("bold"), italic: file("italic") });
process.stdout.write(createHash("sha256").update(bytes).digest("hex"));
