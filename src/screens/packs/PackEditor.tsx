// The figures of one pack and its set-ups. A pack with a removable frame has two set-ups, each with its own mass.

import { Field } from '../../components/fields'
import { addSetup, type DraftPack, type DraftSetup, FIELDS, fieldPath, removeSetup } from '../../plan'
import { actions, newId } from '../../store'

/** As tags have them: the likeliest first. */
const BODY_FROM = ['stated', 'test-method', 'measured', 'guess']

export function PackEditor({ pack }: { pack: DraftPack }) {
  const at = (...parts: string[]) => fieldPath('packs', pack.id, ...parts)
  const name = pack.name ?? 'pack'
  return (
    <>
      <Field path={at('name')} />
      <div class="fields">
        <Field path={at('bodyLitres')} />
        <Field path={at('outsideLitres')} />
        <Field path={at('collarLitres')} />
      </div>
      <Field path={at('bodyFrom')} only={BODY_FROM} />
      <Field path={at('sealed')} />
      {pack.setups.map((setup, i) => (
        <SetupEditor key={setup.id} pack={pack} setup={setup} index={i} />
      ))}
      <button
        type="button"
        class="quiet"
        onClick={() =>
          actions.edit(`Add a set-up to ${name}`, draft =>
            addSetup(draft, pack.id, { newId, with: { name: 'frame out', frame: 'frameless' } }),
          )
        }
      >
        Add a set-up (frame taken out)
      </button>
      <details class="more">
        <summary>Price, fabric, inner size</summary>
        <div class="fields">
          <Field path={at('price')} />
          <Field path={at('currency')} />
          <Field path={at('fabric')} />
          <Field path={at('denier')} />
          <Field path={at('innerHeightCm')} />
          <Field path={at('innerWidthCm')} />
          <Field path={at('innerDepthCm')} />
        </div>
        <div class="inner-shape">
          <Field path={at('section')} />
          <p class="hint">
            Inner sizes tell how rigid items go in; all three are needed. Oval unless you choose:{' '}
            {FIELDS.pack.section.origin}.
          </p>
        </div>
      </details>
    </>
  )
}

function SetupEditor({ pack, setup, index }: { pack: DraftPack; setup: DraftSetup; index: number }) {
  const at = (field: string) => fieldPath('packs', pack.id, 'setups', setup.id, field)
  const only = pack.setups.length === 1
  const name = setup.name ?? `set-up ${index + 1}`
  return (
    <fieldset class="setup">
      <legend>{only ? 'As it arrives' : `Set-up ${index + 1}`}</legend>
      {only ? null : <Field path={at('name')} />}
      <Field path={at('frame')} usual="framed" />
      <div class="fields">
        <Field path={at('massKg')} />
        <Field path={at('ratedKg')} />
      </div>
      <Field path={at('ratingCovers')} />
      {only ? null : (
        <button
          type="button"
          class="quiet"
          onClick={() =>
            actions.edit(`Delete set-up ${name}`, draft => removeSetup(draft, pack.id, setup.id))
          }
        >
          Delete {name}
        </button>
      )}
    </fieldset>
  )
}
