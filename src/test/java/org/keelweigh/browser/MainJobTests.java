package org.keelweigh.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.keelweigh.KeelweighApplication;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** The main job from an empty start to an answer that can be taken elsewhere. */
class MainJobTests extends Journey {

    private static final String GREEN = "Dock-green pedal boat";

    @Test
    void leadsFromTheExampleToAnAnswerThatCanBeTakenElsewhere(Browser browser, @TempDir Path folder) {
        Page page = desk(browser);
        String list = lookAtTheExample(page);
        String leader = leader(page);
        assertThat(answer(page)).contains(leader + " leads").contains(" points more than ");

        giveAllForSteadiness(page, "Wren");
        reads(page.locator("#answer h2"), GREEN + " leads");
        assertThat(leader).isNotEqualTo(GREEN);

        mendTheStern(page, list);
        visit(page, list);
        waitForAnswer(page);
        String told = answer(page);

        Path file = exported(page, folder);
        try (ConfigurableApplicationContext elsewhere = anotherProgram(folder)) {
            page.navigate("http://localhost:" + elsewhere.getEnvironment().getProperty("local.server.port") + "/");
            see(page.getByTestId("example-couple"));
            assertThat(page.getByTestId("card").count()).isZero();

            page.locator("vaadin-upload input[type=file]").setInputFiles(file);
            arrives(page, "/list/");
            waitForAnswer(page);
            assertThat(answer(page)).isEqualTo(told);
        }
    }

    /** Starts the program a second time, with nothing in its database. */
    private static ConfigurableApplicationContext anotherProgram(Path folder) {
        return new SpringApplicationBuilder(KeelweighApplication.class)
                .run("--server.port=0", "--keelweigh.data-folder=" + folder.resolve("elsewhere"));
    }

    /** Moves one slider to its end while looking through one person's eyes, which saves it for that person. */
    private static void giveAllForSteadiness(Page page, String person) {
        page.getByTestId("perspective").getByText(person).click();
        reads(page.locator("#answer"), "to " + person);
        Locator slider = page.getByTestId("slider-stability").locator("input");
        slider.focus();
        slider.press("End");
    }

    private void mendTheStern(Page page, String list) {
        openBoat(page, list, GREEN, "inspection");
        Locator money = page.getByTestId("inspection-money");
        String before = money.innerText();
        assertThat(before).contains("Cost over 5 years: ");

        unfold(page.getByTestId("tap-stern-drag-fine"));
        page.getByTestId("tap-stern-drag-fine").click();

        changes(money, before);
        assertThat(amount(money.innerText(), "Cost over 5 years: ")).isLessThan(amount(before, "Cost over 5 years: "));
    }

    private static double amount(String words, String after) {
        String rest = words.substring(words.indexOf(after) + after.length());
        return Double.parseDouble(
                rest.replaceFirst("^[^0-9]*([0-9,]+).*$", "$1").replace(",", ""));
    }

    private Path exported(Page page, Path folder) {
        visit(page, "");
        see(page.getByTestId("export"));
        Download download =
                page.waitForDownload(() -> page.getByTestId("export").click());
        Path file = folder.resolve(download.suggestedFilename());
        download.saveAs(file);
        assertThat(file).content().contains("keelweigh-shortlist").contains(GREEN);
        return file;
    }
}
