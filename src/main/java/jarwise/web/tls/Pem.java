package jarwise.web.tls;

import jarwise.base.InvalidInput;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.asn1.pkcs.PrivateKeyInfo;
import org.bouncycastle.asn1.x9.X9ObjectIdentifiers;
import org.bouncycastle.openssl.PEMEncryptedKeyPair;
import org.bouncycastle.openssl.PEMKeyPair;
import org.bouncycastle.openssl.PEMParser;
import org.bouncycastle.pkcs.PKCS8EncryptedPrivateKeyInfo;

/** Keys and certificates in PEM files. */
final class Pem {

    private static final int LARGEST_BYTES = 1_000_000;

    private Pem() {}

    static String written(PrivateKey key) {
        return written("PRIVATE KEY", key.getEncoded());
    }

    static String written(List<X509Certificate> certificates) {
        StringBuilder text = new StringBuilder();
        for (X509Certificate certificate : certificates) {
            try {
                text.append(written("CERTIFICATE", certificate.getEncoded()));
            } catch (CertificateException e) {
                throw new IllegalStateException(e);
            }
        }
        return text.toString();
    }

    private static String written(String what, byte[] content) {
        String body = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(content);
        return "-----BEGIN %s-----\n%s\n-----END %s-----\n".formatted(what, body, what);
    }

    /**
     * {@return the certificates of a file, in its order}
     *
     * @throws InvalidInput if it cannot be read or holds none
     */
    static List<X509Certificate> certificates(Path file) {
        byte[] content = read(file, "certificate");
        List<X509Certificate> found = new ArrayList<>();
        try {
            CertificateFactory.getInstance("X.509")
                    .generateCertificates(new ByteArrayInputStream(content))
                    .forEach(one -> found.add((X509Certificate) one));
        } catch (CertificateException e) {
            found.clear();
        }
        if (found.isEmpty()) {
            throw new InvalidInput(
                    ("The file '%s' holds no certificate; a PEM file with -----BEGIN"
                                    + " CERTIFICATE----- is allowed. Maybe it is the key.")
                            .formatted(file));
        }
        return found;
    }

    /**
     * {@return the private key of a file}
     *
     * @throws InvalidInput if it cannot be read, is locked with a password, or is no EC or RSA key
     */
    static PrivateKey key(Path file) {
        String text = new String(read(file, "key"), StandardCharsets.ISO_8859_1);
        try (PEMParser parser = new PEMParser(new StringReader(text))) {
            for (Object part = parser.readObject(); part != null; part = parser.readObject()) {
                if (part instanceof PEMEncryptedKeyPair
                        || part instanceof PKCS8EncryptedPrivateKeyInfo) {
                    throw new InvalidInput(
                            ("The key in '%s' is locked with a password; a key without one is"
                                            + " allowed, in a file that only you may read.")
                                    .formatted(file));
                }
                if (part instanceof PEMKeyPair pair) {
                    return decoded(pair.getPrivateKeyInfo());
                }
                if (part instanceof PrivateKeyInfo info) {
                    return decoded(info);
                }
            }
        } catch (IOException | GeneralSecurityException e) {
            InvalidInput fault = noKey(file);
            fault.initCause(e);
            throw fault;
        }
        throw noKey(file);
    }

    private static InvalidInput noKey(Path file) {
        return new InvalidInput(
                ("The file '%s' holds no private key that can be used; a PEM file with an EC or RSA"
                     + " key is allowed. Maybe it is the certificate, or it was cut off.")
                        .formatted(file));
    }

    private static PrivateKey decoded(PrivateKeyInfo info)
            throws IOException, GeneralSecurityException {
        String algorithm;
        var kind = info.getPrivateKeyAlgorithm().getAlgorithm();
        if (kind.equals(X9ObjectIdentifiers.id_ecPublicKey)) {
            algorithm = "EC";
        } else if (kind.equals(PKCSObjectIdentifiers.rsaEncryption)) {
            algorithm = "RSA";
        } else {
            throw new GeneralSecurityException("key of kind " + kind);
        }
        return KeyFactory.getInstance(algorithm)
                .generatePrivate(new PKCS8EncodedKeySpec(info.getEncoded()));
    }

    private static byte[] read(Path file, String what) {
        try {
            if (Files.isRegularFile(file) && Files.size(file) <= LARGEST_BYTES) {
                return Files.readAllBytes(file);
            }
        } catch (IOException e) {
            InvalidInput fault = unreadable(file, what);
            fault.initCause(e);
            throw fault;
        }
        throw unreadable(file, what);
    }

    private static InvalidInput unreadable(Path file, String what) {
        return new InvalidInput(
                ("The %s file '%s' can't be read. Maybe the name is mistyped, or the file belongs"
                                + " to someone else.")
                        .formatted(what, file));
    }
}
