package org.keelweigh.browser;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.stream.Collectors;

/** Looks over a page as it stands with axe-core. */
final class Axe {

    /** The bar that the framework shows when the connection is lost stands outside every page; it is not ours. */
    private static final String CONNECTION_BAR = "vaadin-connection-indicator";

    private Axe() {}

    /** Tells what is wrong on a page, each with the elements it is about. */
    static List<String> violations(Page page, String place) {
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        return new AxeBuilder(page)
                .options(options).exclude(List.of(CONNECTION_BAR)).analyze().getViolations().stream()
                        .map(each -> place + ": " + told(each))
                        .toList();
    }

    private static String told(Rule violation) {
        return violation.getHelp()
                + violation.getNodes().stream()
                        .map(node -> "\n    " + node.getTarget() + " " + node.getFailureSummary())
                        .collect(Collectors.joining());
    }
}
