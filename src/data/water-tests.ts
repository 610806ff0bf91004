/**
 * Water tests of enclosures by their code: IEC 60529 (second numeral 5 to 7) and ISO 20653 (9K).
 * Immersion names a depth and a time, jets a flow and a time over the surface.
 */
export interface WaterTest {
  readonly code: string;
  readonly words: string;
  /** Least depth of the lowest point, m. */
  readonly lowest?: number;
  /** Least depth of the highest point, m. */
  readonly highest?: number;
  /** Flow of the jet, m³/s. */
  readonly flow?: number;
  /** Least time, s. */
  readonly time: number;
  /** s/m² of the enclosure's surface. */
  readonly timeByArea?: number;
  readonly source: string;
}

const perMinute = (litres: number): number => litres / 60_000;

export const WATER_TESTS: readonly WaterTest[] = [
  {
    code: 'IPX5',
    words: 'jet from a 6.3 mm nozzle at 3 m from all sides',
    flow: perMinute(12.5),
    time: 180,
    timeByArea: 60,
    source: 'IEC 60529',
  },
  {
    code: 'IPX6',
    words: 'jet from a 12.5 mm nozzle at 3 m from all sides',
    flow: perMinute(100),
    time: 180,
    timeByArea: 60,
    source: 'IEC 60529',
  },
  {
    code: 'IPX7',
    words: 'immersed: lowest point 1 m deep, highest at least 0.15 m, 30 min',
    lowest: 1,
    highest: 0.15,
    time: 1800,
    source: 'IEC 60529',
  },
  {
    code: 'IPX9K',
    words:
      'fan jet of 80 ± 5 °C and 8 to 10 MPa at 100 to 150 mm, from 0, 30, 60 and 90°, 30 s each, on a turntable at 5 per minute',
    flow: perMinute(15),
    time: 120,
    source: 'ISO 20653; flow 14 to 16 L/min',
  },
];

export const waterTestOf = (code: string): WaterTest | undefined =>
  WATER_TESTS.find((t) => t.code === code);
