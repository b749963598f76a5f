package org.keelweigh.ui.shell;

import com.vaadin.flow.server.VaadinSession;
import java.util.Optional;

/** Who sits at this browser, as far as they said; it signs their edits. */
public final class Visitor {

    private static final String NAME = "keelweigh.visitor";
    private static final String NOBODY = "Somebody";

    private Visitor() {}

    /** Tells the visitor's name. */
    public static String name() {
        return said().orElse(NOBODY);
    }

    /** Tells the visitor's name if they said it. */
    public static Optional<String> said() {
        return Optional.ofNullable(VaadinSession.getCurrent())
                .map(session -> session.getAttribute(NAME))
                .map(Object::toString);
    }

    /** Remembers the visitor's name for this session. */
    public static void rename(String name) {
        VaadinSession.getCurrent().setAttribute(NAME, name.isBlank() ? null : name.strip());
    }
}
