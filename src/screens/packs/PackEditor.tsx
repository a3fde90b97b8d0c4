// The figures of one pack and its set-ups. A pack with a removable frame has two set-ups, each with its own mass.

import { ChoiceField, QuantityField, TextField, ToggleField } from '../../components/fields'
import {
  addSetup,
  type DraftPack,
  type DraftSetup,
  defaults,
  fieldPath,
  LIMITS,
  removeSetup,
} from '../../plan'
import { FIT_LINE } from '../../report'
import { actions, newId } from '../../store'

export function PackEditor({ pack }: { pack: DraftPack }) {
  const at = (...parts: string[]) => fieldPath('packs', pack.id, ...parts)
  const name = pack.name ?? 'pack'
  return (
    <>
      <p class="hint">{FIT_LINE}</p>
      <TextField path={at('name')} label="Name" />
      <div class="fields">
        <QuantityField
          path={at('bodyLitres')}
          label="Main body"
          kind="volume"
          limit={LIMITS.pack.bodyLitres}
          hint="The main body alone, not the advertised total."
        />
        <QuantityField
          path={at('outsideLitres')}
          label="Pockets"
          kind="volume"
          limit={LIMITS.pack.outsideLitres}
          hint="All outside pockets together. Empty: not judged."
        />
        <QuantityField
          path={at('collarLitres')}
          label="Collar above the brim"
          kind="volume"
          limit={LIMITS.pack.collarLitres}
          usual={defaults.PACK.collarLitres}
        />
      </div>
      <ChoiceField
        path={at('bodyFrom')}
        label="Main body litres are"
        usual={defaults.PACK.bodyFrom}
        options={[
          { value: 'stated', label: 'Stated' },
          { value: 'test-method', label: 'By test method' },
          { value: 'measured', label: 'Measured' },
          { value: 'guess', label: 'Guessed' },
        ]}
      />
      <ToggleField
        path={at('sealed')}
        label="Waterproof with sealed seams: needs no liner"
        usual={defaults.PACK.sealed}
      />
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
          <QuantityField path={at('price')} label="Price" kind="money" limit={LIMITS.pack.price} />
          <TextField path={at('currency')} label="Currency" />
          <TextField path={at('fabric')} label="Fabric" />
          <QuantityField path={at('denier')} label="Denier" kind="number" limit={LIMITS.pack.denier} />
          <QuantityField
            path={at('innerHeightCm')}
            label="Inner height"
            kind="length"
            limit={LIMITS.pack.innerHeightCm}
          />
          <QuantityField
            path={at('innerWidthCm')}
            label="Inner width"
            kind="length"
            limit={LIMITS.pack.innerWidthCm}
          />
          <QuantityField
            path={at('innerDepthCm')}
            label="Inner depth"
            kind="length"
            limit={LIMITS.pack.innerDepthCm}
          />
        </div>
        <div class="inner-shape">
          <ChoiceField
            path={at('section')}
            label="Cut across, the inside is"
            usual={defaults.PACK.section}
            options={[
              { value: 'ellipse', label: 'Oval' },
              { value: 'rectangle', label: 'With corners' },
            ]}
          />
          <p class="hint">
            Inner sizes tell how rigid things go in; all three are needed. Oval unless you choose:{' '}
            {defaults.DEFAULT_ORIGINS.section}.
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
      {only ? null : <TextField path={at('name')} label="Name of the set-up" />}
      <ChoiceField
        path={at('frame')}
        label="Frame"
        usual="framed"
        options={[
          { value: 'framed', label: 'With frame' },
          { value: 'frameless', label: 'Frameless' },
        ]}
      />
      <div class="fields">
        <QuantityField path={at('massKg')} label="Mass" kind="mass" fine limit={LIMITS.setup.massKg} />
        <QuantityField
          path={at('ratedKg')}
          label="Rated load"
          kind="mass"
          limit={LIMITS.setup.ratedKg}
          hint="What its maker says it carries. Empty: not known."
        />
      </div>
      <ChoiceField
        path={at('ratingCovers')}
        label="The rating covers"
        usual={defaults.SETUP.ratingCovers}
        options={[
          { value: 'contents-and-pack', label: 'Contents and pack' },
          { value: 'contents', label: 'Contents' },
        ]}
      />
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
