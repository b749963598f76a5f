package org.keelweigh.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Looks over every page with axe-core: light on a desk's screen, dark on a phone's, with all that is folded away opened. */
class AccessibilityTests extends Journey {

    @Test
    void findsNoViolationOnAWideLightPage(Browser browser) {
        assertThat(violations(desk(browser), ColorScheme.LIGHT)).isEmpty();
    }

    @Test
    void findsNoViolationOnANarrowDarkPage(Browser browser) {
        assertThat(violations(phone(browser), ColorScheme.DARK)).isEmpty();
    }

    private List<String> violations(Page page, ColorScheme colours) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(colours));
        List<String> found = new ArrayList<>();
        visit(page, "");
        found.addAll(look(page, "first start"));
        for (String place : Pages.of(editing, lookAtTheExample(page))) {
            visit(page, place);
            found.addAll(look(page, place));
        }
        return found;
    }

    private static List<String> look(Page page, String place) {
        page.waitForLoadState(LoadState.NETWORKIDLE);
        page.evaluate("document.querySelectorAll('details').forEach(each => each.open = true)");
        return Axe.violations(page, place);
    }
}
