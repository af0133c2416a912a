import { PassThrough, Writable } from 'node:stream'

/** The escape character that begins a sequence, its number and its letter. */
const CSI = /^\p{Cc}\[(\d*)([A-Z])/u

/** A terminal of so many columns: keeps what stands on its screen, obeying the few sequences that readline writes. */
export const fakeTerminal = (columns = 40) => {
  const rows: string[][] = [[]]
  let [row, column] = [0, 0]
  const put = (character: string): void => {
    if (column === columns) {
      row++
      column = 0
    }
    while (rows.length <= row) rows.push([])
    const line = rows[row]!
    while (line.length < column) line.push(' ')
    line[column++] = character
  }
  const obey = (count: string, letter: string): void => {
    const number = Number(count || 1)
    if (letter === 'A') row = Math.max(0, row - number)
    else if (letter === 'B') row += number
    else if (letter === 'C') column += number
    else if (letter === 'D') column = Math.max(0, column - number)
    else if (letter === 'G') column = number - 1
    else if (letter === 'J') {
      rows.splice(row + 1)
      rows[row]?.splice(column)
    } else if (letter === 'K') rows[row]?.splice(column)
    else throw new RangeError(`a sequence that this terminal does not know: ${letter}`)
  }
  const write = (text: string): void => {
    for (let rest = text; rest !== ''; ) {
      const [sequence, count = '', letter = ''] = CSI.exec(rest) ?? []
      if (sequence !== undefined) {
        obey(count, letter)
        rest = rest.slice(sequence.length)
        continue
      }
      const character = rest[0]!
      if (character === '\r') column = 0
      else if (character === '\n') {
        row++
        column = 0
        while (rows.length <= row) rows.push([])
      } else put(character)
      rest = rest.slice(1)
    }
  }
  const output = Object.assign(
    new Writable({
      write: (chunk, _encoding, done) => {
        write(String(chunk))
        done()
      },
    }),
    { columns, isTTY: true },
  )
  const input = new PassThrough()
  return {
    input,
    output,
    print: write,
    /** What stands on the screen, without empty rows at its end. */
    screen: (): string =>
      rows
        .map((line) => line.join('').trimEnd())
        .join('\n')
        .trimEnd(),
    /** Under which column the cursor stands, and in which row. */
    cursor: () => ({ row, column }),
  }
}
