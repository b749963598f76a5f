package org.keelweigh.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import org.junit.jupiter.api.Test;

/** Doing what the answer asks for. */
class NextCheckTests extends Journey {

    @Test
    void makesTheAnswerAndTheOfferFollowTheCheckThatWasAskedFor(Browser browser) {
        Page page = desk(browser);
        String list = lookAtTheExample(page);
        double looked = share(page);
        String asked = page.locator("#next-checks li a").first().innerText();
        String boat = asked.substring(0, asked.indexOf(": "));
        String check = asked.substring(asked.indexOf(": ") + 2);
        assertThat(boat).isEqualTo(leader(page));
        visit(page, list + "/offer");
        double fair = fairDeal(page, boat);

        record(page, list, boat, check, "fine");
        visit(page, list);
        waitForAnswer(page);
        assertThat(share(page)).isGreaterThan(looked);
        assertThat(page.locator("#next-checks").innerText()).doesNotContain(asked);

        record(page, list, boat, check, "major");
        visit(page, list + "/offer");
        assertThat(offer(page, boat).innerText()).contains(check + ": major");
        assertThat(fairDeal(page, boat)).isLessThan(fair);
    }

    private void record(Page page, String list, String boat, String check, String outcome) {
        openBoat(page, list, boat, "inspection");
        Locator button = page.locator(".kw-boat-check")
                .filter(new Locator.FilterOptions()
                        .setHas(page.locator("h4").getByText(check, new Locator.GetByTextOptions().setExact(true))))
                .locator("button[data-outcome=" + outcome + "]");
        unfold(button);
        button.click();
        assertThat(button)
                .hasAttribute(
                        "aria-pressed", "true", new LocatorAssertions.HasAttributeOptions().setTimeout(PATIENCE_MS));
    }

    /** Tells how much of what matters on the leading boat was checked, in per cent. */
    private static double share(Page page) {
        String figures = page.locator("#answer .kw-answer-figures").innerText();
        return Double.parseDouble(figures.replaceFirst("(?s).*?([0-9.]+) % of what matters was checked.*", "$1"));
    }

    private static Locator offer(Page page, String boat) {
        Locator part = page.locator(".kw-offer-boat")
                .filter(new Locator.FilterOptions().setHas(page.locator("h2").getByText(boat)));
        see(part);
        return part;
    }

    private static double fairDeal(Page page, String boat) {
        return Double.parseDouble(offer(page, boat)
                .innerText()
                .replaceFirst("(?s).*Aim for\\s+[^0-9]*([0-9,]+).*", "$1")
                .replace(",", ""));
    }
}
