// Looks at what was found with no help from the program: every part once, inside, and a tree of edge-to-edge cuts.

/** Throws when a packing is none. */
export function check(problem, packed) {
  const seen = new Set();
  const fail = (what) => {
    throw new Error(`not a layout: ${what}`);
  };
  const walk = (piece, width, length) => {
    if (piece.part >= 0) {
      const way = problem.parts[piece.part].ways[piece.way];
      if (way.width > width || way.length > length) fail(`part ${piece.part} is larger than its place`);
      if (seen.has(piece.part)) fail(`part ${piece.part} is there twice`);
      seen.add(piece.part);
      return;
    }
    let used = 0;
    for (const kid of piece.kids) {
      used += piece.rip ? kid.width : kid.length;
      walk(kid, piece.rip ? kid.width : width, piece.rip ? length : kid.length);
    }
    if (used > (piece.rip ? width : length)) fail("strips need more than there is");
  };
  for (const { type, root } of packed) walk(root, problem.bins[type].width, problem.bins[type].length);
  if (seen.size !== problem.parts.length) fail(`${problem.parts.length - seen.size} parts are missing`);
}

/** The number of bins by shelves, the tallest part first, each on the first shelf that has room: a plain way to compare with. */
export function shelves({ bins: [bin], parts }) {
  const sheets = [];
  for (const { width, length } of parts.map(({ ways: [way] }) => way).toSorted((a, b) => b.length - a.length)) {
    let shelf = sheets
      .flatMap((sheet) => sheet.shelves)
      .find((each) => each.height >= length && each.used + width <= bin.width);
    if (shelf === undefined) {
      let sheet = sheets.find((each) => each.used + length <= bin.length);
      if (sheet === undefined) {
        sheet = { used: 0, shelves: [] };
        sheets.push(sheet);
      }
      sheet.used += length;
      shelf = { height: length, used: 0 };
      sheet.shelves.push(shelf);
    }
    shelf.used += width;
  }
  return sheets.length;
}
