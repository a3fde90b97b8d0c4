// A file's name is somebody else's words: nothing in it may steer the line it stands in, or hide how it ends.

import { cleanText } from '../../plan'

/** The file under its name without such characters; the same where it has none. */
export function plainlyNamed(file: File): File {
  const name = cleanText(file.name)
  return name === file.name ? file : new File([file], name, { type: file.type })
}
