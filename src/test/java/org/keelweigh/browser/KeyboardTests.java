package org.keelweigh.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** Without a mouse. */
class KeyboardTests extends Journey {

    private static final int MOST_STOPS = 80;

    @Test
    void movesAWeightWithTheKeysAndHearsAnotherAnswer(Browser browser) {
        Page page = desk(browser);
        lookAtTheExample(page);
        String before = answer(page);

        tabTo(page, "Points for Hauling it to the water");
        for (int step = 0; step < 20; step++) {
            page.keyboard().press("ArrowRight");
        }

        changes(page.locator("#answer .kw-answer-told"), before);
        assertThat(focused(page)).isEqualTo("Points for Hauling it to the water");
    }

    @Test
    void skipsToTheContent(Browser browser) {
        Page page = desk(browser);
        visit(page, "");

        page.keyboard().press("Tab");
        assertThat(page.evaluate("document.activeElement.textContent")).isEqualTo("Skip to the content");
        page.keyboard().press("Enter");

        page.waitForFunction("document.activeElement.id === 'content'");
        see(page.locator("main h1"));
    }

    private static void tabTo(Page page, String label) {
        for (int stop = 0; stop < MOST_STOPS && !label.equals(focused(page)); stop++) {
            page.keyboard().press("Tab");
        }
        assertThat(focused(page)).isEqualTo(label);
    }

    private static Object focused(Page page) {
        return page.evaluate("document.activeElement.getAttribute('aria-label') ?? ''");
    }
}
