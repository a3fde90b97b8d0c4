import { useState } from 'preact/hooks'
import { Ticker, UndoBar } from '../../src/components/frame'
import { PartlyJudged, Warnings } from '../../src/components/judged'
import { Grip, GroupHeading, MoveWords, useMover } from '../../src/components/long-list'
import { Cautions, Doors, LeftOut, Row, WhenOpen } from '../../src/components/pieces'
import { AskHint, Why } from '../../src/components/why'
import { ANSWERS, type Caution } from '../../src/report'
import { reckoned } from '../../src/store'
import { State } from './state'

const none = () => undefined
const LONG = 'Sleeping bag in its sack, the warm one from the year before last, with a liner sewn into it'
const ACTIONS = { name: 'it', moveUp: none, moveDown: none, duplicate: none, remove: none }

export function Lists() {
  const mover = useMover()
  const [open, setOpen] = useState(true)
  const summary = (name: string, facts: string) => (
    <>
      <bdi class="name">{name}</bdi>
      <span class="facts-line">{facts}</span>
    </>
  )
  const home = (pressed: boolean) => (
    <button type="button" class="home" aria-pressed={pressed} aria-label="Leave it at home">
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
        <path d="M2 8l6-5 6 5v6H2z" />
      </svg>
    </button>
  )
  const row = { open: false, onToggle: none, actions: ACTIONS, children: null }
  return (
    <section>
      <h2>Lists</h2>
      <MoveWords mover={mover} />
      <State name="rows: closed, long, with grip and button, set aside, open">
        <ul class="rows">
          <GroupHeading id="g" at={0} of={undefined} name="Sleep" />
          <Row {...row} id="a" summary={summary('Foam mat', '380 g, strapped on')} />
          <Row {...row} id="b" summary={summary(LONG, '920 g, 8.6 L')} />
          <Row
            {...row}
            id="c"
            grip={<Grip mover={mover} id="c" name="Pillow" />}
            aside={home(false)}
            summary={summary('Inflatable pillow', '80 g, 0.3 L')}
          />
          <Row {...row} id="d" set="aside" aside={home(true)} summary={summary('Camp shoes', '340 g')} />
          <Row
            {...row}
            id="e"
            open={open}
            onToggle={() => setOpen(!open)}
            summary={summary('Food', '700 g a day')}
          >
            <p>Its fields stand here.</p>
          </Row>
        </ul>
      </State>
      <State name="doors; what opens">
        <Doors
          doors={[
            { label: 'Paste a list', draw: () => <p>Here.</p> },
            { label: 'Import a table', draw: none },
          ]}
        />
        <details class="more">
          <summary>Closed</summary>
        </details>
        <details class="more" open>
          <summary>Open</summary>
          <p>What it holds.</p>
        </details>
        <WhenOpen summary="Where heavy items go">{() => <p>Here.</p>}</WhenOpen>
      </State>
    </section>
  )
}

const CAUTIONS: Caution[] = [
  {
    signal: 'WARNING',
    about: 'water',
    text: '1.9 L short of water when you leave Cistern Terrace.',
    short: '1.9 L short of water',
  },
  {
    signal: 'CAUTION',
    about: 'load',
    text: 'The load is over 30 % of body mass, more than is commonly carried.',
    more: ['Also on day 3.'],
  },
  { signal: 'NOTICE', about: 'model', text: 'Based on average packing, not yet on yours.' },
]

export function Said() {
  return (
    <section>
      <h2>What is said</h2>
      <State name="warnings of a trip in lines; cautions in full">
        <Warnings cautions={CAUTIONS} />
        <Cautions cautions={CAUTIONS} />
      </State>
      <State name="undo, the answer in one line, what was left out">
        <UndoBar />
        <Ticker onOpen={none} />
        <LeftOut
          entries={[
            { path: 'trip', what: 'leg', message: 'The leg to Goat Well has no distance: 0 km count.' },
          ]}
        />
      </State>
      <State name="a figure that can be asked, and how that is told">
        <p>
          Walking <Why about={{ kind: 'walking-time', leg: 0 }} figure="4 h 54 min" />, without breaks.
        </p>
        <AskHint />
      </State>
      <State name="a hint, an echo, a problem, work that goes on">
        <p class="hint">Room to carry, not a drinking target.</p>
        <p class="echo">= 0.91 kg</p>
        <p class="problem">Mass: write an amount from 0 kg to 200 kg.</p>
        <progress max={1} value={0.4} aria-label="Reading" />
      </State>
    </section>
  )
}

export function Answers() {
  const plan = reckoned.value!.plan
  return (
    <section>
      <h2>Answers</h2>
      <State name="does, with care, can't tell yet, does not">
        {(Object.keys(ANSWERS) as (keyof typeof ANSWERS)[]).map(answer => (
          <PartlyJudged
            key={answer}
            name="Two-way with removable frame"
            plan={plan}
            known={{ bodyLitres: 55, massKg: 1.4 } as never}
            judged={{
              answer,
              verdicts: [
                { code: 'fits', lead: 'Fits.', rest: ' About 9 chances in 10 that it fits.' },
              ] as never,
              basis: 'Based on average packing, not yet on yours.',
              missing: answer === 'cannot-tell' ? ['Its load rating is not known.'] : [],
            }}
          />
        ))}
      </State>
    </section>
  )
}
