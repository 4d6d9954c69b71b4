package jarwise.usecase.devices;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Locale;

/** Secrets that nobody can guess, and codes that people can read out. */
public final class Secrets {

    /** No I, L, O or U: nothing that is taken for another. */
    private static final String SYMBOLS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int CODE_SYMBOLS = 8;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secrets() {}

    /** {@return 256 random bits, for a cookie} */
    public static String fresh() {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** {@return 64 random bits, for a name} */
    static String freshId() {
        byte[] bytes = new byte[8];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** {@return 40 random bits in eight symbols} */
    static String freshCode() {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < CODE_SYMBOLS; i++) {
            code.append(SYMBOLS.charAt(RANDOM.nextInt(SYMBOLS.length())));
        }
        return code.toString();
    }

    /** {@return what was typed, as it was meant: case, spaces, hyphens, and look-alikes} */
    static String meant(String typed) {
        return typed.toUpperCase(Locale.ROOT)
                .replaceAll("[\\s\\-–.]", "")
                .replace('I', '1')
                .replace('L', '1')
                .replace('O', '0');
    }

    /** {@return the hash of a secret. It is too long to be guessed, so a quick one will do} */
    static String hash(String secret) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256")
                            .digest(secret.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return whether two texts are the same, in a time that tells nothing} */
    public static boolean same(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
