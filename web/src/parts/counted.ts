/** "1 part", "5 parts": a number of things, none of them in an irregular plural. */
export const counted = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;
