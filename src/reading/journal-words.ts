/** `rod journals`, `main journals`. */
export function journalWords(kind: 'rods' | 'mains'): string {
  return kind === 'rods' ? 'rod journals' : 'main journals';
}
