/** What the bench uses of `fili`, which ships no types. */
declare module "fili" {
  interface FirCoeffs {
    kbFilter(options: { Fs: number; Fa: number; Fb: number; order: number; Att: number }): number[];
  }
  interface FirFilter {
    /** The output for every sample, from an empty state. */
    simulate(input: readonly number[]): number[];
  }
  /** Not by name: it is CommonJS. */
  const fili: {
    readonly FirCoeffs: new () => FirCoeffs;
    readonly FirFilter: new (taps: readonly number[]) => FirFilter;
  };
  export default fili;
}
