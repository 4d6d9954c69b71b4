package jarwise.web.tls;

import jarwise.base.InvalidInput;
import java.nio.file.Path;
import java.security.cert.CertificateParsingException;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** A certificate that the owner of this machine brings along. */
public final class OwnCertificate {

    private static final int DNS_NAME = 2;
    private static final int IP_ADDRESS = 7;

    private OwnCertificate() {}

    /**
     * Reads a certificate and its key.
     *
     * @param certificate PEM file, the server's own certificate first
     * @param key PEM file
     * @param now what time it is
     * @throws InvalidInput saying which file is wrong, and how
     */
    public static Identity read(Path certificate, Path key, Instant now) {
        Identity identity = new Identity(Pem.key(key), Pem.certificates(certificate));
        if (!identity.belongsTogether()) {
            throw new InvalidInput(
                    ("The key '%s' does not belong to the certificate '%s'; the server's own"
                                    + " certificate must stand first in its file. Maybe the files"
                                    + " are of two different years.")
                            .formatted(key, certificate));
        }
        refuseUnlessValid(identity.certificate(), certificate, now);
        if (namesOf(identity).isEmpty()) {
            throw new InvalidInput(
                    ("The certificate '%s' names no address that a phone could open. Maybe it is"
                                    + " the authority's, not the server's.")
                            .formatted(certificate));
        }
        return identity;
    }

    private static void refuseUnlessValid(X509Certificate read, Path file, Instant now) {
        Instant until = read.getNotAfter().toInstant();
        if (now.isAfter(until)) {
            throw new InvalidInput(
                    ("The certificate '%s' ran out on %s; phones refuse it. Maybe there is a newer"
                                    + " one beside it.")
                            .formatted(file, until.atZone(ZoneOffset.UTC).toLocalDate()));
        }
        Instant from = read.getNotBefore().toInstant();
        if (now.isBefore(from)) {
            throw new InvalidInput(
                    ("The certificate '%s' holds only from %s on. Maybe the clock of this computer"
                                    + " is wrong.")
                            .formatted(file, from.atZone(ZoneOffset.UTC).toLocalDate()));
        }
    }

    /** {@return the host names and addresses that a certificate is for, without wildcards} */
    public static List<String> namesOf(Identity identity) {
        try {
            Collection<List<?>> names = identity.certificate().getSubjectAlternativeNames();
            return names == null
                    ? List.of()
                    : names.stream()
                            .filter(name -> isName((Integer) name.get(0)))
                            .map(name -> ((String) name.get(1)).toLowerCase(Locale.ROOT))
                            .filter(name -> !name.contains("*"))
                            .distinct()
                            .toList();
        } catch (CertificateParsingException e) {
            return List.of();
        }
    }

    private static boolean isName(int kind) {
        return kind == DNS_NAME || kind == IP_ADDRESS;
    }
}
