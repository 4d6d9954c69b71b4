package jarwise.web.lan;

import io.javalin.http.Context;

/** By which way a request came in. Each connector marks its own requests. */
public enum Door {
    /** This machine itself, on 127.0.0.1. */
    DESK,
    /** The local network, over https. */
    LAN,
    /** The local network, over plain http: first contact and the round sheet. */
    PLAIN;

    /** Attribute of a request; a request without one came to a server with the desk's door only. */
    static final String ATTRIBUTE = "jarwise.door";

    /** {@return the door of a request} */
    public static Door of(Context http) {
        Object door = http.req().getAttribute(ATTRIBUTE);
        return door instanceof Door known ? known : DESK;
    }
}
