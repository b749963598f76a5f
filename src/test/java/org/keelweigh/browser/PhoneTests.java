package org.keelweigh.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.LoadState;
import java.util.List;
import org.junit.jupiter.api.Test;

/** In the seller's yard, on a phone. */
class PhoneTests extends Journey {

    private static final int CHECKS_TAPPED = 3;

    @Test
    void walksRoundABoatWithOneThumb(Browser browser) {
        Page page = phone(browser);
        lookAtTheExample(page);
        page.locator("#next-step a").tap();
        arrives(page, "/visit/");
        reads(page.getByTestId("standing"), " points");
        page.getByTestId("begin").tap();
        see(page.getByTestId("clock"));
        int before = made(page.getByTestId("progress"));

        for (int tapped = 0; tapped < CHECKS_TAPPED; tapped++) {
            Locator check = page.locator("section.kw-check");
            String id = check.getAttribute("data-testid");
            check.getByTestId("result-fine").tap();
            see(page.locator("section.kw-check:not([data-testid='" + id + "'])"));
        }

        assertThat(made(page.getByTestId("progress"))).isEqualTo(before + CHECKS_TAPPED);
        see(page.getByTestId("standing"));
        page.getByTestId("step-finish").tap();
        reads(page.locator("main"), "What was found");
        reads(page.locator("main"), before + CHECKS_TAPPED + " of ");
    }

    @Test
    void fitsEveryPageIntoTheWidthOfAPhone(Browser browser) {
        Page page = phone(browser);
        visit(page, "");
        assertFits(page, "first start");
        for (String place : Pages.of(editing, lookAtTheExample(page))) {
            visit(page, place);
            assertFits(page, place);
        }
    }

    private static void assertFits(Page page, String place) {
        page.waitForLoadState(LoadState.NETWORKIDLE);
        List<?> widths = (List<?>) page.evaluate("[document.documentElement.scrollWidth, window.innerWidth]");
        assertThat((Integer) widths.getFirst()).as("width of %s", place).isLessThanOrEqualTo(390);
        assertThat((Integer) widths.getLast())
                .as("what the phone shows of %s", place)
                .isEqualTo(390);
    }

    private static int made(Locator progress) {
        return Integer.parseInt(progress.innerText().replaceFirst(" of .*", ""));
    }
}
