// How the program's TypeScript becomes JavaScript that Node 20 runs: one bundle, split where the code says import().
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

/** The project's folder. */
export const root = fileURLToPath(new URL("..", import.meta.url));

/** fontkit wants brotli for WOFF2 only, which is never read here: a third of the bundle for nothing. */
const withoutBrotli = {
  name: "without-brotli",
  setup(on) {
    on.onResolve({ filter: /^brotli(\/|$)/ }, () => ({ path: "brotli", namespace: "left-out" }));
    on.onLoad({ filter: /.*/, namespace: "left-out" }, () => ({
      contents: "module.exports = () => { throw new Error('WOFF2 fonts are not read'); };",
    }));
  },
};

/** Packages in CommonJS ask for Node's own modules with require, which a module does not have. */
const banner = "import { createRequire as $require } from 'node:module'; const require = $require(import.meta.url);";

/** Bundles `entryPoints` (name to path from the project's root) into `outdir`. */
export function bundle(entryPoints, outdir, options = {}) {
  return build({
    entryPoints,
    outdir,
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "node",
    target: "node20",
    minify: true,
    legalComments: "external",
    banner: { js: banner },
    plugins: [withoutBrotli],
    logLevel: "warning",
    absWorkingDir: root,
    ...options,
  });
}
