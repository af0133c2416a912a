import { describe, expect, test } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import { parseZone } from '../../../core/quantity/time/parse-zone.ts'

const problemOf = (text: string) => {
  try {
    return parseZone(text)
  } catch (error) {
    if (error instanceof DomainError) return { problem: error.problem, ...error.values }
    throw error
  }
}

test.each([
  ['Europe/Rome', 'Europe/Rome'],
  ['europe/ROME', 'Europe/Rome'],
  ['rome', 'Europe/Rome'],
  [' new  york ', 'America/New_York'],
  ['America / New_York', 'America/New_York'],
  ['america/port au prince', 'America/Port-au-Prince'],
  ['St. John’s', 'America/St_Johns'],
  ['São Paulo', 'America/Sao_Paulo'],
  ['lord howe', 'Australia/Lord_Howe'],
  ['apia', 'Pacific/Apia'],
  ['utc', 'UTC'],
  ['Etc/UTC', 'UTC'],
  ['gmt', 'UTC'],
  ['us/pacific', 'America/Los_Angeles'],
  ['Japan', 'Asia/Tokyo'],
])('%j is %s', (typed, zone) => {
  expect(parseZone(typed)).toBe(zone)
})

// The IANA database renamed these in 2022 and 1993; Intl may give either name back.
test.each([
  ['kyiv', 'Europe/Kyiv'],
  ['Europe/Kiev', 'Europe/Kyiv'],
  ['kolkata', 'Asia/Kolkata'],
  ['Asia/Calcutta', 'Asia/Kolkata'],
])('%s is kept as %s', (typed, zone) => {
  expect(parseZone(typed)).toBe(zone)
})

test('every zone that Intl lists is found by its name and by its city, and is the same zone to Intl', () => {
  const resolved = (timeZone: string) => new Intl.DateTimeFormat('en', { timeZone }).resolvedOptions().timeZone
  const listed = Intl.supportedValuesOf('timeZone')
  expect(listed.length).toBeGreaterThan(400)
  for (const name of listed) {
    expect(resolved(parseZone(name)), name).toBe(resolved(name))
    expect(parseZone(name.toLowerCase().replaceAll('_', ' ')), name).toBe(parseZone(name))
    expect(resolved(parseZone(name.split('/').at(-1)!)), name).toBe(resolved(name))
    expect(parseZone(parseZone(name)), name).toBe(parseZone(name))
  }
})

test.each(['+02:00', '-5', '−5', 'UTC+2', 'gmt -3', '+0'])('%s is an offset, not a zone', (typed) => {
  expect(problemOf(typed)).toEqual({ problem: 'offset_zone', typed })
})

// To Intl, BST is Dhaka, EST Panama and PST Los Angeles; that is not what people mean who type them in winter and summer.
test.each(['BST', 'EST', 'PST', 'CET', 'EST5EDT', 'GMT0'])('%s is not guessed at', (typed) => {
  expect(problemOf(typed)).toMatchObject({ problem: 'unknown_zone' })
})

describe('names the nearest', () => {
  test.each([
    ['romme', ['Europe/Rome']],
    ['Europe/Romee', ['Europe/Rome']],
    ['mexico', ['America/Mexico_City']],
    ['atlantis', []],
    ['', []],
    ['/', []],
    ['🍋', []],
    ['constructor', []],
  ])('%j: %j', (typed, nearest) => {
    expect(problemOf(typed)).toEqual({ problem: 'unknown_zone', typed, nearest })
  })

  test('however long it is', () => {
    expect(problemOf('rome '.repeat(10_000))).toMatchObject({ problem: 'unknown_zone', nearest: [] })
  })
})
