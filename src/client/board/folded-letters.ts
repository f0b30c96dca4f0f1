/** Letters that Unicode does not take apart into a plain letter and a mark, as people without such keys type them. */
const plain: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ħ: 'h',
  ı: 'i',
  ŋ: 'n',
};

/** A text in small letters without marks, so that "dluga" finds "Długa" and "lindtrad" finds "Lindtråd". */
export function foldedLetters(text: string): string {
  return text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[ßæœøłđðþħıŋ]/g, (letter) => plain[letter] ?? letter)
    .replace(/[’‘`´]/g, "'");
}
