export const chromiumFlags: string[]
/** The path of a Chromium; installs or explains when there is none. */
export function chromiumPath(): string
