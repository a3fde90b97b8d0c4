// Written into the first page itself, before anything is drawn: the page shows the welcome ahead of the app.

export {}

// A link or a file is about to be opened: the welcome would only flash by.
if (location.hash.length > 1 || location.search) document.documentElement.dataset.opens = ''

// What is tapped before the app is there is done once it is (main.tsx).
document.addEventListener('click', ({ target }) => {
  const button = target instanceof Element ? target.closest('button') : null
  if (!button) return
  document.querySelector('[data-tapped]')?.removeAttribute('data-tapped')
  button.dataset.tapped = ''
})
