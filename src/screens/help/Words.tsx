// The app's own words.

import { GLOSSARY } from '../../report/help'

export function Words() {
  return (
    <dl class="help-words">
      {GLOSSARY.map(({ word, says }) => (
        <div key={word}>
          <dt>{word}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  )
}
