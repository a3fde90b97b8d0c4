// What the model cannot know, whatever is typed.

export function Limits() {
  return (
    <>
      <ul>
        <li>What is not on your list.</li>
        <li>Whether a label is right, or a water source flows.</li>
        <li>How a pack fits you, and how strong or tired you are.</li>
        <li>Breaks, snow, mud, wind, illness and delay.</li>
        <li>How much you eat and drink.</li>
      </ul>
      <p>What each rule leaves out stands in its reason.</p>
    </>
  )
}
