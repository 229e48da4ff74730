/** Public teaching data set for KR-20: 10 students x 10 items, 1 for a right answer. */
export const ROWS = [
  '1111110110',
  '1011011101',
  '1111011001',
  '0010001000',
  '0000010010',
  '1110111111',
  '1101110111',
  '1111111101',
  '0101111101',
  '1101101110',
].map((row) => [...row].map(Number));
