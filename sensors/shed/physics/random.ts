/** A repeatable source of numbers that look random: the same seed gives the same run. */
export interface Random {
  /** Integer, 0 to 2³² − 1. */
  word(): number;
  /** Evenly spread, 0 up to but not including 1. */
  uniform(): number;
  /** Evenly spread between two bounds. */
  between(low: number, high: number): number;
  /** Normally distributed, mean 0, standard deviation 1. */
  normal(): number;
}

type Words = readonly [number, number, number, number];

const WORD_COUNT = 2 ** 32;

function rotateLeft(word: number, bits: number): number {
  return (word << bits) | (word >>> (32 - bits));
}

/**
 * Random numbers by xoshiro128** from its four words of state.
 *
 * @param words - four 32-bit words, not all 0
 * @returns a source that starts from exactly this state
 *
 * **Source:** Blackman and Vigna 2021, Scrambled linear pseudorandom number generators,
 * ACM Transactions on Mathematical Software 47(4); normal numbers by Box and Muller 1958.
 */
export function randomFromWords(words: Words): Random {
  let [a, b, c, d] = words;
  const word = () => {
    const result = Math.imul(rotateLeft(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotateLeft(d, 11);
    return result;
  };
  const uniform = () => word() / WORD_COUNT;
  return {
    word,
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    // 1 − u is never 0, so the logarithm is finite
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
}

/**
 * Random numbers from a seed, and from a stream number where several independent runs are needed.
 *
 * @param seed - any integer
 * @param stream - any integer; another stream gives other numbers of the same seed
 * @returns the source
 */
export function seededRandom(seed: number, stream = 0): Random {
  let mixed = (Math.imul(seed, 0x9e3779b1) ^ Math.imul(stream + 1, 0x85ebca6b)) >>> 0;
  // spreads nearby seeds over the whole state: a finalizer of the murmur kind
  const next = () => {
    mixed = (mixed + 0x9e3779b9) >>> 0;
    let word = mixed;
    word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
    word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
    return (word ^ (word >>> 16)) >>> 0;
  };
  return randomFromWords([next(), next(), next(), next() | 1]);
}
