// Distances on the WGS 84 ellipsoid, by the geodesic routines of GeographicLib (C. F. F. Karney).
// Positions are those of the file; heights do not count, so a steep way is as long as on the map.

import geographic from 'geographiclib-geodesic'

const { Geodesic } = geographic

export interface Position {
  latDeg: number
  lonDeg: number
}

/** The shortest way between two positions, in kilometres. Degrees; latitude −90 to 90. */
export function geodesicKm(from: Position, to: Position): number {
  const { s12 = Number.NaN } = Geodesic.WGS84.Inverse(
    from.latDeg,
    from.lonDeg,
    to.latDeg,
    to.lonDeg,
    Geodesic.DISTANCE,
  )
  return s12 / 1000
}
