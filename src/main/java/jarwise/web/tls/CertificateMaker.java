package jarwise.web.tls;

import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** Makes keys (EC P-256) and certificates. Phones refuse a server's that lasts over 398 days. */
final class CertificateMaker {

    private static final Duration AUTHORITY_LASTS = Duration.ofDays(3650);
    private static final Duration SERVER_LASTS = Duration.ofDays(200);

    /** A phone's clock may be behind. */
    private static final Duration BACKDATED = Duration.ofDays(1);

    private static final List<String> LOCAL_NETWORKS =
            List.of("10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "127.0.0.0/8", "fc00::/7");
    private static final List<String> LOCAL_NAMES =
            List.of("local", "lan", "home.arpa", "internal", "localhost");

    private static final SecureRandom RANDOM = new SecureRandom();

    private CertificateMaker() {}

    /** {@return a fresh authority, which can vouch for nothing but local addresses and names} */
    static Identity authority(Instant now) {
        try {
            KeyPair pair = pair();
            BigInteger serial = serial();
            // The number tells two data folders apart in a phone's list.
            String mark = serial.toString(16).substring(0, 6).toUpperCase(Locale.ROOT);
            X500Principal name = new X500Principal("CN=Jarwise local authority " + mark);
            var builder =
                    new JcaX509v3CertificateBuilder(
                            name,
                            serial,
                            Date.from(now.minus(BACKDATED)),
                            Date.from(now.plus(AUTHORITY_LASTS)),
                            name,
                            pair.getPublic());
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
            builder.addExtension(
                    Extension.keyUsage,
                    true,
                    new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
            builder.addExtension(
                    Extension.extendedKeyUsage,
                    false,
                    new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
            builder.addExtension(Extension.nameConstraints, true, localOnly());
            builder.addExtension(
                    Extension.subjectKeyIdentifier,
                    false,
                    new JcaX509ExtensionUtils().createSubjectKeyIdentifier(pair.getPublic()));
            X509Certificate made = signed(builder, pair.getPrivate());
            return new Identity(pair.getPrivate(), List.of(made));
        } catch (GeneralSecurityException | IOException | OperatorCreationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return a fresh server certificate for these addresses and names} */
    static Identity server(Identity authority, List<String> names, Instant now) {
        try {
            KeyPair pair = pair();
            X509Certificate issuer = authority.certificate();
            Instant ends = now.plus(SERVER_LASTS).truncatedTo(ChronoUnit.SECONDS);
            var builder =
                    new JcaX509v3CertificateBuilder(
                            issuer,
                            serial(),
                            Date.from(now.minus(BACKDATED)),
                            Date.from(earlier(ends, issuer.getNotAfter().toInstant())),
                            new X500Principal("CN=Jarwise"),
                            pair.getPublic());
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
            builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
            builder.addExtension(
                    Extension.extendedKeyUsage,
                    false,
                    new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
            builder.addExtension(
                    Extension.subjectAlternativeName,
                    false,
                    new GeneralNames(
                            names.stream()
                                    .map(CertificateMaker::generalName)
                                    .toArray(GeneralName[]::new)));
            builder.addExtension(
                    Extension.authorityKeyIdentifier,
                    false,
                    new JcaX509ExtensionUtils().createAuthorityKeyIdentifier(issuer));
            List<X509Certificate> chain = new ArrayList<>();
            chain.add(signed(builder, authority.key()));
            chain.addAll(authority.chain());
            return new Identity(pair.getPrivate(), chain);
        } catch (GeneralSecurityException | IOException | OperatorCreationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static NameConstraints localOnly() {
        return new NameConstraints(
                Stream.concat(
                                LOCAL_NETWORKS.stream()
                                        .map(net -> new GeneralName(GeneralName.iPAddress, net)),
                                LOCAL_NAMES.stream()
                                        .map(name -> new GeneralName(GeneralName.dNSName, name)))
                        .map(GeneralSubtree::new)
                        .toArray(GeneralSubtree[]::new),
                null);
    }

    private static GeneralName generalName(String name) {
        boolean address = name.contains(":") || name.matches("[0-9.]+");
        return new GeneralName(address ? GeneralName.iPAddress : GeneralName.dNSName, name);
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }

    private static KeyPair pair() throws GeneralSecurityException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"), RANDOM);
        return generator.generateKeyPair();
    }

    private static BigInteger serial() {
        return new BigInteger(126, RANDOM).setBit(126);
    }

    private static X509Certificate signed(X509v3CertificateBuilder builder, PrivateKey key)
            throws GeneralSecurityException, IOException, OperatorCreationException {
        byte[] encoded =
                builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(key))
                        .getEncoded();
        return (X509Certificate)
                CertificateFactory.getInstance("X.509")
                        .generateCertificate(new java.io.ByteArrayInputStream(encoded));
    }
}
