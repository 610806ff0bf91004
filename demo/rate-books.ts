import type { RateBook, RateCell } from '../src/study/index.ts';
import { ALUMINIUM, RATES, type WrittenRate } from './source/rates.ts';

const SECONDS_PER_HOUR = 3600;

/** Hourly rates are held per second; the other kinds are written in SI already. */
const toSi = (rate: WrittenRate, x: number): number =>
  rate.kind === 'moneyPerTime' ? x / SECONDS_PER_HOUR : x;

const round = (x: number): number => Number(x.toPrecision(12));

function rateCell(rate: WrittenRate, factor: number): RateCell {
  const at = (x: number): number => round(toSi(rate, x * factor));
  return {
    // The same in both versions: what makes a price wrong in one makes it wrong in the other.
    cause: `van-27 ${rate.id}`,
    id: rate.id,
    words: rate.words,
    kind: rate.kind,
    x: at(rate.mode),
    spread: { s: 'triangular', low: at(rate.low), high: at(rate.high) },
    how: rate.how,
    source: rate.how === 'supplied' ? 'VAN-27 brief (invented)' : 'invented for the demo',
    match: rate.match,
  };
}

const FROM_LABOUR = 1.12;
const FROM_ALUMINIUM = 1.09;

/** What R2 multiplies a rate of R1 by. */
function raisedBy(id: string): number {
  if (id === 'rate/labour') return FROM_LABOUR;
  return (ALUMINIUM as readonly string[]).includes(id) ? FROM_ALUMINIUM : 1;
}

function rateBook(version: string, date: string, factor: (id: string) => number): RateBook {
  return {
    id: `van-27-${version}`,
    version,
    region: 'nowhere (invented)',
    date,
    currency: 'u',
    volumePerYear: 60_000,
    years: 5,
    invented: true,
    cells: RATES.map((rate) => rateCell(rate, factor(rate.id))),
  };
}

/** The two versions of the made-up rate book, in the coherent SI units of their kinds. */
export const rateBooks = (): readonly [RateBook, RateBook] => [
  rateBook('R1', '2026-03-02', () => 1),
  rateBook('R2', '2026-09-01', raisedBy),
];

/** A rate book as JSON, one cell a line so that two versions can be compared by eye. */
export function formatRateBook(book: RateBook): string {
  const { cells, ...head } = book;
  const open = JSON.stringify(head, null, 2).replace(/\n\}$/, ',');
  const lines = cells.map((cell) => `    ${JSON.stringify(cell)}`);
  return `${open}\n  "cells": [\n${lines.join(',\n')}\n  ]\n}\n`;
}
