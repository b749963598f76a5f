package org.keelweigh.ui.settings;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinServiceInitListener;
import jakarta.servlet.http.Cookie;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Keeps the visitor's colours in a cookie of their browser and gives them to every page they open. */
@Component
class ColourMemory implements VaadinServiceInitListener {

    private static final String COOKIE = "keelweigh-colours";
    private static final int YEAR_S = 365 * 24 * 3600;

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().addUIInitListener(init -> read(VaadinRequest.getCurrent())
                .ifPresent(each -> apply(init.getUI(), each)));
    }

    private static Optional<ColourScheme> read(@Nullable VaadinRequest request) {
        Cookie @Nullable [] cookies = request == null ? null : request.getCookies();
        return cookies == null
                ? Optional.empty()
                : Arrays.stream(cookies)
                        .filter(each -> each.getName().equals(COOKIE))
                        .flatMap(each -> Arrays.stream(ColourScheme.values())
                                .filter(scheme -> scheme.code().equals(each.getValue())))
                        .findFirst();
    }

    /** The browser writes the cookie itself: an edit may come in over a socket, whose answer carries no cookies. */
    static void keep(UI ui, ColourScheme scheme) {
        apply(ui, scheme);
        ui.getPage()
                .executeJs(
                        "document.cookie = $0 + '=' + $1 + '; path=/; max-age=' + $2 + '; SameSite=Lax'",
                        COOKIE,
                        scheme.code(),
                        YEAR_S);
    }

    static ColourScheme current(UI ui) {
        return Arrays.stream(ColourScheme.values())
                .filter(each -> each.value() == ui.getPage().getColorScheme())
                .findFirst()
                .orElse(ColourScheme.SYSTEM);
    }

    private static void apply(UI ui, ColourScheme scheme) {
        ui.getPage().setColorScheme(scheme.value());
    }
}
