import { expect, test } from "vitest";
import { main } from "../../src/cli/main.ts";
import { fakeWorld } from "./fake-world.ts";

const run = async (args: readonly string[], world = fakeWorld()) => ({
  exit: await main(args, world),
  out: world.printed(),
  err: world.told(),
});

test("help goes to standard output, names every command and the exit status, and fits the terminal", async () => {
  for (const args of [["--help"], ["help"]]) {
    const { exit, out, err } = await run(args, fakeWorld({ terminal: { columns: 60 } }));
    expect([exit, err]).toEqual([0, ""]);
    for (const command of ["build", "check", "explain", "schema", "new"]) expect(out).toContain(`\n  ${command} `);
    expect(out).toContain("Exit status: 0 done, 1");
    const widest = Math.max(...out.split("\n").map((line) => line.length));
    expect(widest).toBeLessThanOrEqual(60);
  }
  expect((await run(["build", "--help"])).out).toContain("--paper <size>");
  expect((await run(["--version"])).out).toBe("1.2.3\n");
});

test("no command at all is wrong use, and shows the help", async () => {
  const { exit, out, err } = await run([]);
  expect([exit, out]).toEqual([2, ""]);
  expect(err).toContain("Usage: boardwright");
});

test.each([
  [["buidl", "a.yaml"], /unknown command 'buidl'\n\(Did you mean build\?\)/],
  [["build"], /missing required argument 'plan'/],
  [["build", "a.yaml", "b.yaml"], /too many arguments/],
  [["build", "a.yaml", "--papr", "a4"], /unknown option '--papr'\n\(Did you mean --paper\?\)/],
  [["build", "a.yaml", "--paper", "legal"], /--paper may be letter or a4, not "legal"/],
  [["build", "a.yaml", "-o"], /argument missing/],
  [["check", "a.yaml", "--format", "xml"], /--format may be text, short or json, not "xml"/],
  [["check", "a.yaml", "--set", "width"], /--set needs a name and a value, such as --set width=48, not "width"/],
  [["check", "a.yaml", "--set", "=48"], /--set needs a name and a value/],
  [["check", ""], /the plan has no name/],
  [["check", "missing.yaml"], /error: missing\.yaml: there is no such file or folder/],
  [["build", "missing.yaml", "-o", "-", "--record", "-"], /only one output can go to standard output/],
])("%j is wrong use, told in words", async (args, message) => {
  const { exit, out, err } = await run(args);
  expect([exit, out]).toEqual([2, ""]);
  expect(err).toMatch(message);
});

test("a PDF is not sent to a terminal", async () => {
  const { exit, err } = await run(["build", "-"], fakeWorld({ terminal: { columns: 80 } }));
  expect(exit).toBe(2);
  expect(err).toContain("name a file with -o");
});

test("words from outside cannot steer the terminal", async () => {
  const trick = "\u001b]0;gone\u0007\u009b2J\u202e";
  for (const args of [[trick], ["check", trick], ["check", "a.yaml", "--format", trick], ["explain", trick]]) {
    const { exit, err } = await run(args);
    expect(exit).toBe(2);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not come through
    expect(err).not.toMatch(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202e]/);
    expect(err).toContain("gone");
  }
});

test("a fault of the program is told as one, without a stack trace unless DEBUG asks for it", async () => {
  const broken = (env: Record<string, string>) => ({
    ...fakeWorld({ env }),
    read: () => Promise.reject(new TypeError("x is not a function")),
  });
  const quiet = await run(["check", "a.yaml"], broken({}));
  expect(quiet.exit).toBe(70);
  expect(quiet.err).toMatch(/fault in boardwright[\s\S]*TypeError: x is not a function[\s\S]*1\.2\.3/);
  expect(quiet.err).not.toMatch(/^\s+at /m);
  expect((await run(["check", "a.yaml"], broken({ DEBUG: "1" }))).err).toMatch(/^\s+at /m);
});
