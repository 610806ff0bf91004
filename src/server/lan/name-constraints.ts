/**
 * Names that an authority may vouch for (RFC 5280, 4.2.1.10), written in DER: whoever stole its
 * key could pass for addresses of private networks with it, and for nothing else.
 */
export function nameConstraints(dnsNames: readonly string[]): Uint8Array {
  const names = dnsNames.map((name) => der(DNS_NAME, Buffer.from(name, 'ascii')));
  const addresses = PRIVATE.map(([address, mask]) =>
    der(IP_ADDRESS, Buffer.from([...address, ...mask])),
  );
  const permitted = [...names, ...addresses].map((base) => der(SEQUENCE, base));
  return der(SEQUENCE, der(PERMITTED, Buffer.concat(permitted)));
}

export const NAME_CONSTRAINTS_OID = '2.5.29.30';

const SEQUENCE = 0x30;
const PERMITTED = 0xa0;
/** Kinds 2 and 7 of a GeneralName. */
const DNS_NAME = 0x82;
const IP_ADDRESS = 0x87;

/** Address and mask of private networks (RFC 1918), of links (RFC 3927) and of this machine. */
const PRIVATE: readonly (readonly [readonly number[], readonly number[]])[] = [
  [
    [10, 0, 0, 0],
    [255, 0, 0, 0],
  ],
  [
    [172, 16, 0, 0],
    [255, 240, 0, 0],
  ],
  [
    [192, 168, 0, 0],
    [255, 255, 0, 0],
  ],
  [
    [169, 254, 0, 0],
    [255, 255, 0, 0],
  ],
  [
    [127, 0, 0, 0],
    [255, 0, 0, 0],
  ],
];

/** A tag with its length (X.690, 8.1.3) and content. */
function der(tag: number, content: Uint8Array): Uint8Array {
  const { length } = content;
  const size =
    length < 0x80 ? [length] : length < 0x100 ? [0x81, length] : [0x82, length >> 8, length & 0xff];
  return Buffer.concat([Buffer.from([tag, ...size]), content]);
}

/** Whether an IPv4 address is of a network that the constraints permit. */
export function isPrivate(address: string): boolean {
  const bytes = address.split('.').map(Number);
  return PRIVATE.some(([net, mask]) =>
    net.every((byte, i) => ((bytes[i] ?? 0) & (mask[i] ?? 0)) === byte),
  );
}
