package org.relegend.twin;

/** 64-bit mixing for colours. Equal colours may collide: whatever is matched by one is verified. */
final class Hashes {
  private Hashes() {}

  /** The finaliser of SplitMix64 (Steele, Lea, Flood 2014): every bit in moves every bit out. */
  static long mix(long z) {
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /** Order matters. */
  static long mix(long a, long b) {
    return mix(a * 0x9e3779b97f4a7c15L + mix(b + 0x632be59bd9b4e019L));
  }

  static long of(String text) {
    long hash = text.length();
    for (int i = 0; i < text.length(); i++) {
      hash = hash * 0x100000001b3L + text.charAt(i);
    }
    return mix(hash);
  }
}
