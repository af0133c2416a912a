import { expect, it } from 'vitest'
import type { ChatError } from '../../../bot/chat/chat-error.ts'
import { findCommand } from '../../../bot/chat/grammar/find-command.ts'
import { commands } from '../../../bot/commands/index.ts'

const meant = (line: string): string | null => {
  try {
    return findCommand(line, commands).command.path
  } catch (error) {
    return `${(error as ChatError).nearest}?`
  }
}

it.each([
  ['/jar herb', 'jar show?'],
  ['/JAR "my herb"', 'jar show?'],
  ['/jar shw herb', 'jar show?'],
  ['/jar show herb', 'jar show'],
  ['/jar', 'null?'],
  ['/herb lemon', 'null?'],
])('%s is %s', (line, path) => {
  expect(meant(line)).toBe(path)
})
