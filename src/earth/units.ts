/** Exact conversions between the units of the trade: the international nautical mile (1929), foot and statute mile (1959). */

export const M_PER_NM = 1852;
export const M_PER_FT = 0.3048;
/** 5,280 feet. */
export const M_PER_SM = 1609.344;
export const FT_PER_NM = M_PER_NM / M_PER_FT;

export const mFromNm = (nm: number): number => nm * M_PER_NM;
export const nmFromM = (m: number): number => m / M_PER_NM;
export const kmFromNm = (nm: number): number => (nm * M_PER_NM) / 1000;
export const nmFromKm = (km: number): number => (km * 1000) / M_PER_NM;
export const mFromFt = (ft: number): number => ft * M_PER_FT;
export const ftFromM = (m: number): number => m / M_PER_FT;
export const kmFromFt = (ft: number): number => (ft * M_PER_FT) / 1000;
export const ftFromKm = (km: number): number => (km * 1000) / M_PER_FT;
export const ftFromNm = (nm: number): number => nm * FT_PER_NM;
export const nmFromFt = (ft: number): number => ft / FT_PER_NM;
/** Statute miles from nautical miles; the same factor turns knots into miles an hour. */
export const smFromNm = (nm: number): number => (nm * M_PER_NM) / M_PER_SM;
/** Nautical miles from statute miles; the same factor turns miles an hour into knots. */
export const nmFromSm = (sm: number): number => (sm * M_PER_SM) / M_PER_NM;
/** Metres a second from knots. */
export const mPerSFromKt = (kt: number): number => (kt * M_PER_NM) / 3600;
/** Knots from metres a second. */
export const ktFromMPerS = (mPerS: number): number => (mPerS * 3600) / M_PER_NM;
