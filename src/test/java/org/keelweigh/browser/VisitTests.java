package org.keelweigh.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.InspectionCatalogue;
import org.keelweigh.picture.SamplePictures;

/** A whole visit at the seller's, on a phone: who is there, every check there is, photos, papers, and what came of it. */
class VisitTests extends Journey {

    private static final InspectionCatalogue CHECKS = InspectionCatalogue.read(Catalogue.shipped());
    private static final String BOAT = "Teal fin-drive boat";
    private static final String NOTE = "a hand wide, aft of the seat";
    private static final String SAVED = "The photo is saved.";

    @Test
    void walksAWholeVisitWithPhotos(Browser browser) throws IOException {
        Page page = phone(browser);
        String list = lookAtTheExample(page);
        startVisit(page, list);
        int all = made(page)[1];
        String standing = page.getByTestId("standing").innerText();

        String skipped = card(page);
        page.getByTestId("skip").tap();
        leaves(page, skipped);
        String minor = finds(page, "minor", check -> true);
        String minorTitle = title(page);
        page.getByTestId("next").tap();
        leaves(page, minor);
        String major = finds(page, "major", check -> check.readingUnit().isPresent());
        String majorTitle = title(page);
        changes(page.getByTestId("standing"), standing);
        page.getByTestId("note").locator("textarea").fill(NOTE);
        reads(
                page.getByTestId("measure"),
                check(major).readingUnit().orElseThrow().label());
        fill(page, "measure", "6");
        takesPhotos(page);
        page.getByTestId("next").tap();
        leaves(page, major);
        takesOneBack(page);
        goesOnAfterAReload(page);
        int tapped = walksTheRest(page, skipped);

        assertThat(tapped).as("results given one after the other").isGreaterThan(all / 2);
        assertThat(made(page)).containsExactly(all, all);
        page.getByTestId("see-results").tap();
        reads(page.locator("main"), all + " of " + all + " checks made");
        reads(page.locator("main"), NOTE);
        papersTellEverything(page, minorTitle, majorTitle, check(major).told(6));
        boatAndComparisonFollow(page, list, major);
    }

    private void startVisit(Page page, String list) {
        openBoat(page, list, BOAT, "inspection");
        visit(page, place(page).replaceFirst("boat/([^/]+)/.*", "visit/$1"));
        fill(page, "place", "Old boathouse by the weir");
        fill(page, "present", "Wren, Alder and Finch");
        Locator minutes = page.getByTestId("minutes").locator("input");
        minutes.fill("240");
        minutes.blur();
        reads(page.locator("main"), "more are there if you have longer");
        page.getByTestId("begin").tap();
        reads(page.getByTestId("clock"), " of 240 minutes left");
    }

    private static void fill(Page page, String field, String words) {
        Locator input = page.getByTestId(field).locator("input");
        input.fill(words);
        input.blur();
    }

    /** Taps a result at the first check from here on that can come out this way; the checks before it are fine. */
    private static String finds(Page page, String outcome, Predicate<Check> suitable) {
        while (page.getByTestId("result-" + outcome).count() == 0 || !suitable.test(check(card(page)))) {
            tapFine(page);
        }
        String here = card(page);
        page.getByTestId("result-" + outcome).tap();
        assertThat(page.getByTestId("result-" + outcome))
                .hasAttribute(
                        "aria-pressed", "true", new LocatorAssertions.HasAttributeOptions().setTimeout(PATIENCE_MS));
        see(page.getByTestId("next"));
        return here;
    }

    /** Two pictures are taken; what is no picture is answered in a sentence and nothing else. */
    private static void takesPhotos(Page page) {
        Locator photos = page.locator("section.kw-check .kw-photos img");
        byte[] broken = Arrays.copyOf(SamplePictures.of("jpeg", 640, 480), 900);
        for (byte[] file : new byte[][] {broken, "This is a letter, not a picture.".getBytes(StandardCharsets.UTF_8)}) {
            choose(page, "picture.jpg", "image/jpeg", file);
            Locator answer = page.locator("section.kw-check .kw-photo-upload [role=status]");
            assertThat(answer)
                    .hasText(
                            Pattern.compile("^(This|The) .*picture.*\\.$"),
                            new LocatorAssertions.HasTextOptions().setTimeout(PATIENCE_MS));
            assertThat(photos).hasCount(0);
            page.evaluate("document.querySelector('section.kw-check .kw-photo-upload [role=status]').textContent = ''");
        }
        choose(page, "crack.jpg", "image/jpeg", SamplePictures.jpegWithExif(640, 480, 6));
        assertThat(photos).hasCount(1, new LocatorAssertions.HasCountOptions().setTimeout(PATIENCE_MS));
        choose(page, "crack.png", "image/png", SamplePictures.of("png", 640, 480));
        assertThat(photos).hasCount(2, new LocatorAssertions.HasCountOptions().setTimeout(PATIENCE_MS));
        reads(page.locator("section.kw-check .kw-photo-upload"), SAVED);
        page.waitForFunction("[...document.querySelectorAll('section.kw-check .kw-photos img')]"
                + ".every(each => each.complete && each.naturalWidth > 0 && each.alt.startsWith('Photo: '))");
        page.locator("section.kw-check .kw-photo-open").first().tap();
        see(page.locator(".kw-photo-large"));
        String large = page.locator(".kw-photo-large").getAttribute("src");
        page.getByText("Close", new Page.GetByTextOptions().setExact(true)).tap();
        String kept = new String(
                page.request()
                        .get(page.url().replaceFirst("/list/.*", "/" + large))
                        .body(),
                StandardCharsets.ISO_8859_1);
        assertThat(kept).contains("JFIF").doesNotContain(SamplePictures.PLACE).doesNotContain("Exif");
    }

