// A form of texts that belong to no trip, kept in the place the app remembers, so that it outlasts a reload and a look at
// another screen.

const LONGEST = 200

type Texts<T> = { [K in keyof T]: string }

/**
 * The form as a place keeps it, and back. `choices`: what a part may say if not any text; whatever else a stored detail
 * holds is passed over.
 */
export function textForm<T extends Texts<T>>(
  empty: T,
  choices: { readonly [K in keyof T]?: readonly T[K][] },
) {
  const keys = Object.keys(empty) as (keyof T & string)[]
  return {
    toDetail(form: T): string | null {
      const said = keys.filter(key => form[key] !== empty[key]).map(key => [key, form[key]])
      return said.length ? new URLSearchParams(said).toString() : null
    },
    fromDetail(detail: string | null): T {
      const stored = new URLSearchParams(detail ?? '')
      const textOf = (key: keyof T & string) => {
        const text = (stored.get(key) ?? empty[key]).slice(0, LONGEST)
        return choices[key] && !choices[key].some(choice => choice === text) ? empty[key] : text
      }
      return Object.fromEntries(keys.map(key => [key, textOf(key)])) as T
    },
  }
}
