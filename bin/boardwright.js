#!/usr/bin/env node
import { existsSync } from "node:fs";

const bundle = new URL("../dist/boardwright.js", import.meta.url);

function stop(message) {
  console.error(message);
  process.exit(2);
}
const [major] = process.versions.node.split(".");
if (Number(major) < 20) stop(`boardwright needs Node.js 20 or newer; this is ${process.version}.`);
if (!existsSync(bundle)) stop('boardwright is not built yet; "npm run example" builds it.');

const { start } = await import(bundle.href);
await start(new URL("..", import.meta.url));
