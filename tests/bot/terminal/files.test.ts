import { mkdir, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Command } from '../../../bot/chat/command.ts'
import type { ReplyFile } from '../../../bot/chat/reply.ts'
import { openFile } from '../../../bot/terminal/files/open-file.ts'
import { forgetFilesIn, saveFileIn } from '../../../bot/terminal/files/save-file.ts'
import { en } from '../../../bot/text/en/index.ts'
import { inFolder } from '../../store/in-folder.ts'
import { commands, testDesk } from '../test-desk.ts'

const bytesOf = (text: string) => new TextEncoder().encode(text)

describe('a file that a reply comes with', () => {
  it.each([
    ['ENOSPC', 'the disk is full'],
    ['EDQUOT', 'the disk is full'],
    ['EROFS', 'I’m not allowed to write there'],
    ['EIO', 'EIO'],
  ])('that could not be written (%s) is said to be so: %s', (code, why) => {
    expect(en.console.fileFailed({ name: 'a.ics', code })).toMatch(new RegExp(`a\\.ics: ${why}\\.$`))
  })

  it('is written for its owner alone, and never over another', () =>
    inFolder(async (folder) => {
      const save = saveFileIn(join(folder, 'data', 'files'))
      const paths = [
        await save('a.ics', bytesOf('one')),
        await save('a.ics', bytesOf('two')),
        await save('a.ics', bytesOf('three')),
      ]
      expect(paths.map((path) => path.slice(folder.length))).toEqual([
        '/data/files/a.ics',
        '/data/files/a-2.ics',
        '/data/files/a-3.ics',
      ])
      expect(await Promise.all(paths.map((path) => readFile(path, 'utf8')))).toEqual(['one', 'two', 'three'])
      expect((await stat(paths[0]!)).mode & 0o777).toBe(0o600)
      expect((await stat(join(folder, 'data', 'files'))).mode & 0o777).toBe(0o700)
    }))

  it('is removed with its numbered others, and nothing else is', () =>
    inFolder(async (folder) => {
      const files = join(folder, 'files')
      const save = saveFileIn(files)
      expect(await forgetFilesIn(files)()).toBe(0)
      for (const name of ['larderbell.ics', 'larderbell.ics', 'larderbell-jar-tag.png']) await save(name, bytesOf('x'))
      await writeFile(join(files, 'mine.txt'), 'x')
      expect(await forgetFilesIn(files)()).toBe(3)
      expect(await readdir(files)).toEqual(['mine.txt'])
      await rm(join(files, 'mine.txt'))
      await save('larderbell.ics', bytesOf('x'))
      expect(await forgetFilesIn(files)()).toBe(1)
      expect(await readdir(folder)).toEqual([])
    }))

  it('is written by many at once under as many names', () =>
    inFolder(async (folder) => {
      const save = saveFileIn(folder)
      await Promise.all(Array.from({ length: 20 }, (_, index) => save('a.csv', bytesOf(String(index)))))
      expect(await readdir(folder)).toHaveLength(20)
    }))

  it('fails where a file is in the place of the folder', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'files'), '')
      await expect(saveFileIn(join(folder, 'files'))('a.ics', bytesOf('x'))).rejects.toThrow()
    }))
})

const settings = commands.find(({ path }) => path === 'settings')!

/** `/settings` with these files. */
const withFiles = (files: readonly ReplyFile[]): Command => ({
  ...settings,
  run: async (input, context) => ({ ...(await settings.run(input, context)), files }),
})

const fileOf = (draw: ReplyFile['draw']): ReplyFile => ({
  name: 'a.ics',
  mime: 'text/calendar',
  alt: { group: 'files', key: 'calendar_file', values: { count: 1 } },
  draw,
})

const saying = withFiles([fileOf(async () => bytesOf('x'))])

describe('a reply with a file', () => {
  it('says where it was written, in words and as data', async () => {
    const desk = testDesk({ commands: [saying] })
    expect(await desk.textOf('/settings')).toContain('\nWritten to files/a.ics\n')
    expect((await desk.jsonOf('/settings')).files).toEqual([
      { name: 'a.ics', mime: 'text/calendar', path: 'files/a.ics' },
    ])
    expect(desk.files().map(({ name }) => name)).toEqual(['a.ics', 'a.ics'])
  })

  it('stands where its file cannot be made, and says so', async () => {
    const failing = withFiles([fileOf(async () => Promise.reject(new Error('no font')))])
    const desk = testDesk({ commands: [failing] })
    const text = await desk.textOf('/settings')
    expect(text).toMatch(/^These are your settings\.\n\n.*a\.ics.*\n\n +Units/)
    expect(text).toContain(en.console.fileFailed({ name: 'a.ics', code: null }))
    expect(desk.faults().join()).toContain('a.ics: Error')
    expect((await desk.jsonOf('/settings')).files).toEqual([{ name: 'a.ics', mime: 'text/calendar', path: null }])
  })
})

describe('a file that is given', () => {
  it('is read up to a size, and nothing of what is larger', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'a.json')
      await writeFile(path, 'x'.repeat(100))
      expect(await openFile(path, 100)).toEqual({ name: 'a.json', bytes: Buffer.from('x'.repeat(100)) })
      await expect(openFile(path, 99)).rejects.toMatchObject({ code: 'limit', problem: 'file_too_big' })
    }))

  it('is refused in a sentence where it is none', () =>
    inFolder(async (folder) => {
      await mkdir(join(folder, 'folder'))
      await expect(openFile(join(folder, 'none.json'), 1)).rejects.toMatchObject({ problem: 'file_not_found' })
      await expect(openFile(join(folder, 'folder'), 1)).rejects.toMatchObject({ values: { why: 'no_file' } })
      await expect(openFile('/dev/zero', 1)).rejects.toMatchObject({ values: { why: 'no_file' } })
      await expect(openFile('x'.repeat(5000), 1)).rejects.toMatchObject({ problem: 'file_not_found' })
      await expect(openFile('a\u0000b', 1)).rejects.toMatchObject({ problem: 'file_not_found' })
    }))
})
