// The page that explains the model: closed parts, an invented trip's own reasons, and words that fit a phone.

import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import demo from '../../data/demo-plan.json'
import { Why } from '../../src/components/why'
import { fromPlanDocument, parsePlan } from '../../src/plan'
import { HelpScreen } from '../../src/screens/help'
import { actions, library, newId } from '../../src/store'

/** What a phone may be asked to read, the sources left out. */
const MOST_WORDS = 1200

beforeEach(() => {
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo plan is refused')
  actions.setSystem('metric')
  actions.createTrip(fromPlanDocument(parsed.document, newId))
})
afterEach(cleanup)

const show = (props: Partial<Parameters<typeof HelpScreen>[0]> = {}) =>
  render(<HelpScreen onClose={() => undefined} {...props} />)
const parts = () => [...document.querySelectorAll<HTMLDetailsElement>('.help-part')]
const openParts = () => parts().filter(({ open }) => open)
const openAll = () => fireEvent.click(screen.getByRole('button', { name: 'Open all' }))

/** Words as the eye meets them: pictures, tables and what is for paper alone left out. */
function wordsIn(element: Element): number {
  const copy = element.cloneNode(true) as Element
  for (const unread of copy.querySelectorAll(
    'svg, table, dialog, .help-printed, .help-contents, #help-sources',
  ))
    unread.remove()
  const texts: string[] = []
  const walk = (node: Node) => {
    if (node.nodeType === 3) texts.push(node.textContent ?? '')
    node.childNodes.forEach(walk)
  }
  walk(copy)
  return texts
    .join(' ')
    .split(/[ \n]+/)
    .filter(word => /[\p{L}\d]/u.test(word)).length
}

describe('the parts', () => {
  test('are closed on a phone; one opens by itself or from the contents, and all by one button', () => {
    show()
    expect(parts().length).toBeGreaterThan(8)
    expect(openParts()).toEqual([])
    const contents = screen.getByRole('navigation', { name: 'Contents' })
    fireEvent.click(within(contents).getByText('Safety notes'))
    expect(openParts().map(({ id }) => id)).toEqual(['help-safety'])
    expect(document.activeElement).toBe(document.querySelector('#help-safety > summary'))
    expect(screen.getByText(/treat all of it before you drink/)).toBeTruthy()
    openAll()
    expect(openParts()).toHaveLength(parts().length)
    fireEvent.click(screen.getByRole('button', { name: 'Close all' }))
    expect(openParts()).toEqual([])
  })

  test('open for paper by themselves', async () => {
    show()
    dispatchEvent(new Event('beforeprint'))
    await waitFor(() => expect(openParts()).toHaveLength(parts().length))
  })

  test('with pictures are open on a desk', () => {
    show({ isDesk: true })
    expect(openParts().map(part => part.querySelectorAll('figure').length > 0)).toEqual(Array(4).fill(true))
  })

  test('have their headings in order', () => {
    show()
    openAll()
    const levels = [...document.querySelectorAll('h1, h2, h3, h4')].map(({ tagName }) => Number(tagName[1]))
    expect(levels[0]).toBe(1)
    expect(levels.filter(level => level === 1)).toHaveLength(1)
    expect(levels.every((level, i) => i === 0 || level <= levels[i - 1]! + 1)).toBe(true)
  })

  test('are no more to read than a phone’s reader has patience for', () => {
    const { container } = show()
    openAll()
    const words = wordsIn(container)
    expect(words).toBeGreaterThan(600)
    expect(words).toBeLessThanOrEqual(MOST_WORDS)
  })
})

describe('a figure of the invented trip', () => {
  const ask = async (figure: RegExp) => {
    const button = screen.getAllByText(figure, { selector: '.ask' })[0]!
    fireEvent.click(button)
    return waitFor(() => {
      const panel = button.nextElementSibling?.querySelector<HTMLElement>('.why-panel')
      if (!panel) throw new Error('no panel yet')
      return panel
    })
  }

  test('has its own reason, not the open trip’s, and leads to no field of it', async () => {
    show({ isDesk: true })
    const panel = await ask(/^14\.2\skg$/)
    expect(panel.textContent).toMatch(/when you leave Ford, day 2/)
    expect(panel.textContent).not.toMatch(/Cistern Terrace/)
    expect(within(panel).queryByRole('button')).toBeNull()
  })

  test('in a verdict comes after its sentence', async () => {
    show()
    openAll()
    const panel = await ask(/^Too small$/)
    const sheet = panel.closest('dialog')!
    expect(sheet.querySelector('p')!.textContent).toMatch(/^Too small by [\d.]+\sL when you leave Ford/)
  })
})

test('the reason of a figure leads to the help', async () => {
  render(<Why about={{ kind: 'walking-time', leg: 0 }} figure="Walking" />)
  fireEvent.click(screen.getByText('Walking'))
  fireEvent.click(await screen.findByText('How the model works'))
  expect(library.value.place).toMatchObject({ screen: 'help', detail: null })
  await waitFor(() => expect(document.querySelector('dialog[open]')).toBeNull())
})
