package org.keelweigh.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import org.junit.jupiter.api.Test;

/** A shortlist of one's own: typed in, ranked at once, and kept from what cannot be meant. */
class OwnListTests extends Journey {

    @Test
    void ranksTwoBoatsFromTheLeastThatCanBeTyped(Browser browser) {
        Page page = desk(browser);
        String list = start(page, "Two for the river");
        addBoat(page, "Red one", "450");
        reads(page.getByTestId("field-boat.bareMassKg"), "Assumed: ");
        assertThat(field(page, "boat.bareMassKg").inputValue()).isEmpty();

        visit(page, list);
        see(page.locator("#empty"));
        addBoat(page, "Blue one", "1900");
        visit(page, list);

        waitForAnswer(page);
        assertThat(leader(page)).isEqualTo("Red one");
        assertThat(answer(page)).contains("five-year cost");
    }

    @Test
    void answersBadInputInASentenceAndKeepsNothingOfIt(Browser browser) {
        Page page = desk(browser);
        String list = start(page, "Slips of the keyboard");
        addBoat(page, "Red one", "450");
        String boat = place(page);

        type(page, "listing.askingPrice", "-1");
        reads(page.getByTestId("field-listing.askingPrice"), "is too little");
        type(page, "boat.lengthM", "40");
        reads(
                page.getByTestId("field-boat.lengthM"),
                "The length must be between 1.00 m and 12.00 m; 40.00 m is too much.");
        type(page, "boat.bareMassKg", "heavy");
        reads(
                page.getByTestId("field-boat.bareMassKg"),
                "\"heavy\" is not a quantity that can be read; write it like 12.5 kg.");

        visit(page, boat);
        assertThat(field(page, "listing.askingPrice")).hasValue("450");
        assertThat(field(page, "boat.lengthM")).hasValue("");
        assertThat(field(page, "boat.bareMassKg")).hasValue("");
    }

    @Test
    void bringsFiguresBackUnchangedFromOtherUnits(Browser browser) {
        Page page = desk(browser);
        String list = start(page, "There and back");
        addBoat(page, "Red one", "450");
        String boat = place(page);
        save(page, "boat.lengthM", "3.87");
        save(page, "boat.bareMassKg", "31.3");

        use(page, list, "US: lb, ft, in, mi");
        visit(page, boat);
        assertThat(field(page, "boat.lengthM")).hasValue("12 ft 8.3622 in");
        assertThat(field(page, "boat.bareMassKg")).hasValue("69.00469");

        use(page, list, "Metric: kg, m, cm, km");
        visit(page, boat);
        assertThat(field(page, "boat.lengthM")).hasValue("3.87");
        assertThat(field(page, "boat.bareMassKg")).hasValue("31.3");
    }

    private String start(Page page, String name) {
        visit(page, "");
        page.getByTestId("start-name").locator("input").fill(name);
        page.getByTestId("start").click();
        arrives(page, "/list/[0-9a-f-]+$");
        see(page.locator("#empty"));
        return place(page);
    }

    private static void addBoat(Page page, String name, String price) {
        page.getByTestId("boat-name").locator("input").fill(name);
        page.getByTestId("boat-price").locator("input").fill(price);
        page.getByTestId("add-boat").click();
        arrives(page, "/boat/[0-9a-f-]+/facts$");
        reads(page.locator("main h1"), name);
    }

    private static Locator field(Page page, String path) {
        return page.getByTestId("field-" + path).locator("input");
    }

    private static void type(Page page, String path, String text) {
        field(page, path).fill(text);
        field(page, path).press("Tab");
    }

    /** Types what can be kept, and waits until nothing is assumed in its place any more. */
    private static void save(Page page, String path, String text) {
        type(page, path, text);
        assertThat(page.getByTestId("field-" + path))
                .not()
                .containsText("Assumed", new LocatorAssertions.ContainsTextOptions().setTimeout(PATIENCE_MS));
    }

    private void use(Page page, String list, String units) {
        visit(page, list + "/trip");
        page.getByTestId("units").getByText(units).click();
        reads(page.locator("main"), units.startsWith("US") ? "lb" : "kg");
    }
}
