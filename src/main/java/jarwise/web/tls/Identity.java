package jarwise.web.tls;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.util.List;

/**
 * A private key with the certificates that vouch for it.
 *
 * @param key the secret part
 * @param chain the certificate of this key first, then those that signed it
 */
public record Identity(PrivateKey key, List<X509Certificate> chain) {

    private static final byte[] PROBE = {1, 2, 3};

    public Identity {
        chain = List.copyOf(chain);
    }

    /** {@return the certificate of this key} */
    public X509Certificate certificate() {
        return chain.get(0);
    }

    /** {@return key and certificates as the web server takes them, in memory only} */
    public KeyStore keyStore(String password) {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            store.setKeyEntry(
                    "server", key, password.toCharArray(), chain.toArray(Certificate[]::new));
            return store;
        } catch (GeneralSecurityException | IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return whether what the key signs is what the certificate vouches for} */
    boolean belongsTogether() {
        PublicKey known = certificate().getPublicKey();
        String algorithm = key.getAlgorithm().equals("RSA") ? "SHA256withRSA" : "SHA256withECDSA";
        try {
            Signature signing = Signature.getInstance(algorithm);
            signing.initSign(key);
            signing.update(PROBE);
            Signature checking = Signature.getInstance(algorithm);
            checking.initVerify(known);
            checking.update(PROBE);
            return checking.verify(signing.sign());
        } catch (GeneralSecurityException e) {
            return false; // a key of another kind than the certificate's
        }
    }
}
