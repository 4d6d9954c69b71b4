package jarwise.web.tls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.cert.CertPath;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LocalAuthorityTest {

    private static final Instant NOW = Instant.parse("2026-05-07T05:40:00Z");
    private static final List<String> NAMES =
            List.of("192.168.1.20", "fd00:0:0:0:0:0:0:2", "desk.local");

    @TempDir Path folder;

    private Path keys() {
        return folder.resolve("certificates");
    }

    private Identity server(List<String> names, Instant now) {
        return LocalAuthority.in(keys(), now).serverFor(names, now);
    }

    /** Throws unless the chain holds by the rules that browsers go by, name constraints too. */
    private void isTrusted(Identity server, Instant at) throws Exception {
        X509Certificate root = LocalAuthority.in(keys(), at).certificate();
        // Constraints of an anchor are not looked at, so that the root stands in the path as well.
        CertPath path =
                CertificateFactory.getInstance("X.509")
                        .generateCertPath(List.of(server.certificate(), root));
        PKIXParameters rules =
                new PKIXParameters(
                        Set.of(
                                new TrustAnchor(
                                        root.getSubjectX500Principal(),
                                        root.getPublicKey(),
                                        null)));
        rules.setRevocationEnabled(false);
        rules.setDate(Date.from(at));
        CertPathValidator.getInstance("PKIX").validate(path, rules);
    }

    @Test
    void aServerIsTrustedWhereItsAuthorityIs() throws Exception {
        Identity server = server(NAMES, NOW);

        isTrusted(server, NOW);
        assertThat(OwnCertificate.namesOf(server)).containsExactlyElementsOf(NAMES);
        assertThat(server.certificate().getPublicKey().getAlgorithm()).isEqualTo("EC");
    }

    @ParameterizedTest
    @ValueSource(strings = {"203.0.113.5", "8.8.8.8", "bank.example", "2001:db8:0:0:0:0:0:1"})
    void theAuthorityCannotVouchForAnythingOutside(String name) {
        Identity server = server(List.of(name), NOW);

        assertThatThrownBy(() -> isTrusted(server, NOW))
                .isInstanceOf(CertPathValidatorException.class);
    }

    @Test
    void phonesTakeHowLongItLasts() {
        X509Certificate certificate = server(NAMES, NOW).certificate();

        Duration lasts =
                Duration.between(
                        certificate.getNotBefore().toInstant(),
                        certificate.getNotAfter().toInstant());
        assertThat(lasts).isLessThan(Duration.ofDays(398));
    }

    @Test
    void theNextStartKeepsBothWhileTheyHold() {
        Identity first = server(NAMES, NOW);
        Identity second = server(NAMES, NOW.plus(Duration.ofDays(99)));

        assertThat(second).isEqualTo(first);
    }

    @Test
    void aServerIsRenewedBeforeItRunsOutUnderTheSameAuthority() throws Exception {
        X509Certificate authority = LocalAuthority.in(keys(), NOW).certificate();
        Identity first = server(NAMES, NOW);
        Instant later = NOW.plus(Duration.ofDays(101));
        Identity second = server(NAMES, later);

        assertThat(second.certificate()).isNotEqualTo(first.certificate());
        assertThat(LocalAuthority.in(keys(), later).certificate()).isEqualTo(authority);
        isTrusted(second, later.plus(Duration.ofDays(150)));
    }

    @Test
    void aServerIsMadeAnewForANewAddress() {
        Identity first = server(NAMES, NOW);
        Identity second = server(List.of("10.0.0.7"), NOW);

        assertThat(second.certificate()).isNotEqualTo(first.certificate());
        assertThat(OwnCertificate.namesOf(second)).containsExactly("10.0.0.7");
    }

    @Test
    void aDamagedServerKeyIsMadeAnewADamagedAuthorityIsTold() throws Exception {
        server(NAMES, NOW);
        Files.writeString(keys().resolve("server.key"), "cut off");
        assertThat(server(NAMES, NOW).belongsTogether()).isTrue();

        Files.writeString(keys().resolve("authority.key"), "cut off");
        assertThatThrownBy(() -> LocalAuthority.in(keys(), NOW))
                .hasMessageContaining("authority.key")
                .hasMessageContaining("Maybe");
    }

    @Test
    void onlyTheOwnerMayReadTheKeys() throws Exception {
        server(NAMES, NOW);
        Path key = keys().resolve("authority.key");
        if (!Files.getFileStore(key).supportsFileAttributeView("posix")) {
            return;
        }
        assertThat(rights(keys())).isEqualTo("rwx------");
        for (String name : List.of("authority.key", "authority.crt", "server.key", "server.crt")) {
            assertThat(rights(keys().resolve(name))).as(name).isEqualTo("rw-------");
        }

        Files.setPosixFilePermissions(key, PosixFilePermissions.fromString("rw-r--r--"));
        LocalAuthority.in(keys(), NOW);
        assertThat(rights(key)).isEqualTo("rw-------");
    }

    private static String rights(Path place) throws Exception {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(place));
    }
}
