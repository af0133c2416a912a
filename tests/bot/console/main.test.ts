import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '..', '..', '..')

/** The whole program, as npm starts it. Slow: what can be tested inside has its own tests. */
const start = (argv: readonly string[], input = '', settings: Record<string, string> = {}) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['bot/start.cjs', ...argv], {
    cwd: root,
    input,
    encoding: 'utf8',
    env: { ...process.env, LARDERBELL_WIDTH: '80', ...settings },
  })
  return { status, stdout, stderr }
}

describe('the program', () => {
  it('asks, and ends with the worst of its lines', () => {
    const { status, stdout, stderr } = start(['ask', '-', '--json'], '/help\n/hlep\n')
    expect([status, stderr]).toEqual([2, ''])
    const [help, error] = stdout
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(help.data.commands.length).toBeGreaterThan(0)
    expect(error.error).toMatchObject({ code: 'unknown_command', nearest: 'help' })
  })

  it('chats through a pipe to its last line', () => {
    const { status, stdout, stderr } = start([], '/help\n/hlep\n/help')
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout.match(/^Commands$/gm)).toHaveLength(2)
    expect(stdout).toContain('did you mean /help?')
  })

  it('says in a sentence what it cannot take', () => {
    const unknown = start(['aks'])
    expect(unknown).toMatchObject({ status: 2, stdout: '', stderr: 'I do not know “aks”; did you mean ask?\n' })
    const { status, stderr } = start(['ask', '/help'], '', { LARDERBELL_WIDTH: '7' })
    expect(status).toBe(2)
    expect(stderr).toMatch(/^LARDERBELL_WIDTH cannot be “7”; give a whole number .*\n$/)
  })
})
