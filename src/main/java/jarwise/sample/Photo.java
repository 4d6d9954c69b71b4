package jarwise.sample;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * The picture of a kept specimen.
 *
 * @param mediaType as a browser is told it, such as {@code image/jpeg}
 * @param base64 its bytes, as text
 */
public record Photo(String mediaType, String base64) {

    /** How the files of one kind begin, by their standards: ITU-T T.81 and ISO/IEC 15948. */
    private record Kind(String mediaType, String beginning) {

        boolean isOf(byte[] bytes) {
            byte[] first = HexFormat.of().parseHex(beginning);
            return bytes.length >= first.length
                    && Arrays.equals(bytes, 0, first.length, first, 0, first.length);
        }
    }

    private static final List<Kind> KINDS =
            List.of(new Kind("image/jpeg", "ffd8ff"), new Kind("image/png", "89504e470d0a1a0a"));

    /** {@return a picture of these bytes} */
    public static Photo of(String mediaType, byte[] bytes) {
        return new Photo(mediaType, Base64.getEncoder().encodeToString(bytes));
    }

    /** {@return the picture in a file; empty where it begins neither as a JPEG nor as a PNG} */
    public static Optional<Photo> in(byte[] file) {
        return KINDS.stream()
                .filter(kind -> kind.isOf(file))
                .map(kind -> of(kind.mediaType(), file))
                .findAny();
    }

    /** {@return its bytes} */
    public byte[] bytes() {
        return Base64.getDecoder().decode(base64);
    }

    /** {@return the hash of its bytes by which it is known, 64 small hexadecimal digits} */
    public String sha256() {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes());
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
