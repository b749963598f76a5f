package org.keelweigh.ui.visit;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.StyleSheet;
import java.util.function.Consumer;

/**
 * Reads the code of a field sheet with the camera or from a picture. Both stay in the browser, see {@code frontend/src/scan};
 * only the code's letters arrive here, and they are to be trusted as little as those that somebody types.
 */
@Tag("kw-code-scan")
@JsModule("context://scan/keelweigh-scan.js")
@StyleSheet("context://css/scan.css")
final class CodeScanner extends Component {

    private static final String CODE = "event.detail.code";

    CodeScanner(Consumer<String> scanned) {
        getElement()
                .addEventListener(
                        "code-scanned",
                        event -> scanned.accept(event.getEventData().path(CODE).asString("")))
                .addEventData(CODE);
    }
}
