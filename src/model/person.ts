/** Somebody as git writes people: `Name <address>`. */
export interface NameAndAddress {
  readonly name: string;
  /** Empty where none was given. */
  readonly address: string;
}

/** `Name <address>`, or a name alone; undefined for anything else. */
export function nameAndAddress(text: string): NameAndAddress | undefined {
  // Trimmed before the pattern: spaces that it might share out between its parts would take cubic time.
  const [, name, address = ''] = /^([^<>\p{Cc}]+)(?:<([^<>\s\p{Cc}]*)>)?$/u.exec(text.trim()) ?? [];
  const bare = name?.trim();
  return bare ? { name: bare, address } : undefined;
}
