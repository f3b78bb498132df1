#!/usr/bin/env node
const major = Number(process.versions.node.split(".")[0]);
if (major < 20) {
  console.error(`boardwright needs Node.js 20 or newer; this is ${process.version}.`);
  process.exit(2);
}
const { start } = await import("../dist/boardwright.js");
await start(new URL("..", import.meta.url));
