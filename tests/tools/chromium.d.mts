export const chromiumFlags: string[]
/** The path of a Chromium, if asked for one that is a whole browser; installs or explains when there is none. */
export function chromiumPath(which?: { whole?: boolean }): string
