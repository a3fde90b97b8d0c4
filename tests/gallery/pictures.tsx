import { signal } from '@preact/signals'
import { useState } from 'preact/hooks'
import {
  BodyPicture,
  Cutaway,
  FieldPicture,
  LoadLine,
  LoadLineTable,
  ReachPicture,
  TerrainPicture,
} from '../../src/components/graphics'
import { formatsIn } from '../../src/report'
import { reckoned } from '../../src/store'
import { State } from './state'
import '../../src/screens/packs-beside/packs-beside.css'

const formats = formatsIn('metric')
const none = () => undefined
const BODY = { bodyLitres: 52, collarLitres: 0, innerHeightCm: null }
const lit = signal<string | null>(null)

function demo() {
  const open = reckoned.value
  if (!open?.reckoned.ok) throw new Error('the demo does not settle')
  return { stops: open.plan.trip.stops, ...open.reckoned.reckoning }
}

export function Pictures() {
  const { stops, moments, need } = demo()
  const [moment, setMoment] = useState(2)
  const km = moments.at(-1)!.km
  const hills = Array.from({ length: 80 }, (_, i) => ({
    km: (i / 79) * km,
    eleM: i > 30 && i < 36 ? null : 300 + 250 * Math.sin(i / 9) + 3 * i,
  }))
  const load = { moments, stops, limits: [{ label: 'Two-way, frame in', kg: 16.8 }], format: formats }
  const placed = stops.map((stop, i) => ({ ...stop, km: moments.find(m => m.stop === i)?.km ?? 0 }))
  const cut = { name: 'Two-way', need, moment: moments[2]!, format: formats, at: 'leaving Cistern Terrace' }
  return (
    <section>
      <h2>Pictures</h2>
      <State name="the load line, with terrain that is not known everywhere; as a table">
        <LoadLine {...load} profile={hills} moment={moment} onMoment={setMoment} warnings={[2]} />
      </State>
      <State name="without terrain, limits, key and table">
        <LoadLine {...load} limits={[]} moment={0} onMoment={none} isBare />
        <LoadLineTable {...load} />
      </State>
      <State name="the way alone">
        <TerrainPicture stops={placed} profile={hills} format={formats} />
      </State>
      <State name="the cutaway: with room, over the brim, with a collar, with a need that is only a least">
        <Cutaway {...cut} {...BODY} scaleLitres={70} />
        <Cutaway {...cut} {...BODY} bodyLitres={38} scaleLitres={70} />
        <Cutaway {...cut} {...BODY} bodyLitres={45} collarLitres={12} scaleLitres={70} atLeast />
      </State>
      <State name="bodies beside each other: with room, too small, nothing known of the need">
        <div class="columns">
          <BodyPicture body={BODY} needLitres={44} scaleLitres={60} label="With room" />
          <BodyPicture
            body={{ ...BODY, bodyLitres: 35 }}
            needLitres={44}
            scaleLitres={60}
            label="Too small"
          />
          <BodyPicture body={BODY} needLitres={null} scaleLitres={60} label="No need" />
        </div>
      </State>
      <State name="how far a pack reaches">
        <ReachPicture
          caption="Days of food against water carried"
          says="Six days with two litres."
          water={{ label: 'Water carried, L', max: 8 }}
          days={{ label: 'Days of food', max: 9 }}
          runs={[
            {
              label: 'room',
              points: [
                { water: 0, days: 8 },
                { water: 4, days: 6 },
              ],
            },
            {
              label: 'rating',
              points: [
                { water: 4, days: 6 },
                { water: 8, days: 1 },
              ],
            },
          ]}
          marks={[
            {
              letter: 'A',
              name: 'To Chapel Hut',
              words: '3 days with 4.0 L',
              shape: 'dot',
              at: { x: 4, y: 3 },
            },
            {
              letter: 'B',
              name: 'To the end',
              words: '6 days with 6.0 L',
              shape: 'cross',
              at: { x: 6, y: 6 },
            },
          ]}
          table={{
            heads: ['Water', 'Days'],
            rows: [
              ['0 L', '8'],
              ['4 L', '6'],
            ],
          }}
        />
      </State>
      <State name="the field of packs: does, with care, can't tell, does not, not known">
        <figure class="picture">
          <FieldPicture
            says="Four packs."
            x={{ label: 'Main body, L', max: 90 }}
            y={{ label: 'Load it can carry, kg', max: 24 }}
            marks={[
              { key: 'a', shape: 'dot', x: 60, y: 18 },
              { key: 'b', shape: 'half-dot', x: 52, y: 15 },
              { key: 'c', shape: 'ring', x: 40, y: null },
              { key: 'd', shape: 'cross', x: 32, y: 8, isAside: true },
            ]}
            names={[]}
            corner={null}
            line={null}
            chosen="b"
            area={null}
            lit={lit}
            label="Packs on the chart"
            textOf={key => `Pack ${key}`}
            onLit={none}
            onOpen={none}
            onSpan={none}
          />
        </figure>
      </State>
    </section>
  )
}
