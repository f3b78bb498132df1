/** Gives a TrueType file another name: a new `name` table and the checksums that follow. The copyright and the licence stay. */
const kept = new Set([0, 13, 14]);

export function rename(input, family, style) {
  const view = new DataView(input.buffer, input.byteOffset, input.byteLength);
  const count = view.getUint16(4);
  const tables = Array.from({ length: count }, (_, i) => {
    const at = 12 + 16 * i;
    const tag = String.fromCharCode(...input.subarray(at, at + 4));
    const offset = view.getUint32(at + 8);
    return { tag, bytes: Buffer.from(input.subarray(offset, offset + view.getUint32(at + 12))) };
  });
  const names = tables.find((t) => t.tag === "name");
  names.bytes = nameTable(names.bytes, family, style);
  return assemble(Buffer.from(input.subarray(0, 12)), tables);
}

function nameTable(old, family, style) {
  const texts = new Map([
    [1, style === "SemiBold" ? `${family} SemiBold` : family],
    [2, style === "Italic" ? "Italic" : "Regular"],
    [3, `${family} ${style}`],
    [4, `${family} ${style}`],
    [5, "Version 1.000"],
    [6, `${family.replaceAll(" ", "")}-${style}`],
  ]);
  const storage = old.readUInt16BE(4);
  for (let i = 0; i < old.readUInt16BE(2); i++) {
    const at = 6 + 12 * i;
    const id = old.readUInt16BE(at + 6);
    if (old.readUInt16BE(at) !== 3 || !kept.has(id)) continue;
    const from = storage + old.readUInt16BE(at + 10);
    const bytes = Buffer.from(old.subarray(from, from + old.readUInt16BE(at + 8)));
    texts.set(id, bytes.swap16().toString("utf16le"));
  }
  const records = [...texts]
    .sort(([a], [b]) => a - b)
    .map(([id, text]) => ({ id, bytes: Buffer.from(text, "utf16le").swap16() }));
  const head = Buffer.alloc(6 + 12 * records.length);
  head.writeUInt16BE(records.length, 2);
  head.writeUInt16BE(head.length, 4);
  let offset = 0;
  records.forEach(({ id, bytes }, i) => {
    [3, 1, 0x409, id, bytes.length, offset].forEach((value, field) => {
      head.writeUInt16BE(value, 6 + 12 * i + 2 * field);
    });
    offset += bytes.length;
  });
  return Buffer.concat([head, ...records.map((r) => r.bytes)]);
}

const padded = (bytes) => Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);
const checksum = (bytes) => {
  let sum = 0;
  for (let i = 0; i < bytes.length; i += 4) sum = (sum + bytes.readUInt32BE(i)) >>> 0;
  return sum;
};

function assemble(header, tables) {
  const head = tables.find((t) => t.tag === "head");
  head.bytes.writeUInt32BE(0, 8);
  const directory = Buffer.alloc(16 * tables.length);
  let offset = 12 + directory.length;
  tables.forEach(({ tag, bytes }, i) => {
    directory.write(tag, 16 * i, "latin1");
    directory.writeUInt32BE(checksum(padded(bytes)), 16 * i + 4);
    directory.writeUInt32BE(offset, 16 * i + 8);
    directory.writeUInt32BE(bytes.length, 16 * i + 12);
    offset += padded(bytes).length;
  });
  const whole = Buffer.concat([header, directory, ...tables.map((t) => padded(t.bytes))]);
  const at = directory.readUInt32BE(16 * tables.indexOf(head) + 8);
  whole.writeUInt32BE((0xb1b0afba - checksum(whole)) >>> 0, at + 8);
  return whole;
}
