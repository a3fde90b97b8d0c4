// The keys of the table, in one closed line.

const KEYS = [
  ['↑ ↓ ← →', 'go from cell to cell'],
  ['Enter, F2, or just type', 'edits the cell'],
  ['Enter', 'then goes down'],
  ['Tab', 'then edits the next cell'],
  ['Esc', 'leaves the cell as it was'],
  ['n', 'adds an item below'],
  ['Delete', 'deletes the item'],
  ['h', 'leaves it at home, or takes it along'],
  ['o', 'opens all about it'],
  ['Alt + ↑ ↓', 'moves it up or down'],
] as const

export const Keys = () => (
  <details class="more keys">
    <summary>Keys</summary>
    <dl>
      {KEYS.map(([key, does]) => (
        <div key={key}>
          <dt>
            <kbd>{key}</kbd>
          </dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
    <p class="hint">In a name, too, n, h and o are keys: press Enter first.</p>
  </details>
)
