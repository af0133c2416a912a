import type { Match } from './routes.ts'

export interface RateLimits {
  /** How many requests of one route a channel, interaction or the whole takes in a window; Discord's own for messages is about 5 in 5 s. */
  readonly perBucket: number
  readonly bucketMs: number
  /** How many of the bot's requests all routes take together; Discord's own is 50 in 1 s. */
  readonly perBot: number
  readonly botMs: number
}

/** What Discord does, as far as it is documented or commonly seen. */
export const DISCORDS_LIMITS: RateLimits = { perBucket: 5, bucketMs: 5000, perBot: 50, botMs: 1000 }

interface Window {
  endsAt: number
  left: number
}

export interface Verdict {
  readonly headers: Readonly<Record<string, string>>
  /** Seconds to wait, when there was nothing left. */
  readonly retryAfterS: number | undefined
  readonly isGlobal: boolean
}

const open = (windows: Map<string, Window>, key: string, most: number, lastsMs: number): Window => {
  const nowAt = performance.now()
  const known = windows.get(key)
  if (known && known.endsAt > nowAt) return known
  const fresh = { endsAt: nowAt + lastsMs, left: most }
  windows.set(key, fresh)
  return fresh
}

const seconds = ({ endsAt }: Window): number => Math.ceil(Math.max(1, endsAt - performance.now())) / 1000

/** Counts requests as Discord does, in real time: discord.js waits in real time too. */
export const newBuckets = (limits: RateLimits): ((match: Match) => Verdict) => {
  const windows = new Map<string, Window>()
  return ({ name, auth, params }) => {
    // Answers to interactions are not counted into the bot's global limit.
    const all = open(windows, 'global', limits.perBot, limits.botMs)
    if (auth && all.left === 0) {
      const retryAfterS = seconds(all)
      return { headers: { 'x-ratelimit-global': 'true', 'x-ratelimit-scope': 'global' }, retryAfterS, isGlobal: true }
    }
    if (auth) all.left -= 1
    const bucket = open(
      windows,
      `${name}:${params.channel ?? params.token ?? params.guild ?? ''}`,
      limits.perBucket,
      limits.bucketMs,
    )
    const isSpent = bucket.left === 0
    if (!isSpent) bucket.left -= 1
    return {
      headers: {
        'x-ratelimit-limit': String(limits.perBucket),
        'x-ratelimit-remaining': String(bucket.left),
        'x-ratelimit-reset-after': String(seconds(bucket)),
        'x-ratelimit-bucket': name,
        ...(isSpent && { 'x-ratelimit-scope': 'user' }),
      },
      retryAfterS: isSpent ? seconds(bucket) : undefined,
      isGlobal: false,
    }
  }
}
