// What can be told of a drawn page by machine: what sticks out to the side, and words of buttons and headings that lie
// over each other.

/** Runs in the page: a sentence for each fault. */
export function lookOver() {
  const faults = []
  const { clientWidth } = document.documentElement
  const nameOf = element => {
    const text = (element.getAttribute('aria-label') ?? element.textContent).replace(/\s+/g, ' ').trim()
    return `${element.tagName.toLowerCase()} “${text.slice(0, 40)}”`
  }
  const scrolls = element => {
    for (let at = element; at && at !== document.body; at = at.parentElement)
      if (/auto|scroll|hidden|clip/.test(getComputedStyle(at).overflowX)) return true
    return false
  }

  const px = document.documentElement.scrollWidth - clientWidth
  if (px > 0) {
    const widest = [...document.body.querySelectorAll('*')].find(
      element => element.getBoundingClientRect().right > clientWidth + 0.5 && !scrolls(element),
    )
    faults.push(`${px} px too wide${widest ? `, first by ${nameOf(widest)}` : ''}`)
  }

  // What is fixed to the window, or sticks to its edge, lies over the rest on purpose.
  const layerOf = element => {
    for (let at = element; at; at = at.parentElement)
      if (/fixed|sticky/.test(getComputedStyle(at).position)) return at
    return null
  }
  const boxOf = element => {
    const range = document.createRange()
    range.selectNodeContents(element)
    return range.getBoundingClientRect()
  }
  const boxes = [...document.querySelectorAll('button, summary, h1, h2, h3, h4, label, .link')]
    .filter(element => element.checkVisibility({ opacityProperty: true, visibilityProperty: true }))
    .filter(element => !element.closest('.unseen, [aria-hidden="true"]'))
    .map(element => ({ element, box: boxOf(element), layer: layerOf(element) }))
    .filter(({ box }) => box.width > 1 && box.height > 1)
    .sort((a, b) => a.box.top - b.box.top)
  // Letters fill the middle of their line: boxes of lines that lie close may touch.
  const touch = 4
  boxes.forEach((a, i) => {
    for (let j = i + 1; j < boxes.length && boxes[j].box.top < a.box.bottom - touch; j++) {
      const b = boxes[j]
      if (a.layer !== b.layer || a.element.contains(b.element) || b.element.contains(a.element)) continue
      const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left)
      const down = Math.min(a.box.bottom, b.box.bottom) - b.box.top
      if (across > touch && down > touch) faults.push(`${nameOf(a.element)} lies over ${nameOf(b.element)}`)
    }
  })
  return faults
}
