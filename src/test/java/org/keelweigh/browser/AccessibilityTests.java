package org.keelweigh.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Looks over every page with axe-core, in light and in dark colours. */
class AccessibilityTests extends Journey {

    /** The bar that the framework shows when the connection is lost stands outside every page; it is not ours. */
    private static final String CONNECTION_BAR = "vaadin-connection-indicator";

    @Test
    void findsNoViolationOnAnyPage(Browser browser) {
        Page page = desk(browser);
        List<String> violations = new ArrayList<>();
        visit(page, "");
        look(page, "first start", violations);
        for (String place : Pages.of(editing, lookAtTheExample(page))) {
            visit(page, place);
            look(page, place, violations);
        }
        assertThat(violations).isEmpty();
    }

    private static void look(Page page, String place, List<String> violations) {
        for (ColorScheme colours : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(colours));
            page.waitForLoadState(LoadState.NETWORKIDLE);
            new AxeBuilder(page)
                    .exclude(List.of(CONNECTION_BAR))
                    .analyze()
                    .getViolations()
                    .forEach(each -> violations.add(place + " in " + colours + ": " + told(each)));
        }
    }

    private static String told(Rule violation) {
        return violation.getHelp()
                + violation.getNodes().stream()
                        .map(node -> "\n    " + node.getTarget() + " " + node.getFailureSummary())
                        .collect(Collectors.joining());
    }
}
