/** Every part read-only, intersections made one, and an optional key shown as such: ways of writing a type compared. */
type Plain<T> = T extends object
  ? {
      readonly [Key in keyof T]-?: Record<never, never> extends Pick<T, Key>
        ? readonly ['optional', Plain<T[Key]>]
        : Plain<T[Key]>
    }
  : T

type Identity<T> = <Probe>() => Probe extends T ? 1 : 2

/** True where both describe the same values, optional keys included. */
export type Same<One, Other> = Identity<Plain<One>> extends Identity<Plain<Other>> ? true : false
