/** Arcs by DME: when to turn, and how far a radial is from the next. Rules of thumb of instrument training. */

/** Of the groundspeed in knots: the lead in NM for a standard-rate turn of 90 degrees (US Navy P-801). */
const LEAD_OF_GROUNDSPEED = 0.005;

/** Radials to the mile along an arc: the rule of sixty. */
export const radialsPerNm = (arcNm: number): number => 60 / arcNm;

/** How early to begin a standard-rate turn of 90 degrees onto or off an arc, NM. */
export const arcLeadNm = (groundspeedKt: number): number => LEAD_OF_GROUNDSPEED * groundspeedKt;

/** How many radials before the wanted one to begin the turn off an arc. */
export const arcLeadRadials = (arcNm: number, leadNm: number): number => leadNm * radialsPerNm(arcNm);
