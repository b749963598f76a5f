package org.keelweigh.ui.shell;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.server.ErrorEvent;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Logs what went wrong with its cause and shows one plain sentence. */
@Component
class PlainErrors implements VaadinServiceInitListener {

    private static final Logger LOG = LoggerFactory.getLogger(PlainErrors.class);
    private static final int SHOWN_MS = 8000;

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().addSessionInitListener(init -> init.getSession().setErrorHandler(PlainErrors::handle));
    }

    private static void handle(ErrorEvent error) {
        if (leftMidway(error.getThrowable())) {
            LOG.debug("A page was left while it was being answered", error.getThrowable());
            return;
        }
        LOG.error("A page failed", error.getThrowable());
        UI ui = UI.getCurrent();
        if (ui != null) {
            ui.access(() -> Notification.show(
                    "Something went wrong here, and it is written in the log. What was saved before is safe; please reload the page.",
                    SHOWN_MS,
                    Notification.Position.TOP_CENTER));
        }
    }

    /** Somebody who closes a tab breaks the connection; that is no fault of the page. */
    private static boolean leftMidway(@Nullable Throwable thrown) {
        for (Throwable each = thrown; each != null; each = each.getCause()) {
            if (each instanceof IOException) {
                return true;
            }
        }
        return false;
    }
}
