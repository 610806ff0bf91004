import { expect, test } from 'vitest';
import { PairingCodes } from '../../src/server/lan/pairing-code.ts';

test('a code is good once, with or without its blank', () => {
  const codes = new PairingCodes();
  const { code } = codes.issue();
  expect(codes.take(code.replace(' ', ''))).toBe(true);
  expect(codes.take(code)).toBe(false);
});

test('a code is good for ten minutes', () => {
  let now = Date.UTC(2026, 0, 5, 8);
  const codes = new PairingCodes(() => now);
  const first = codes.issue();
  expect(first.expires).toBe('2026-01-05T08:10:00.000Z');
  now += 599_000;
  expect(codes.take(first.code)).toBe(true);
  const second = codes.issue();
  now += 600_000;
  expect(codes.take(second.code)).toBe(false);
});

test('a fresh code puts the one before out', () => {
  const codes = new PairingCodes();
  const [first, second] = [codes.issue(), codes.issue()];
  if (first.code !== second.code) expect(codes.take(first.code)).toBe(false);
  expect(codes.take(second.code)).toBe(true);
});

test('ten wrong codes make the right one void', () => {
  const codes = new PairingCodes();
  const { code } = codes.issue();
  const wrong = code === '0000 0000' ? '00000001' : '00000000';
  for (let i = 0; i < 9; i++) expect(codes.take(wrong)).toBe(false);
  expect(codes.take(wrong)).toBe(false);
  expect(codes.take(code)).toBe(false);
});

test('none is good before one was made, the empty one neither', () => {
  const codes = new PairingCodes();
  expect(codes.take('')).toBe(false);
  codes.issue();
  expect(codes.take('')).toBe(false);
});
