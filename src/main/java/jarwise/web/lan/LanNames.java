package jarwise.web.lan;

import io.javalin.http.Context;

/** The name under which a device asks for a page. */
public final class LanNames {

    private LanNames() {}

    /** {@return the name it used, if it is one of ours; else the best known one} */
    public static String asked(Context http, Reach reach) {
        String host = http.host();
        String name = host == null ? "" : LanAddresses.nameIn(host);
        return reach.names().contains(name) ? name : reach.names().get(0);
    }
}
