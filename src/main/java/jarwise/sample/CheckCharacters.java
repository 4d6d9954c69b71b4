package jarwise.sample;

/**
 * A check character behind a row of characters, by the two methods of ISO/IEC 7064. Which character
 * stands for which value is the caller's matter.
 *
 * <p><b>Pure</b> (modulus M, radix r): P ← (P + a) · r mod M for each value a, beginning with 0;
 * the check value c is the one with P + c ≡ 1 (mod M). For two check characters, append a 0 first:
 * c is then the number that both write together.
 *
 * <p><b>Hybrid</b> (M + 1, M): beginning with P = M, S ← (P + a) mod M, with M in place of 0, and P
 * ← 2 S mod (M + 1); c is the one with P + c ≡ 1 (mod M).
 *
 * <p>Both find every single wrong character. With a prime M above every value, and r neither 0 nor
 * 1 mod M, the pure method also finds every swap of two neighbours: it changes the sum by a
 * multiple of (r − 1)(a − b), which M does not divide. The hybrid method misses a few swaps.
 *
 * <p><b>Source.</b> ISO/IEC 7064:2003, clauses 7 and 10 (from memory); checked by {@code
 * check-characters.csv}.
 *
 * @param modulus M, 2 or more
 * @param radix r of the pure method; of no meaning in the hybrid one
 * @param hybrid whether by the hybrid method
 */
record CheckCharacters(int modulus, int radix, boolean hybrid) {

    /** {@return the pure system called "MOD modulus-radix"} */
    static CheckCharacters pure(int modulus, int radix) {
        return new CheckCharacters(modulus, radix, false);
    }

    /** {@return the hybrid system called "MOD modulus + 1,modulus"} */
    static CheckCharacters hybrid(int modulus) {
        return new CheckCharacters(modulus, 2, true);
    }

    /**
     * Computes what stands behind a row of characters.
     *
     * @param values the characters' values, 0 to {@code modulus − 1}
     * @return the check character's value, 0 to {@code modulus − 1}
     */
    int check(int... values) {
        int product = hybrid ? modulus : 0;
        for (int value : values) {
            product = hybrid ? hybridStep(product + value) : (product + value) * radix % modulus;
        }
        return Math.floorMod(1 - product, modulus);
    }

    private int hybridStep(int sum) {
        int rest = sum % modulus;
        return 2 * (rest == 0 ? modulus : rest) % (modulus + 1);
    }
}
