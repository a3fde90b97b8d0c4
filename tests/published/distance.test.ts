// Distances on the ellipsoid against numbers made elsewhere. The library under test is GeographicLib's own, so the
// first table shows that we call it rightly; the other two do not come from it.

import { describe, expect, it } from 'vitest'
import { geodesicKm } from '../../src/files/gpx/distance'

/**
 * Inverse problems with s12 in metres: `published` with geographiclib-geodesic 2.2.0 (test/geodesictest.js, C. F. F.
 * Karney), where they stand as a sample of GeodTest, a set computed with high precision.
 */
const geodTest = [
  [35.60777, -139.44815, -11.17491, -69.95921, 8935244.56048183],
  [55.52454, 106.05087, 77.03196, 197.18234, 4105086.171392441],
  [-21.97856, 142.59065, 41.84138, 98.56635, 8394328.894657671],
  [-66.99028, 112.2363, -12.70631, 285.90344, 11150344.231208025],
  [-17.42761, 173.34268, -15.84784, 5.93557, 16076603.163118068],
  [32.84994, 48.28919, -56.28556, 202.29132, 16727068.943816446],
  [-50.56724, -16.30485, -33.56571, -94.97412, 6455670.511866869],
  [-68.82867, -74.28391, -50.63005, -8.36685, 3956936.926063544],
  [-19.79938, -174.47484, -11.99349, -154.35109, 2319004.860116939],
] as const

/** WGS 84: a = 6 378 137 m, 1/f = 298.257 223 563 (the defining constants; from memory, NIMA TR 8350.2). */
const a = 6_378_137
const f = 1 / 298.257223563
const e2 = f * (2 - f)

describe('geodesicKm', () => {
  it('gives the published distances to a micrometre', () => {
    for (const [lat1, lon1, lat2, lon2, metres] of geodTest) {
      const km = geodesicKm({ latDeg: lat1, lonDeg: lon1 }, { latDeg: lat2, lonDeg: lon2 })
      expect(Math.abs(1000 * km - metres)).toBeLessThan(1e-6)
    }
    expect(geodTest.length).toBeGreaterThan(5)
  })

  it('makes a quarter of the meridian 10 001 965.729 m (from memory: the known length for WGS 84)', () => {
    expect(1000 * geodesicKm({ latDeg: 0, lonDeg: 7 }, { latDeg: 90, lonDeg: 7 })).toBeCloseTo(
      10_001_965.729,
      3,
    )
  })

  // Computed from the published equations of an ellipse: arc of the equator, and radius of curvature of a meridian.
  it('agrees with the equator’s arc and, for steps of a track, with the meridian’s curvature', () => {
    const east = 1000 * geodesicKm({ latDeg: 0, lonDeg: 0 }, { latDeg: 0, lonDeg: 1 })
    expect(east).toBeCloseTo((a * Math.PI) / 180, 6)
    for (const latDeg of [0, 30, 46, 60, 85]) {
      const sin = Math.sin((latDeg * Math.PI) / 180)
      const radius = (a * (1 - e2)) / (1 - e2 * sin * sin) ** 1.5
      const halfStep = 5e-5
      const north = geodesicKm(
        { latDeg: latDeg - halfStep, lonDeg: 7 },
        { latDeg: latDeg + halfStep, lonDeg: 7 },
      )
      expect(1000 * north).toBeCloseTo((radius * 2 * halfStep * Math.PI) / 180, 6)
    }
  })

  it('takes the short way across the date line, and 0 for no way at all', () => {
    const across = geodesicKm({ latDeg: 0, lonDeg: 179.5 }, { latDeg: 0, lonDeg: -179.5 })
    expect(across).toBeCloseTo((a * Math.PI) / 180_000, 9)
    expect(geodesicKm({ latDeg: 46, lonDeg: 7 }, { latDeg: 46, lonDeg: 7 })).toBe(0)
  })
})
