import { clearScreenDown, cursorTo, type Interface, moveCursor } from 'node:readline'

/** Prints above the prompt and puts the prompt, what was typed and the cursor back as they were. */
export function sayAbove(lines: Interface, terminal: NodeJS.WritableStream, print: () => void): void {
  moveCursor(terminal, 0, -lines.getCursorPos().rows)
  cursorTo(terminal, 0)
  clearScreenDown(terminal)
  print()
  // Drawing the prompt anew goes up by these rows first; it begins in an empty one.
  Object.assign(lines, { prevRows: 0 })
  lines.prompt(true)
}
