// Cells that a spreadsheet would take for a formula are written so that it does not, and read back as they were.
// Rule: OWASP "CSV Injection" (from memory): a cell that begins with = + - @, a tab or a carriage return gets a single
// quote before it, inside the quotes of the cell. The line feed and the full-width forms of the four are of later
// versions of that page (from memory). That page also warns of separators that begin a new cell: where a decimal comma
// is usual, spreadsheets part cells by semicolons and look into our quotes, and where it is not, they look so into a
// table parted by semicolons. What follows a separator or a line break is treated alike, also behind quotes: such a
// spreadsheet takes them for an empty quoted cell, or for the start of one. A clean text holds no tabs.
// Numbers of ours never begin so and stay numbers.

const CELL_STARTS = String.raw`(^|[;,\n][\s"]*)`
const FORMULA_STARTS = String.raw`[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]`
// What already looks guarded gets another quote, or reading would take away one that belongs to the text.
const IN_NEED = new RegExp(`${CELL_STARTS}(?='*${FORMULA_STARTS})`, 'g')
const GUARDED = new RegExp(`${CELL_STARTS}'(?='*${FORMULA_STARTS})`, 'g')

/** A clean text (it begins with no blank or line break) as it may stand in a cell. */
export const guarded = (text: string): string => text.replace(IN_NEED, "$1'")

/** The text of a cell that may have been guarded, by us or by others who keep the rule. */
export const unguarded = (cell: string): string => cell.replace(GUARDED, '$1')