    private static void choose(Page page, String name, String type, byte[] bytes) {
        page.locator("section.kw-check [data-testid=photo-files] input[type=file]")
                .setInputFiles(new FilePayload(name, type, bytes));
    }

    /** Goes back to a check that was fine and says that it was not made after all. */
    private static void takesOneBack(Page page) {
        String check = card(page);
        tapFine(page);
        int before = made(page)[0];
        page.getByTestId("back").tap();
        see(page.locator("section.kw-check[data-testid='" + check + "']"));
        page.getByTestId("not-checked").tap();
        reads(page.getByTestId("progress"), (before - 1) + " of ");
        assertThat(page.getByTestId("result-fine")).hasAttribute("aria-pressed", "false");
        tapFine(page);
        reads(page.getByTestId("progress"), before + " of ");
    }

    private static void goesOnAfterAReload(Page page) {
        String here = card(page);
        String progress = page.getByTestId("progress").innerText();
        page.reload();
        see(page.locator("section.kw-check[data-testid='" + here + "']"));
        assertThat(page.getByTestId("progress").innerText()).isEqualTo(progress);
    }

    /** Finds everything else fine; what was skipped comes back last. */
    private static int walksTheRest(Page page, String skipped) {
        int tapped = 0;
        String last = "";
        while (page.locator("section.kw-check").count() > 0) {
            last = card(page);
            tapFine(page);
            tapped++;
        }
        assertThat(last).isEqualTo(skipped);
        return tapped;
    }

    private static void papersTellEverything(Page page, String minor, String major, String measured)
            throws IOException {
        fill(page, "seller", "Finch");
        fill(page, "buyer", "Wren");
        String proof = paper(page, "Visit record (page)");
        String[] parts = proof.split("data:image/jpeg;base64,[^\"]*", -1);
        assertThat(parts).as("the words around two pictures").hasSize(3);
        assertThat(String.join("", parts))
                .contains(BOAT, minor, major, measured, NOTE)
                .contains("Old boathouse by the weir", "Wren, Alder and Finch", "Finch")
                .containsPattern("Begun</th><td>[0-9]{4}-[0-9]{2}-[0-9]{2} [0-9]{2}:[0-9]{2}")
                .contains("Every check was made.");
        String sale = paper(page, "Bill of sale, draft (page)");
        assertThat(sale)
                .contains(minor + " – minor", major + " – major", measured, NOTE)
                .doesNotContain("None was found");
        assertThat(paper(page, "Visit record (PDF)")).startsWith("%PDF");
    }

    private static String paper(Page page, String link) throws IOException {
        Download download =
                page.waitForDownload(() -> page.getByText(link).first().tap());
        return Files.readString(
                download.path(), link.contains("PDF") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8);
    }

    private void boatAndComparisonFollow(Page page, String list, String major) {
        openBoat(page, list, BOAT, "inspection");
        Locator row = page.getByTestId(major);
        unfold(row);
        assertThat(row.locator("button[data-outcome=major]")).hasAttribute("aria-pressed", "true");
        reads(row, NOTE);
        visit(page, list);
        waitForAnswer(page);
        assertThat(page.locator("#next-checks").innerText()).doesNotContain(BOAT + ": ");
    }

    private static void tapFine(Page page) {
        String here = card(page);
        page.getByTestId("result-fine").tap();
        leaves(page, here);
    }

    /** Waits until another check is open, or none is left. */
    private static void leaves(Page page, String check) {
        page.waitForFunction(
                "here => document.querySelector('section.kw-check')?.dataset.testid !== here"
                        + " && document.querySelector('section.kw-check, [data-testid=see-results]')",
                check);
    }

    private static String card(Page page) {
        return page.locator("section.kw-check").getAttribute("data-testid");
    }

    private static Check check(String card) {
        return CHECKS.check(card.substring("check-".length())).orElseThrow();
    }

    private static String title(Page page) {
        return page.locator("section.kw-check h2").innerText();
    }

    /** Tells how many checks are made, and of how many. */
    private static int[] made(Page page) {
        Matcher words = Pattern.compile("([0-9]+) of ([0-9]+) checks made")
                .matcher(page.getByTestId("progress").innerText());
        assertThat(words.find()).isTrue();
        return new int[] {Integer.parseInt(words.group(1)), Integer.parseInt(words.group(2))};
    }
}
