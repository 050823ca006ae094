/** What is used of fft.js, which has no types of its own. */

declare module "fft.js" {
  export default class FFT {
    /** Throws where the size is no power of two. */
    constructor(size: number);
    createComplexArray(): number[];
    /** The lower half of the transform of real samples; real and imaginary parts by turns. */
    realTransform(out: number[], samples: ArrayLike<number>): void;
  }
}
