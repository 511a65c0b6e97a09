/** Names as they stand alone, with a capital. @param names - as within a sentence */
export function capitalized<Name extends string>(
  names: Readonly<Record<Name, string>>,
): Readonly<Record<Name, string>> {
  const capitals = Object.entries<string>(names).map(([key, name]) => [
    key,
    name.charAt(0).toUpperCase() + name.slice(1),
  ]);
  return Object.fromEntries(capitals);
}
