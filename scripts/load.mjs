// Lets a script import the program's TypeScript: bundled into out/, with the packages left where they are.
import { createHash } from "node:crypto";
import { pathToFileURL } from "node:url";
import { bundle, root } from "./bundle.mjs";

/** The exports of a TypeScript file, given from the project's root. */
export async function load(path) {
  const name = createHash("sha256").update(path).digest("hex").slice(0, 16);
  const outdir = `out/load/${process.pid}`;
  await bundle({ [name]: path }, outdir, { packages: "external", minify: false, splitting: false });
  return import(pathToFileURL(`${root}${outdir}/${name}.js`).href);
}
