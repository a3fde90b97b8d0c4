// The tag judged for each trip the pack is for.

import { PartlyJudged } from '../../components/judged'
import type { Plan, Tag } from '../../plan'
import { ANSWERS, type Formats, isYes } from '../../report'
import { type KnownPack, type Partly, partlyJudged } from '../../report/compare-packs'

export interface JudgedFor {
  trip: string
  judged: Partly
  plan: Plan
  known: KnownPack
}

/** The tag judged for every trip; none while nothing of it is known. */
export function judgedFor(
  tag: Tag,
  trips: { plans: Plan[]; names: string[] },
  formats: Formats,
): JudgedFor[] {
  const { frame, ratingCovers, massKg, ratedKg, bodyLitres, outsideLitres, sealed } = tag
  const said = [bodyLitres, massKg, ratedKg, outsideLitres].some(figure => figure !== undefined)
  if (!said) return []
  const known = { bodyLitres, outsideLitres, sealed, setup: { massKg, ratedKg, frame, ratingCovers } }
  return trips.plans.flatMap((plan, i) => {
    const judged = partlyJudged(plan, known, formats)
    return judged ? [{ trip: trips.names[i]!, judged, plan, known }] : []
  })
}

/** The answer in one line; for several trips, for how many it does, or does not as far as it is known. */
export function answerLine(judged: JudgedFor[]): string {
  if (judged.length === 0) return 'type what it says'
  const wordsOf = ({ judged: { answer } }: JudgedFor) => ANSWERS[answer].words
  if (judged.length === 1) return wordsOf(judged[0]!)
  const counted = (passes: (it: Partly) => boolean) => judged.filter(it => passes(it.judged)).length
  const of = (count: number) => `for ${count} of ${judged.length} trips`
  if (counted(it => it.missing.length > 0) === 0) return `Does ${of(counted(it => isYes(it.answer)))}`
  const fails = counted(it => it.answer === 'does-not')
  return fails ? `Does not ${of(fails)}` : wordsOf(judged[0]!)
}

export function Judgement({ judged }: { judged: JudgedFor[] }) {
  return (
    <div class="judgement">
      {judged.map((it, i) => (
        <PartlyJudged
          key={i}
          judged={it.judged}
          plan={it.plan}
          known={it.known}
          name={judged.length > 1 ? it.trip : null}
        />
      ))}
    </div>
  )
}
