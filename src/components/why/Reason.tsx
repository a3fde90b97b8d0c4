// One reason: the figure, what it is made of with the way to each part, what it rests on, and how far to trust it.

import {
  type Explanation,
  type Source,
  sourceText,
  standingsOf,
  type WhyInput,
  type WhyPart,
} from '../../report/why'
import { toField } from './focus-field'

interface ReasonProps {
  explanation: Explanation
  open: boolean
  /** The only one: it needs no line that opens it. */
  alone: boolean
  register: Record<string, Source>
}

export function Reason({ explanation, open, alone, register }: ReasonProps) {
  const { title, result } = explanation
  const head = (
    <>
      {title}: <strong>{result.text}</strong>
    </>
  )
  const body = <Body explanation={explanation} register={register} />
  if (alone)
    return (
      <div class="why-one">
        <p class="why-title">{head}</p>
        {body}
      </div>
    )
  return (
    <details class="why-one" open={open}>
      <summary class="why-title">
        <span>{head}</span>
      </summary>
      <div class="why-body">{body}</div>
    </details>
  )
}

function Body({ explanation, register }: Pick<ReasonProps, 'explanation' | 'register'>) {
  const { equation, says, parts, rounded, inputs, range, instead, sourceKeys, ignores, others } = explanation
  return (
    <>
      <p>
        {equation ? <strong>{equation}. </strong> : null}
        {says}
      </p>
      {parts?.length ? <Parts parts={parts} /> : null}
      {rounded ? (
        <p class="why-standing">Rounded: the parts as shown may not add up to the last digit.</p>
      ) : null}
      {inputs.length ? (
        <dl class="why-inputs">
          {inputs.map(input => (
            <div key={input.label + input.value}>
              <dt>
                {input.label}
                {input.from ? <span class="why-standing">{input.from}</span> : null}
              </dt>
              <dd>
                <Value input={input} />
              </dd>
            </div>
          ))}
        </dl>
      ) : null}
      {others ? <Others {...others} register={register} /> : null}
      {range.bounds.length || range.note ? (
        <p>
          <strong>{range.bounds.length ? 'Range. ' : ''}</strong>
          {range.bounds.map(({ text }) => `${text}. `)}
          {range.note}
        </p>
      ) : null}
      {instead ? <p class="why-instead">{instead}</p> : null}
      {ignores ? (
        <p>
          <strong>It leaves out</strong> {ignores}
        </p>
      ) : null}
      {sourceKeys.length ? (
        <ul class="why-sources">
          {sourceKeys.map(key => (
            <li key={key}>{sourceText(register[key]!)}</li>
          ))}
        </ul>
      ) : null}
    </>
  )
}

/** What it is made of, the largest first; a part that has parts of its own opens. */
function Parts({ parts }: { parts: readonly WhyPart[] }) {
  return (
    <ul class="why-parts">
      {parts.map(({ label, text, path, of }, i) => (
        <li key={label + i}>
          {of?.length ? (
            <details>
              <summary>
                <span class="why-part">{label}</span> <strong>{text}</strong>
              </summary>
              <Parts parts={of} />
            </details>
          ) : (
            <div class="why-row">
              <span class="why-part">{label}</span> <Value input={{ label, value: text, path }} />
            </div>
          )}
        </li>
      ))}
    </ul>
  )
}

function Value({ input: { label, value, path } }: { input: WhyInput }) {
  if (!path) return <strong>{value}</strong>
  return (
    <button
      type="button"
      class="link"
      aria-label={`${label}, ${value}: change it`}
      onClick={() => toField(path)}
    >
      {value}
    </button>
  )
}

type OthersProps = NonNullable<Explanation['others']> & { register: Record<string, Source> }

function Others({ title, list, note, register }: OthersProps) {
  return (
    <>
      <p>
        <strong>{title}</strong>
      </p>
      <dl class="why-inputs">
        {list.map(({ label, text, sourceKeys }) => (
          <div key={label}>
            <dt>
              {label}
              <span class="why-standing">{standingsOf(sourceKeys, register)}</span>
            </dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <p>{note}</p>
    </>
  )
}
