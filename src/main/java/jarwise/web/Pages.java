package jarwise.web;

import io.javalin.config.RoutesConfig;

/** The routes of one screen. */
public interface Pages {

    /** Adds the screen's addresses. */
    void addTo(RoutesConfig routes);
}
