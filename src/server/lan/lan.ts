import type { LanCertificate } from './certificate.ts';
import type { PairedDevice, PairedDevices } from './paired-devices.ts';
import type { PairingCodes } from './pairing-code.ts';

/** A server on the network: what it shows, and whom it lets in. */
export interface Lan {
  readonly certificate: LanCertificate;
  readonly codes: PairingCodes;
  readonly devices: PairedDevices;
  /** Addresses to open, with the port: `https://192.168.1.7:4271`. */
  readonly addresses: readonly string[];
  /** Told of each device that was let in. */
  readonly paired: (device: PairedDevice) => void;
}
