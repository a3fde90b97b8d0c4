// The readable report: what a hiker would print. Plain text, 78 columns where names allow.

import type { Plan } from '../plan'
import type { DayReckoning, Reckoning } from '../reckon'
import {
  ANSWERS,
  cautionsOf,
  FIT_LINE,
  type Formats,
  formatsIn,
  GENERAL_LINE,
  inFull,
  leastText,
  loadThen,
  missingOf,
  momentAt,
  notInItText,
  placeText,
  remedyInWords,
  safeLoadKg,
  setupInWords,
  sharesByName,
  shortfallInWords,
  takesNothing,
  toldChance,
  walkOf,
} from '../report'
import { helpQuestion, reachText } from '../report/compare-packs'
import { basisOf, enoughText, likelyText } from '../report/confidence'
import type { System } from '../units'
import { aligned, wrap } from './columns'
import { lookedInto, type PackInFull } from './packs'

export function textReport(plan: Plan, reckoning: Reckoning, system: System = 'metric'): string {
  const formats = formatsIn(system)
  const sections = [
    [plan.name || 'Plan', '='.repeat(plan.name.length || 4)],
    needLines(plan, reckoning, formats),
    dayLines(plan, reckoning, formats),
    ...packSections(plan, reckoning, formats),
    cautionLines(plan, reckoning, formats),
  ]
  return `${sections.map(lines => lines.join('\n')).join('\n\n')}\n`
}

function needLines(plan: Plan, reckoning: Reckoning, formats: Formats): string[] {
  const { need, moments } = reckoning
  const { kg, litres, litresUp } = formats
  if (takesNothing(plan)) return ['THE NEED', 'Can’t tell yet: the plan has no gear.']
  const missing = missingOf(plan)
  const basis = basisOf({ plan, reckoning, formats })
  const heaviest = momentAt(reckoning, need.peakFullWaterAt).kg
  const peak = [
    ...sharesByName(heaviest),
    { name: 'water without a bottle', amount: need.peakLoadFullWaterKg - heaviest.total },
  ]
    .filter(part => kg(part.amount) !== kg(0))
    .map(part => `${part.name} ${kg(part.amount)}`)
  const sizes = [
    need.longestCm === null ? [] : [`longest rigid item ${formats.cm(need.longestCm)}`],
    need.widestCm === null ? [] : [`widest ${formats.cm(need.widestCm)}`],
  ].flat()
  return [
    'THE NEED',
    ...wrap(
      missing.litres.length
        ? `Main body  at least ${litresUp(need.bodyLitres)}; ${notInItText(missing, 'litres')}`
        : `Main body  ${litresUp(need.bodyLitres)}, likely ${likelyText(need, formats)}; ${enoughText(need, formats)}`,
      11,
    ),
    ...wrap(`           fullest ${placeText(need.bodyAt, moments)}`, 11),
    ...wrap(
      missing.mass.length
        ? `Load       at least ${kg(need.peakLoadFullWaterKg)} without the pack; ${notInItText(missing, 'mass')}`
        : `Load       ${kg(need.peakLoadFullWaterKg)} heaviest load, without the pack; at most ${kg(safeLoadKg(need))} in about 9 of 10 cases`,
      11,
    ),
    ...wrap(`           ${placeText(need.peakFullWaterAt, moments)}: ${peak.join(', ')}`, 11),
    ...wrap(
      `Also       base weight ${kg(need.baseKg)}, worn ${kg(need.wornKg)}, pockets ${litres(need.outsideLitres)}`,
      11,
    ),
    ...wrap(
      `Water      carry up to ${formats.water(need.waterCarryLitres)}${need.waterShortLitres > 0 ? `, short by up to ${formats.water(need.waterShortLitres)}` : ''}`,
      11,
    ),
    ...(sizes.length ? [`Sizes      ${sizes.join(', ')}`] : []),
    ...wrap(`Litres     ${basis.litres}`, 11),
    ...wrap(`Load       ${basis.load}`, 11),
  ]
}

