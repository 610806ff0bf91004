/** What a browser may be told of bytes, and whether it may show them in a page. */
export interface Media {
  readonly type: string;
  readonly inline: boolean;
}

/** First bytes of the kinds shown in a page: PNG (ISO/IEC 15948, 5.2) and JPEG (ITU-T T.81, B.1.1). */
const SHOWN: readonly { readonly type: string; readonly magic: readonly number[] }[] = [
  { type: 'image/png', magic: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] },
  { type: 'image/jpeg', magic: [0xff, 0xd8, 0xff] },
];

/** How many first bytes decide. */
export const MAGIC_LENGTH = 8;

/** Decided by the bytes, never by a name: anything but a picture is only ever saved. */
export function mediaOf(head: Uint8Array): Media {
  const shown = SHOWN.find(({ magic }) => magic.every((byte, i) => head[i] === byte));
  return shown
    ? { type: shown.type, inline: true }
    : { type: 'application/octet-stream', inline: false };
}
