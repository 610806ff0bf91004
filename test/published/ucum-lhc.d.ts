/** The few calls the tests make of a library that has no types of its own. */
declare module '@lhncbc/ucum-lhc' {
  interface Converted {
    readonly status: 'succeeded' | 'failed' | 'error';
    readonly toVal: number;
    readonly msg: readonly string[];
  }
  const ucum: {
    readonly UcumLhcUtils: {
      getInstance(): { convertUnitTo(from: string, value: number, to: string): Converted };
    };
  };
  export default ucum;
}
