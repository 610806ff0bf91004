import rateLimit from '@fastify/rate-limit';
import { RefusalError } from '../../study/index.ts';
import { devicePath, devicesAnswer, pairAnswer, pairingAnswer, pairPost } from '../contract.ts';
import type { Lan } from '../lan/lan.ts';
import { FAILURES, type Scope } from './route.ts';

/** Tries a minute from one address, right or wrong. */
const TRIES = 10;

/** On the network, without sign-in: a code for a token. */
export async function addPair(scope: Scope, lan: Lan): Promise<void> {
  await scope.register(rateLimit, { global: false });
  const countTry = scope.createRateLimit({ max: TRIES, timeWindow: 60_000 });
  scope.post(
    '/pair',
    {
      schema: {
        summary: 'Signs a device in by the code that the desk shows; gives out its token once',
        body: pairPost,
        response: { 200: pairAnswer, ...FAILURES },
      },
    },
    async (request) => {
      const count = await countTry(request);
      if (!count.isAllowed && count.isExceeded) throw tooMany(count.ttlInSeconds);
      const { code, name } = request.body;
      if (!lan.codes.take(code)) throw wrongCode();
      const { device, token } = await lan.devices.add(name);
      lan.paired(device);
      return { token, device };
    },
  );
}

/** On this machine, signed in: codes, and the devices that were paired. */
export function addPairing(scope: Scope, lan: Lan | undefined): void {
  scope.post(
    '/pairing',
    {
      schema: {
        summary: 'A fresh code for the next device, and where it can be typed',
        response: { 200: pairingAnswer, ...FAILURES },
      },
    },
    async () => {
      const { codes, addresses, certificate } = lan ?? notOnNetwork();
      return { ...codes.issue(), addresses, fingerprint: certificate.fingerprint };
    },
  );
  scope.get(
    '/devices',
    {
      schema: {
        summary: 'Devices that may sign in',
        response: { 200: devicesAnswer, ...FAILURES },
      },
    },
    async () => ({ devices: await (lan ?? notOnNetwork()).devices.list() }),
  );
  scope.delete(
    '/devices/:device',
    {
      schema: {
        summary: 'Lets a device in no more',
        params: devicePath,
        response: { 200: devicesAnswer, ...FAILURES },
      },
    },
    async ({ params }) => {
      const { devices } = lan ?? notOnNetwork();
      if (!(await devices.forget(params.device))) throw noDevice(params.device);
      return { devices: await devices.list() };
    },
  );
}

const wrongCode = (): RefusalError =>
  new RefusalError({
    code: 'not-signed-in',
    place: { column: 'code' },
    why: 'this is not the code, or it is used up or over ten minutes old',
    next: 'Read it again at the desk, or have a fresh one made there.',
  });

const tooMany = (seconds: number): RefusalError =>
  new RefusalError({
    code: 'busy',
    place: { column: 'code' },
    why: 'too many codes were tried from this device',
    next: `Wait ${seconds} s, then read the code again at the desk.`,
  });

function notOnNetwork(): never {
  throw new RefusalError({
    code: 'not-found',
    place: {},
    why: 'the server is not on the network',
    next: 'Start it with: hoistside serve --lan.',
  });
}

const noDevice = (id: string): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: { column: 'device' },
    value: id,
    why: 'no device of this id is paired',
    next: 'See GET /api/devices.',
  });
