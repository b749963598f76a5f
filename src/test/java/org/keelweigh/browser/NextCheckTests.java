package org.keelweigh.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** Doing what the answer asks for. */
class NextCheckTests extends Journey {

    @Test
    void makesTheAnswerAndTheOfferFollowTheCheckThatWasAskedFor(Browser browser) {
        Page page = desk(browser);
        String list = lookAtTheExample(page);
        String leader = leader(page);
        double looked = share(page);
        String asked = page.locator("#next-checks li a").first().innerText();
        String boat = asked.substring(0, asked.indexOf(": "));
        String check = asked.substring(asked.indexOf(": ") + 2);
        assertThat(boat).isEqualTo(leader);
        visit(page, list + "/offer");
        String offered = offer(page, boat);

        openBoat(page, list, boat, "inspection");
        Locator row = page.locator(".kw-boat-check")
                .filter(new Locator.FilterOptions().setHas(page.locator("h4").getByText(check)));
        String progress = page.getByTestId("inspection-progress").innerText();
        row.locator("button[data-outcome=fine]").click();
        changes(page.getByTestId("inspection-progress"), progress);

        visit(page, list);
        waitForAnswer(page);
        assertThat(share(page)).isGreaterThan(looked);
        assertThat(page.locator("#next-checks").innerText()).doesNotContain(asked);
        visit(page, list + "/offer");
        assertThat(offer(page, boat)).isNotEqualTo(offered);
    }

    /** Tells how much of what matters on the leading boat was checked, in per cent. */
    private static double share(Page page) {
        String figures = page.locator("#answer .kw-answer-figures").innerText();
        return Double.parseDouble(
                figures.replaceFirst("(?s).*?([0-9.]+) % of what matters was checked.*", "$1"));
    }

    private static String offer(Page page, String boat) {
        Locator part = page.locator(".kw-offer-boat").filter(new Locator.FilterOptions().setHasText(boat)).first();
        see(part);
        return part.innerText();
    }
}
