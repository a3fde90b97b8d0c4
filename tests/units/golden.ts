// What people type and what it must mean. Factors stand here as literals, apart from the ones under test.
// A row: text, value in the kind's stored unit, 'echo' where the field has to show what was understood.
import type { Quantity, System, Unit } from '../../src/units'

const LB = 0.45359237
const OZ = 0.028349523125
const IN = 2.54
const FT = 30.48
const MI = 1.609344
const CUIN = 0.016387064
const GAL = 3.785411784
const QT = 0.946352946
const FLOZ = 0.0295735295625
const KJ = 1 / 4.184

type Row = readonly [text: string, value: number, echo?: 'echo']
type Block = { kind: Quantity; system: System; bareUnit?: Unit; rows: Row[] }

// biome-ignore format: a table, several rows to a line
export const golden: Block[] = [
  {
    kind: 'mass',
    system: 'metric',
    rows: [
      ['1.4', 1.4], ['1,4', 1.4], ['1٫4', 1.4], ['1.4kg', 1.4], ['1,4 kg', 1.4], ['1.4 KG', 1.4],
      ['1.4\u00a0kg', 1.4], ['1.4\u202fkg', 1.4], ['  1.4  kg  ', 1.4], ['+1.4 kg', 1.4], ['1.40', 1.4],
      ['01.4', 1.4], ['.5', 0.5], [',5', 0.5], ['5.', 5], ['5,', 5], ['0', 0], ['0,0', 0], ['900 g', 0.9],
      ['900g', 0.9], ['900 gr', 0.9], ['900 grams', 0.9], ['9 g', 0.009], ['8.7 g', 0.0087],
      ['0.3 g', 0.0003], ['250 mg', 0.00025], ['1 kg 200 g', 1.2], ['1kg200g', 1.2], ['2 kilos', 2],
      ['2 kilograms', 2], ['1.5 Kilo', 1.5], ['1 kilogram', 1], ['2 lb 3 oz', 2 * LB + 3 * OZ],
      ['2lb3oz', 2 * LB + 3 * OZ], ['2 lbs. 3 ozs.', 2 * LB + 3 * OZ], ['2 lb, 3 oz', 2 * LB + 3 * OZ],
      ['2 LB 3 OZ', 2 * LB + 3 * OZ], ['2 pounds 3 ounces', 2 * LB + 3 * OZ], ['2 lb.3 oz', 2 * LB + 3 * OZ],
      ['1lb3', LB + 3 * OZ, 'echo'], ['1 lb 3', LB + 3 * OZ, 'echo'], ['14oz', 14 * OZ], ['19 oz', 19 * OZ],
      ['2 lb', 2 * LB], ['0.1 oz', 0.1 * OZ], ['2,5 lb', 2.5 * LB], ['2 lb 3.1 oz', 2 * LB + 3.1 * OZ],
      ['2 lb 3½ oz', 2 * LB + 3.5 * OZ], ['2 lb 20 oz', 2 * LB + 20 * OZ, 'echo'],
      ['2 lb 16 oz', 3 * LB, 'echo'], ['1.5 lb 3 oz', 1.5 * LB + 3 * OZ, 'echo'], ['11 st', 154 * LB],
      ['11 st 4', 158 * LB, 'echo'], ['11 st 4 lb', 158 * LB], ['11 stone 4 lb 8 oz', 158.5 * LB], ['½', 0.5],
      ['1½', 1.5], ['1 ½ kg', 1.5], ['¼ kg', 0.25], ['¾', 0.75], ['2¾lb', 2.75 * LB], ['1/2', 0.5],
      ['1/2 lb', 0.5 * LB], ['1 1/2 lb', 1.5 * LB], ['1 3/4', 1.75], ['3⁄8 oz', 0.375 * OZ], ['⅓ kg', 1 / 3],
      ['⅞ lb', 0.875 * LB], ['1,234', 1.234, 'echo'], ['1.234', 1.234, 'echo'], ['12,345 kg', 12.345, 'echo'],
      ['123.456 kg', 123.456, 'echo'], ['0,234', 0.234], ['0.234 kg', 0.234], ['1234,567', 1234.567],
      ['1234.567', 1234.567], ['1,2345', 1.2345], ['1,23', 1.23], ['1,234.5', 1234.5], ['1.234,5', 1234.5],
      ['1 234,5', 1234.5], ['1\u00a0234,5', 1234.5], ['1\u202f234,5 g', 1.2345], ["1'234.5 g", 1.2345],
      ['1’234.5 g', 1.2345], ['1,234,567 g', 1234.567], ['1.234.567 g', 1234.567], ['1 234 567 g', 1234.567],
      ['12,34,567 g', 1234.567], ['1,234,567.8 g', 1234.5678], ['1.234.567,8 g', 1234.5678],
      ['1 234 g', 1.234], ['1 234,567 g', 1.234567], ['١٬٢٣٤٫٥', 1234.5], ['٢٫٥', 2.5], ['۲٫۵ kg', 2.5],
      ['१.५ kg', 1.5], ['१,२३४.५', 1234.5], ['２．５ｋｇ', 2.5], ['1.5 ㎏', 1.5], ['𝟗𝟎𝟎 g', 0.9], ['৯০০ g', 0.9],
      ['\u200e1.4 kg\u200f', 1.4],
    ],
  },
  {
    kind: 'mass',
    system: 'us',
    rows: [
      ['2', 2 * LB], ['2.5', 2.5 * LB], ['2,5', 2.5 * LB], ['1,234', 1234 * LB, 'echo'],
      ['1.234', 1.234 * LB, 'echo'], ['1,234 g', 1.234, 'echo'], ['0,234', 0.234 * LB], ['1,4 kg', 1.4],
      ['12,345 g', 12.345, 'echo'], ['1,23', 1.23 * LB], ['900 g', 0.9],
    ],
  },
  {
    kind: 'mass',
    system: 'us',
    bareUnit: 'oz',
    rows: [
      ['14', 14 * OZ], ['2 lb', 2 * LB], ['1/2', 0.5 * OZ], ['3.1', 3.1 * OZ], ['1lb3', 19 * OZ, 'echo'],
    ],
  },
  {
    kind: 'mass',
    system: 'metric',
    bareUnit: 'g',
    rows: [
      ['900', 0.9], ['1,4 kg', 1.4], ['35', 0.035], ['1200', 1.2], ['1 200', 1.2],
    ],
  },
  {
    kind: 'volume',
    system: 'metric',
    rows: [
      ['45', 45], ['45 L', 45], ['45l', 45], ['45 litres', 45], ['45 liters', 45], ['0,5 l', 0.5],
      ['500ml', 0.5], ['500 mL', 0.5], ['500 cc', 0.5], ['500 cm3', 0.5], ['500 cm³', 0.5], ['5 dl', 0.5],
      ['75 cl', 0.75], ['1 L 500 mL', 1.5], ['3000 cu in', 3000 * CUIN], ['3000 cu. in.', 3000 * CUIN],
      ['3000cu.in.', 3000 * CUIN], ['3000 in3', 3000 * CUIN], ['3000 in³', 3000 * CUIN],
      ['3000in^3', 3000 * CUIN], ['3000 cubic inches', 3000 * CUIN], ['3000 ci', 3000 * CUIN],
      ['1 cu ft', 1728 * CUIN], ['1 ft³', 1728 * CUIN], ['5ft3', 5 * 1728 * CUIN],
      ['2 cubic feet', 2 * 1728 * CUIN], ['2.5 qt', 2.5 * QT], ['2 quarts', 2 * QT], ['32 fl oz', 32 * FLOZ],
      ['32 fl. oz.', 32 * FLOZ], ['32floz', 32 * FLOZ], ['32 fluid ounces', 32 * FLOZ], ['1 gal', GAL],
      ['1 gallon', GAL], ['2 pt', QT], ['2 pints', QT], ['1 cup', GAL / 16], ['1 gal 2 qt', GAL + 2 * QT],
      ['½ gal', GAL / 2], ['5㎖', 0.005],
    ],
  },
  {
    kind: 'volume',
    system: 'us',
    bareUnit: 'cu in',
    rows: [
      ['3000', 3000 * CUIN], ['3,000', 3000 * CUIN, 'echo'], ['3,000 cu in', 3000 * CUIN, 'echo'],
      ['45 L', 45],
    ],
  },
  {
    kind: 'volume',
    system: 'us',
    rows: [
      ['45', 45], ['2 qt', 2 * QT],
    ],
  },
  {
    kind: 'distance',
    system: 'metric',
    rows: [
      ['12', 12], ['12 km', 12], ['12,5', 12.5], ['12 mi', 12 * MI], ['12 miles', 12 * MI],
      ['2500 ft', (2500 * FT) / 1e5], ['800 m', 0.8, 'echo'], ['1 km 200 m', 1.2, 'echo'], ['500 yd', 0.4572],
      ['12 kms', 12],
    ],
  },
  {
    kind: 'distance',
    system: 'us',
    rows: [
      ['7.5', 7.5 * MI], ['3 m', 0.003, 'echo'], ['12 km', 12],
    ],
  },
  {
    kind: 'climb',
    system: 'metric',
    rows: [
      ['1200', 1200], ['1200 m', 1200], ['2500 ft', 762], ['1.2 km', 1200], ["2500'", 762],
    ],
  },
  {
    kind: 'climb',
    system: 'us',
    rows: [
      ['2500', 762], ['2,500', 762, 'echo'], ['600 m', 600], ['2500 feet', 762],
    ],
  },
  {
    kind: 'length',
    system: 'metric',
    rows: [
      ['60', 60], ['60 cm', 60], ['1.72 m', 172], ['1 m 72 cm', 172], ['95 mm', 9.5], ['24 in', 24 * IN],
      ['24"', 24 * IN], ['24″', 24 * IN], ['1\' 2"', 14 * IN], ['1′ 2″', 14 * IN], ['1’2”', 14 * IN],
      ["1'2''", 14 * IN], ['5 ft 10 in', 70 * IN], ['5ft10in', 70 * IN], ['5 feet 10 inches', 70 * IN],
      ["5'10", 70 * IN, 'echo'], ['5ft3', 63 * IN, 'echo'], ['5 ft 3', 63 * IN, 'echo'], ['6 ft', 72 * IN],
      ['5\' 10½"', 70.5 * IN], ['1 foot', FT],
    ],
  },
  {
    kind: 'length',
    system: 'us',
    rows: [
      ['24', 24 * IN], ['60 cm', 60], ['9 1/2', 9.5 * IN],
    ],
  },
  {
    kind: 'temperature',
    system: 'metric',
    rows: [
      ['24', 24], ['24 °C', 24], ['24°C', 24], ['24 C', 24], ['24 ℃', 24], ['24°', 24], ['24 º', 24],
      ['75F', (43 * 5) / 9], ['75 °F', (43 * 5) / 9], ['-5', -5], ['−5', -5], ['–5 °C', -5], ['- 5', -5],
      ['-4 F', -20], ['-40F', -40], ['32F', 0], ['-0', 0], ['+5', 5], ['-2,5', -2.5], ['24 celsius', 24],
    ],
  },
  {
    kind: 'temperature',
    system: 'us',
    rows: [
      ['75', (43 * 5) / 9], ['75°', (43 * 5) / 9], ['-4', -20], ['20 °C', 20],
    ],
  },
  {
    kind: 'duration',
    system: 'metric',
    rows: [
      ['5', 5], ['5.5', 5.5], ['5,5 h', 5.5], ['5h30', 5.5, 'echo'], ['5 h 30', 5.5, 'echo'],
      ['5:30', 5.5, 'echo'], ['05:30', 5.5, 'echo'], ['5:05', 5 + 5 / 60, 'echo'], ['0:45', 0.75, 'echo'],
      ['5 h 30 min', 5.5], ['5h30min', 5.5], ['5 hr 30 min', 5.5], ['5 hours 30 minutes', 5.5],
      ['90 min', 1.5], ['90min', 1.5], ['1 h 90 min', 2.5, 'echo'], ['36 s', 0.01], ['2½ h', 2.5],
      ['1 1/2 hours', 1.5], ['٥:٣٠', 5.5, 'echo'],
    ],
  },
  {
    kind: 'speed',
    system: 'metric',
    rows: [
      ['4', 4], ['4 km/h', 4], ['4km/h', 4], ['4 km / h', 4], ['4 kph', 4], ['4 kmh', 4],
      ['4 km per hour', 4], ['2.5 mph', 2.5 * MI], ['2.5 m.p.h.', 2.5 * MI], ['2.5 mi/h', 2.5 * MI],
      ['2.5 miles per hour', 2.5 * MI], ['1 m/s', 3.6], ['4000 m/h', 4, 'echo'],
    ],
  },
  {
    kind: 'speed',
    system: 'us',
    rows: [
      ['2.5', 2.5 * MI], ['4 km/h', 4],
    ],
  },
  {
    kind: 'verticalSpeed',
    system: 'metric',
    rows: [
      ['300', 300], ['300 m/h', 300], ['300 m/hr', 300], ['5 m/min', 300], ['1000 ft/h', 304.8],
      ['10 ft/min', 182.88],
    ],
  },
  {
    kind: 'verticalSpeed',
    system: 'us',
    rows: [
      ['1000', 304.8], ['300 m/h', 300],
    ],
  },
  {
    kind: 'flow',
    system: 'metric',
    rows: [
      ['0.5', 0.5], ['0,5 L/h', 0.5], ['500 ml/h', 0.5], ['16 fl oz/h', 16 * FLOZ], ['½ qt / hr', QT / 2],
      ['0.5 litres per hour', 0.5],
    ],
  },
  {
    kind: 'flow',
    system: 'us',
    rows: [
      ['1', QT], ['0.5 L/h', 0.5],
    ],
  },
  {
    kind: 'count',
    system: 'metric',
    rows: [
      ['3', 3], ['3x', 3], ['3 ×', 3], ['3 pcs', 3], ['0', 0], ['٣', 3], ['6/2', 3],
    ],
  },
  { kind: 'count', system: 'us', rows: [['1,234', 1234, 'echo']] },
  {
    kind: 'share',
    system: 'metric',
    rows: [
      ['20', 0.2], ['20 %', 0.2], ['20%', 0.2], ['7%', 0.07], ['12,5 %', 0.125], ['٢٠٪', 0.2],
      ['20 percent', 0.2], ['0', 0],
    ],
  },
  {
    kind: 'number',
    system: 'metric',
    rows: [
      ['1.35', 1.35], ['1,35', 1.35], ['3/4', 0.75],
    ],
  },
  {
    kind: 'money',
    system: 'metric',
    rows: [
      ['180', 180], ['179,95', 179.95], ['1 179,95', 1179.95], ["1'179.95", 1179.95],
    ],
  },
  {
    kind: 'density',
    system: 'metric',
    rows: [
      ['0.28', 0.28], ['0.28 kg/L', 0.28], ['280 g/L', 0.28], ['0.28 g/ml', 0.28], ['0.28 g/cm³', 0.28],
      ['10 lb/cu ft', (10 * LB) / (1728 * CUIN)], ['10 lb per ft3', (10 * LB) / (1728 * CUIN)],
    ],
  },
  { kind: 'density', system: 'us', rows: [['10', (10 * LB) / (1728 * CUIN)]] },
  {
    kind: 'energyDensity',
    system: 'metric',
    rows: [
      ['4400', 4400], ['4400 kcal/kg', 4400], ['440 kcal/100 g', 4400], ['440 kcal/100g', 4400],
      ['440 kcal / 100 g', 4400], ['440 kcal per 100 g', 4400], ['4.4 kcal/g', 4400],
      ['125 kcal/oz', 125 / OZ], ['125 cal/oz', 125 / OZ, 'echo'],
      ['125 Calories per ounce', 125 / OZ, 'echo'], ['1841 kJ/100 g', 18410 * KJ],
    ],
  },
  { kind: 'energyDensity', system: 'us', rows: [['125', 125 / OZ]] },
  {
    kind: 'gramsPerLitre',
    system: 'metric',
    rows: [
      ['20', 20], ['20 g/L', 20], ['0.02 kg/L', 20], ['0.7 oz/L', 700 * OZ],
    ],
  },
  { kind: 'gramsPerLitre', system: 'us', rows: [['0.7', 700 * OZ]] },
  {
    kind: 'gramsPerKg',
    system: 'metric',
    rows: [
      ['80', 80], ['80 g/kg', 80], ['1 oz/lb', 62.5],
    ],
  },
]
