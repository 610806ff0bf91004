/** What a zip's own list says of it. */
export interface ZipList {
  readonly entries: number;
  /** All entries together, unpacked. */
  readonly unpacked: number;
  /** An entry is said to unpack to nothing and does hold something: its size can't be relied on. */
  readonly unsized: boolean;
  readonly encrypted: boolean;
}

// Signatures and places after the .ZIP File Format Specification (APPNOTE), 4.3.12 and 4.3.16.
const END = 0x06054b50;
const END_BYTES = 22;
const LONGEST_COMMENT = 0xffff;
const HEADER = 0x02014b50;
const HEADER_BYTES = 46;

/** Reads the list at the end of a zip; undefined when there is none that is whole. */
export function zipList(bytes: Uint8Array): ZipList | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  if (end === undefined) return undefined;
  const entries = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const list = { entries, unpacked: 0, unsized: false, encrypted: false };
  for (let i = 0; i < entries; i++) {
    if (at + HEADER_BYTES > end || view.getUint32(at, true) !== HEADER) return undefined;
    const [packed, unpacked] = [view.getUint32(at + 20, true), view.getUint32(at + 24, true)];
    list.unpacked += unpacked;
    if (unpacked === 0 && packed > 2) list.unsized = true;
    if ((view.getUint16(at + 8, true) & 1) === 1) list.encrypted = true;
    at += HEADER_BYTES + namesLength(view, at);
  }
  return list;
}

/** Lengths of name, extra field and comment, which follow a header. */
const namesLength = (view: DataView, at: number): number =>
  [28, 30, 32].reduce((sum, place) => sum + view.getUint16(at + place, true), 0);

/** Where the record at the end begins: a comment may follow it. */
function endOf(view: DataView): number | undefined {
  const last = view.byteLength - END_BYTES;
  for (let at = last; at >= 0 && at >= last - LONGEST_COMMENT; at--)
    if (view.getUint32(at, true) === END) return at;
  return undefined;
}
