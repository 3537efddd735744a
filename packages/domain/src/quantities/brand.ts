declare const brand: unique symbol

/** A number or string that carries its unit in its type; only constructors in this folder (and the contract's) cast. */
export type Brand<Base, Name extends string> = Base & { readonly [brand]: Name }
