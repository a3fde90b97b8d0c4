// The readable report of a party: how it is shared out, then a part for each person.

import { itemName, type PartyPlan } from '../plan'
import { type PartyReckoning, personAlone } from '../reckon'
import {
  ANSWERS,
  FIT_LINE,
  type Formats,
  formatsIn,
  GENERAL_LINE,
  inFull,
  missingOf,
  notInItText,
  placeText,
  setupInWords,
} from '../report'
import { enoughText, likelyText } from '../report/confidence'
import { childrenFirst, fairnessLines, loadLine, nameIn, partyCautions } from '../report/party'
import type { System } from '../units'
import { wrap } from './columns'

export function partyReport(plan: PartyPlan, party: PartyReckoning, system: System = 'metric'): string {
  const formats = formatsIn(system)
  const sections = [
    [plan.name || 'Plan', '='.repeat(plan.name.length || 4)],
    [
      'SHARED OUT',
      ...[...childrenFirst(plan, party, formats), ...fairnessLines(plan, party, formats)].flatMap(line =>
        wrap(line, 0),
      ),
      ...plan.people.flatMap((_, who) =>
        wrap(`${nameIn(plan, who)}: ${loadLine(plan, party.people[who]!, formats)}`, 2),
      ),
    ],
    ...plan.people.map((_, who) => personLines(plan, party, who, formats)),
    [
      'CAUTIONS',
      ...partyCautions(plan, party, formats).flatMap(({ name, caution }) =>
        wrap(`${caution.signal}: ${name ? `${name}: ` : ''}${inFull(caution)}`, 2),
      ),
      ...wrap(GENERAL_LINE, 0),
      ...(party.people.some(({ pack }) => pack) ? wrap(FIT_LINE, 0) : []),
    ],
  ]
  return `${sections.map(lines => lines.join('\n')).join('\n\n')}\n`
}

function personLines(plan: PartyPlan, party: PartyReckoning, who: number, formats: Formats): string[] {
  const person = party.people[who]!
  const alone = personAlone(plan, party, who)
  const missing = missingOf(alone.plan)
  const { need, moments, pack } = person
  const names = alone.plan.gear.map(item => (item.count > 1 ? `${item.count} × ` : '') + itemName(item))
  const litres = formats.litresUp(need.bodyLitres)
  const short = need.waterShortLitres > 0 ? `, short by up to ${formats.water(need.waterShortLitres)}` : ''
  return [
    nameIn(plan, who).toUpperCase(),
    ...wrap(`Carries    ${names.length > 0 ? names.join(', ') : 'nothing'}`, 11),
    ...wrap(
      `Load       ${loadLine(plan, person, formats)}${missing.mass.length > 0 ? `; ${notInItText(missing, 'mass')}` : ''}`,
      11,
    ),
    ...wrap(`           heaviest ${placeText(need.peakFullWaterAt, moments)}`, 11),
    ...wrap(
      missing.litres.length > 0
        ? `Main body  at least ${litres}; ${notInItText(missing, 'litres')}`
        : `Main body  ${litres}, likely ${likelyText(need, formats)}; ${enoughText(need, formats)}`,
      11,
    ),
    ...wrap(`Water      carry up to ${formats.water(need.waterCarryLitres)}${short}`, 11),
    ...(pack ? packLines() : []),
  ]

  function packLines(): string[] {
    const [setup] = alone.reckoning.packs
    const { answer, verdicts } = setupInWords(setup!, { ...alone, formats })
    return [
      ...wrap(
        `Pack       ${ANSWERS[answer].mark} ${setup!.name}, ${setup!.setup}: ${ANSWERS[answer].words.toUpperCase()}`,
        11,
      ),
      ...verdicts.flatMap(({ lead, rest }) => wrap(`           ${lead}${rest}`, 11)),
    ]
  }
}