function dayLines(plan: Plan, reckoning: Reckoning, formats: Formats): string[] {
  const rows = reckoning.days.map(day => dayRow(day))
  return ['DAY BY DAY', ...aligned(rows)]

  function dayRow({ day, hours, kcalTotal, ration }: DayReckoning): string[] {
    const walk = walkOf(reckoning, day)
    const energy = kcalTotal === null ? [] : [`${Math.round(kcalTotal / 10) * 10} kcal`]
    if (!walk) return [`Day ${day}`, 'rest', '', '', ...energy]
    const { sets, ends } = walk
    const from = plan.trip.stops[sets.stop]!.name
    const to = plan.trip.stops[ends.stop]!.name
    return [
      `Day ${day}`,
      `${from} to ${to}`,
      `${formats.km(ends.km - sets.km)}, ${formats.hours(hours)}`,
      `${formats.kg(loadThen(sets))} to ${formats.kg(loadThen(ends))}`,
      ...energy,
      ...(plan.trip.meals.ration === 'energy' ? [`${ration.toFixed(2)} rations`] : []),
    ]
  }
}

function packSections(plan: Plan, reckoning: Reckoning, formats: Formats): string[][] {
  if (reckoning.packs.length === 0) return [['PACKS', 'None in this plan.']]
  const full = lookedInto(plan, reckoning)
  const missing = missingOf(plan)
  const [noLitres, noMass] = [missing.litres.length > 0, missing.mass.length > 0]
  return reckoning.packs.map((setup, i) => {
    const { answer, verdicts } = setupInWords(setup, { plan, reckoning, formats })
    const title = plan.packs[setup.pack]!.setups.length > 1 ? `${setup.name}, ${setup.setup}` : setup.name
    const chance = toldChance(setup.fitChance, { missing, answer })
    const margins = [
      `room ${signed(setup.bodyMarginLitres, formats.litres, noLitres)}`,
      setup.ratedMarginKg === null ? [] : `rating ${signed(setup.ratedMarginKg, formats.kg, noMass)}`,
      `carried ${leastText(missing, 'mass', formats.kg(setup.carriedKg))}`,
      chance === null ? [] : `${chance} that it fits`,
      formats.gramsPerLitre(setup.gramsPerLitre),
      setup.gramsPerRatedKg === null ? [] : `${formats.gramsPerKg(setup.gramsPerRatedKg)} rated`,
      setup.reachDays === null ? [] : `reach ${reachText(setup.reachDays, missing)} of food`,
    ].flat()
    return [
      ...(i === 0 ? ['PACKS', ...wrap(FIT_LINE, 0)] : []),
      `${ANSWERS[answer].mark} ${title}: ${ANSWERS[answer].words.toUpperCase()}`,
      ...verdicts.flatMap(v => wrap(`  ${v.lead}${v.rest}`, 2)),
      ...(missing.gear ? [] : wrap(`  (${margins.join('; ')})`, 2)),
      ...remedyLines(full[i]!, { plan, reckoning, formats }),
    ]
  })
}

/** The first remedies under a set-up that will not do or may not fit, or what pack would. */
function remedyLines(
  setup: PackInFull,
  { plan, reckoning, formats }: { plan: Plan; reckoning: Reckoning; formats: Formats },
): string[] {
  const { remedies, shortfall } = setup
  if (!remedies || !shortfall || missingOf(plan).gear) return []
  if (remedies.length === 0) return wrap(`  ${shortfallInWords(shortfall, { plan, reckoning, formats })}`, 2)
  const told = remedies.slice(0, 3).map(remedy => remedyInWords(remedy, { plan, formats }))
  return [`  ${helpQuestion(setup, plan)}`, ...told.flatMap(sentence => wrap(`  - ${sentence}`, 4))]
}

function cautionLines(plan: Plan, reckoning: Reckoning, formats: Formats): string[] {
  return [
    'CAUTIONS',
    ...cautionsOf(plan, reckoning, formats).flatMap(caution =>
      wrap(`${caution.signal}: ${inFull(caution)}`, 2),
    ),
    ...wrap(GENERAL_LINE, 0),
  ]
}

/** "+4.2 L", "short by 4.2 L"; `isOpen`: what is missing can only make it less. */
const signed = (value: number, format: (value: number) => string, isOpen: boolean) =>
  value < 0
    ? `short by ${isOpen ? 'at least ' : ''}${format(-value)}`
    : `${isOpen ? 'at most ' : ''}+${format(value)}`
