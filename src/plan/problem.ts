// What is wrong with a plan at one of its fields.

export interface Problem {
  path: (string | number)[]
  /** For who writes the file: it may name fields as the file does. */
  message: string
  /** The same for people who see no file, where the message would name fields. */
  said?: string
}

export const problem = (path: Problem['path'], message: string, said?: string): Problem =>
  said === undefined ? { path, message } : { path, message, said }
