/** What the bench uses of `fili`, which ships no types. */
declare module "fili" {
  export class FirCoeffs {
    kbFilter(options: { Fs: number; Fa: number; Fb: number; order: number; Att: number }): number[];
  }
  export class FirFilter {
    constructor(taps: readonly number[]);
    /** The output for every sample, from an empty state. */
    simulate(input: readonly number[]): number[];
  }
}
