package jarwise.web.lan;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.UUID;

/** The authority's certificate as a profile, which is how an iPhone or iPad takes it. */
public final class TrustProfile {

    private TrustProfile() {}

    /**
     * {@return the profile, XML; the same certificate makes the same profile}
     *
     * @param certificate DER
     * @param name under which the phone lists it
     * @param says what it is for
     */
    public static byte[] of(byte[] certificate, String name, String says) {
        UUID whole = UUID.nameUUIDFromBytes(certificate);
        UUID part = UUID.nameUUIDFromBytes(whole.toString().getBytes(StandardCharsets.UTF_8));
        return """
        <?xml version="1.0" encoding="UTF-8"?>
        <!DOCTYPE plist PUBLIC "-//Apple//DTD PLIST 1.0//EN" \
        "http://www.apple.com/DTDs/PropertyList-1.0.dtd">
        <plist version="1.0">
        <dict>
          <key>PayloadType</key><string>Configuration</string>
          <key>PayloadVersion</key><integer>1</integer>
          <key>PayloadIdentifier</key><string>jarwise.authority.%1$s</string>
          <key>PayloadUUID</key><string>%1$s</string>
          <key>PayloadDisplayName</key><string>%3$s</string>
          <key>PayloadDescription</key><string>%4$s</string>
          <key>PayloadContent</key>
          <array>
            <dict>
              <key>PayloadType</key><string>com.apple.security.root</string>
              <key>PayloadVersion</key><integer>1</integer>
              <key>PayloadIdentifier</key><string>jarwise.authority.%1$s.root</string>
              <key>PayloadUUID</key><string>%2$s</string>
              <key>PayloadDisplayName</key><string>%3$s</string>
              <key>PayloadCertificateFileName</key><string>authority.crt</string>
              <key>PayloadContent</key><data>%5$s</data>
            </dict>
          </array>
        </dict>
        </plist>
        """
                .formatted(
                        whole,
                        part,
                        escaped(name),
                        escaped(says),
                        Base64.getEncoder().encodeToString(certificate))
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
