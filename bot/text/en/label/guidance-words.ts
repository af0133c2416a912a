import type { Guidance, Limit, Remark } from '../../../../core/label/country.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'

const WHO: Readonly<Record<Limit['who'], string>> = {
  everyone: '',
  men: ' for men',
  women: ' for women',
  women_young_old: ' for women, the over-65s and those of 18 to 21',
}

const PER: Readonly<Record<Limit['per'], string>> = { day: 'a day', week: 'a week', any_day: 'on any one day' }

const REMARKS: Readonly<Record<Remark, string>> = {
  spread_three_days: 'spread over three days or more',
  drink_free_days: 'with days without any',
  two_free_days: 'with two days without any',
  not_every_day: 'and not every day',
  may_be_outdated: 'from an edition that a newer one may have replaced',
  newer_is_lower: 'an older figure, and newer advice is lower',
  risk_rises_there: 'the level from which the risk of illness rises, not a safe one',
  no_safe_level: 'no amount is safe for health',
}

const limitWords = ({ who, amount, unit, per }: Limit, format: Format): string => {
  const drinks = amount === 1 ? 'drink' : 'drinks'
  return `${format.plain(amount)} ${unit === 'g' ? 'g' : drinks} ${PER[per]}${WHO[who]}`
}

/** `at most 14 drinks a week, spread over three days or more`. */
export const guidanceWords = ({ limits, remarks }: Guidance, format: Format): string => {
  const most = limits.length === 0 ? [] : [`at most ${listed(limits.map((limit) => limitWords(limit, format)))}`]
  return [...most, ...remarks.map((remark) => REMARKS[remark])].join(', ')
}
