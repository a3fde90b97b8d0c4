/** Opens the demo trip; its data is fetched only when asked for. */
export async function loadDemo(): Promise<void> {
  const { openDemo } = await import('./demo')
  openDemo()
}
