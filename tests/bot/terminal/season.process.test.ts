import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { play, WIDTH } from './season-played.ts'

const folder = mkdtempSync(join(tmpdir(), 'larderbell-test-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('npm run season', () => {
  it('prints the same wherever and whenever it runs, and leaves nothing behind', async () => {
    const { status, stdout, stderr } = spawnSync(process.execPath, ['bot/start.cjs', 'season'], {
      cwd: join(import.meta.dirname, '..', '..', '..'),
      encoding: 'utf8',
      env: { ...process.env, TZ: 'Pacific/Apia', LARDERBELL_WIDTH: String(WIDTH), TMPDIR: folder, LARDERBELL_ZONE: '' },
    })
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout).toBe((await play()).printed)
    expect(readdirSync(folder)).toEqual([])
  })
})
