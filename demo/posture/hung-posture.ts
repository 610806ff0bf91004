import { VAN_27 } from '../source/van-27.ts';
import { rootOf } from './newton.ts';
import { carried, length, minus, plus, turned, type Xyz } from './xyz.ts';

export type PointName = keyof typeof VAN_27.chassis.rearFiveLink.pointsMm;

const KERB: Readonly<Record<PointName, Xyz>> = VAN_27.chassis.rearFiveLink.pointsMm;

const LINKS = [
  'lower front link',
  'spring link',
  'toe link',
  'camber link',
  'trailing link',
] as const;

/** Rigid motion of the knuckle: small turns about X, Y, Z in rad, applied in that order, and a shift in mm. */
type Motion = readonly number[];

/** Where a point of the knuckle goes, turning about the wheel centre. */
function moved(p: Xyz, [a = 0, b = 0, c = 0, x = 0, y = 0, z = 0]: Motion): Xyz {
  const hub = KERB['wheel centre'];
  return plus(plus(hub, turned(minus(p, hub), [a, b, c])), [x, y, z]);
}

/** Five link lengths gained and the wheel centre's height above where it should be: all 0 when solved. */
function residuals(motion: Motion, dropMm: number): number[] {
  const gained = LINKS.map((link) => {
    const [outer, inner] = [KERB[`${link} outer`], KERB[`${link} inner`]];
    return length(minus(moved(outer, motion), inner)) - length(minus(outer, inner));
  });
  return [...gained, (motion[5] ?? 0) + dropMm];
}

/** What stands on the spring link is carried along as its outer end goes where the knuckle takes it, without rolling. */
function onSpringLink(p: Xyz, outerNow: Xyz): Xyz {
  const inner = KERB['spring link inner'];
  const before = minus(KERB['spring link outer'], inner);
  return plus(inner, carried(minus(p, inner), before, minus(outerNow, inner)));
}

/**
 * The rear five-link's points, right side, in mm, with the wheel hanging `dropMm` below kerb
 * height: links and knuckle rigid, inner ends and upper seats where they were.
 * @throws when the links do not reach.
 */
export function hungPoints(dropMm: number): Record<PointName, Xyz> {
  const motion = rootOf((m) => residuals(m, dropMm), [0, 0, 0, 0, 0, -dropMm]);
  const outer = moved(KERB['spring link outer'], motion);
  const onLink = VAN_27.chassis.rearFiveLink.onSpringLink as readonly string[];
  const place = (name: PointName): Xyz => {
    if (onLink.includes(name)) return onSpringLink(KERB[name], outer);
    const onKnuckle = name === 'wheel centre' || name.endsWith('outer');
    return onKnuckle ? moved(KERB[name], motion) : KERB[name];
  };
  const names = Object.keys(KERB) as PointName[];
  return Object.fromEntries(names.map((n) => [n, place(n)])) as Record<PointName, Xyz>;
}
