package jarwise.web.tls;

import jarwise.base.InvalidInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.cert.CertificateException;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/**
 * The authority of one data folder: phones trust it once, and then every certificate that it signs
 * for this machine. Its key never leaves the folder, and it can vouch for nothing but addresses of
 * local networks.
 */
public final class LocalAuthority {

    private static final Duration KEPT_AT_LEAST = Duration.ofDays(100);

    private final Path folder;
    private final Identity authority;

    private LocalAuthority(Path folder, Identity authority) {
        this.folder = folder;
        this.authority = authority;
    }

    /**
     * Opens the authority of a folder, which is made at the first time.
     *
     * @param folder only the owner may read what lies in it
     * @param now what time it is
     * @throws InvalidInput if the folder cannot be written or its files are damaged
     */
    public static LocalAuthority in(Path folder, Instant now) {
        try {
            OwnerFiles.makeFolder(folder);
            Path key = folder.resolve("authority.key");
            Path certificate = folder.resolve("authority.crt");
            if (Files.exists(key) || Files.exists(certificate)) {
                Identity known = read(certificate, key);
                if (now.isBefore(known.certificate().getNotAfter().toInstant())) {
                    return new LocalAuthority(folder, known);
                }
            }
            Identity made = CertificateMaker.authority(now);
            write(made, certificate, key);
            return new LocalAuthority(folder, made);
        } catch (IOException e) {
            throw cannotWrite(folder, e);
        }
    }

    /** {@return what phones trust} */
    public X509Certificate certificate() {
        return authority.certificate();
    }

    /**
     * {@return the identity of the server: the one of the last start where it still holds, or a
     * fresh one}
     *
     * @param names addresses and host names under which it is shown
     * @param now what time it is
     */
    public Identity serverFor(List<String> names, Instant now) {
        Path key = folder.resolve("server.key");
        Path certificate = folder.resolve("server.crt");
        try {
            if (Files.exists(key) && Files.exists(certificate)) {
                Identity known = read(certificate, key);
                if (holds(known, names, now)) {
                    return known;
                }
            }
        } catch (InvalidInput | IOException damaged) {
            // Nobody but this program needs it: a fresh one takes its place.
        }
        try {
            Identity made = CertificateMaker.server(authority, names, now);
            write(made, certificate, key);
            return made;
        } catch (IOException e) {
            throw cannotWrite(folder, e);
        }
    }

    private boolean holds(Identity server, List<String> names, Instant now) {
        X509Certificate certificate = server.certificate();
        Instant ends = certificate.getNotAfter().toInstant();
        return ends.isAfter(now.plus(KEPT_AT_LEAST))
                && !certificate.getNotBefore().toInstant().isAfter(now)
                && Set.copyOf(OwnCertificate.namesOf(server)).equals(Set.copyOf(names))
                && isSigned(certificate);
    }

    private boolean isSigned(X509Certificate certificate) {
        try {
            certificate.verify(certificate().getPublicKey());
            return true;
        } catch (GeneralSecurityException e) {
            return false; // of an earlier authority
        }
    }

    private static Identity read(Path certificate, Path key) throws IOException {
        if (Files.exists(key)) {
            OwnerFiles.keepFileToOwner(key);
        }
        Identity identity = new Identity(Pem.key(key), Pem.certificates(certificate));
        if (!identity.belongsTogether()) {
            throw new InvalidInput(
                    ("The key '%s' does not belong to the certificate beside it. Maybe restore both"
                                    + " from a copy; without them every phone has to trust anew.")
                            .formatted(key));
        }
        return identity;
    }

    private static void write(Identity identity, Path certificate, Path key) throws IOException {
        OwnerFiles.write(key, Pem.written(identity.key()));
        OwnerFiles.write(certificate, Pem.written(identity.chain()));
    }

    private static InvalidInput cannotWrite(Path folder, IOException why) {
        InvalidInput fault =
                new InvalidInput(
                        ("The certificates can't be kept in '%s': %s. Maybe the folder belongs to"
                                        + " someone else.")
                                .formatted(folder, why.getMessage()));
        fault.initCause(why);
        return fault;
    }

    /** {@return a certificate in the form that phones take, DER} */
    public byte[] encoded() {
        try {
            return certificate().getEncoded();
        } catch (CertificateException e) {
            throw new IllegalStateException(e);
        }
    }
}
