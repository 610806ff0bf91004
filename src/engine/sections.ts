import type { Section } from './method.ts';

/** Sections that several questions share; a question may bring a section of its own. */
export const BALANCE: Section = { id: 'balance', title: 'Mass and balance', order: 10 };
export const HOIST: Section = { id: 'hoist', title: 'On the hoist', order: 15 };
export const CENSUS: Section = { id: 'census', title: 'Joints and times', order: 20 };
export const ENERGY: Section = { id: 'energy', title: 'Energy', order: 30 };
export const COST: Section = { id: 'cost', title: 'Should-cost', order: 40 };
export const PROCESSES: Section = { id: 'processes', title: 'Process models', order: 42 };
export const PROFILES: Section = { id: 'profiles', title: 'Sections', order: 60 };
export const LAMINATES: Section = { id: 'laminates', title: 'Laminates', order: 62 };
export const PLATES: Section = { id: 'plates', title: 'Plates and floors', order: 64 };
export const SEALING: Section = { id: 'sealing', title: 'Sealing and leaks', order: 50 };
export const LINES: Section = { id: 'lines', title: 'Lines and circuits', order: 52 };
export const BOLTS: Section = { id: 'bolts', title: 'Bolted joints', order: 54 };
