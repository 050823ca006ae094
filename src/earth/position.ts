/** Places on the WGS 84 ellipsoid. Latitude north positive, longitude east positive, in degrees. */

export interface LatLon {
  /** [-90, 90], north positive. */
  readonly latDeg: number;
  /** [-180, 180], east positive. */
  readonly lonDeg: number;
}
