package org.keelweigh.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Margin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.report.FieldCases;
import org.keelweigh.report.FieldCode;
import org.keelweigh.report.FieldMerge;
import org.keelweigh.report.FieldResults;
import org.keelweigh.report.FieldResultsReader;
import org.keelweigh.shortlist.Candidate;

/** Opens a field sheet from a file in a real browser without a network, as a phone in the seller's yard would. */
@Tag("browser")
@ExtendWith(Chromium.class)
class FieldSheetBrowserTests {

    private static final Finding KNOWN = new Finding(
            "hull-crack", Outcome.MINOR, Method.SEEN, null, "<img src=x onerror=document.title='broken'>", null);
    private static final Candidate BOAT = FieldCases.boat(3, KNOWN);

    @TempDir
    Path folder;

    private BrowserContext phone;
    private Page page;
    private final List<String> requests = new ArrayList<>();
    private final List<String> complaints = new ArrayList<>();

    @BeforeEach
    void open(Browser browser) throws IOException {
        Path sheet = folder.resolve("sheet.html");
        Files.writeString(sheet, FieldCases.sheet(BOAT, "Spring"));
        phone = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setHasTouch(true)
                .setOffline(true)
                .setAcceptDownloads(true));
        page = phone.newPage();
        page.onRequest(request -> requests.add(request.url()));
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
        page.navigate(sheet.toUri().toString());
    }

    @AfterEach
    void close() {
        phone.close();
    }

    @Test
    void sendsBackWhatWasTappedAndItMerges() throws IOException {
        choose("hull-uv", "major");
        page.locator("article[data-check='hull-uv'] textarea").fill("chalk on \"both\" sides <b>");
        assertThat(page.locator("article[data-check='hull-uv'] input[type=number]")
                        .count())
                .isZero();
        choose("stern-drag", "fine");
        assertThat(page.locator("article[data-check='stern-drag']").textContent())
                .contains("Measured, mm");
        page.locator("article[data-check='stern-drag'] input[type=number]").fill("3.5");
        page.reload();
        choose("hull-crack", "stop");

        Download download = page.waitForDownload(() -> page.locator("#save").click());
        FieldResults.Reading reading = new FieldResultsReader(FieldCases.INSPECTION)
                .read(Files.readAllBytes(download.path()), FieldCases.facts(BOAT));

        assertThat(reading).isInstanceOf(FieldResults.Reading.Readable.class);
        List<Finding> sheet = ((FieldResults.Reading.Readable) reading)
                .results()
                .boats()
                .getFirst()
                .findings();
        Finding cracked = Finding.of("hull-crack", Outcome.STOP);
        Finding chalky =
                new Finding("hull-uv", Outcome.MAJOR, Method.TOUCHED, null, "chalk on \"both\" sides <b>", null);
        Finding worn = new Finding("stern-drag", Outcome.FINE, Method.TOUCHED, 3.5, null, null);
        assertThat(sheet).containsExactlyInAnyOrder(cracked, chalky, worn);
        Finding meanwhile = Finding.of("hull-crack", Outcome.FINE);
        FieldMerge merge = FieldMerge.of(BOAT.data().findings(), List.of(meanwhile), sheet);
        assertThat(merge.taken()).containsExactlyInAnyOrder(chalky, worn);
        assertThat(merge.choices()).containsExactly(new FieldMerge.Choice("hull-crack", meanwhile, cracked));
        assertQuiet();
    }

    @Test
    void writesTheSameCodeAsTheApp() {
        choose("hull-uv", "minor");
        choose("stern-drag", "stop");
        choose("hull-crack", "fine");

        String code = page.locator("[data-code]").textContent();

        FieldCode codes = new FieldCode(FieldCases.INSPECTION);
        assertThat(code)
                .isEqualTo(codes.write(
                        BOAT,
                        List.of(
                                Finding.of("hull-uv", Outcome.MINOR),
                                Finding.of("stern-drag", Outcome.STOP),
                                Finding.of("hull-crack", Outcome.FINE))));
        assertThat(codes.read(code, BOAT)).isInstanceOf(FieldResults.Reading.Readable.class);
    }

    @Test
    void tellsAStopAtOnceAndFitsThePhone() {
        choose("hin-read", "stop");

        assertThat(page.locator("article[data-check='hin-read'] .stopped").textContent())
                .contains("do not buy")
                .contains("may be stolen");
        assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(390);
        assertThat(page.locator("article:visible").count()).isEqualTo(1);
        assertQuiet();
    }

    @Test
    void takesAResultAwayAgain() {
        choose("hull-uv", "major");
        assertThat(page.locator("section.boat > [role=status]").textContent()).startsWith("1 of ");
        page.locator("article[data-check='hull-uv'] button:has-text('Take the result away')")
                .click();

        assertThat(page.locator("#count").textContent()).isEqualTo("No result yet.");
        assertThat(page.locator("[data-code]").count()).isZero();
        assertThat(page.locator("section.boat > [role=status]").textContent()).startsWith("0 of ");
    }

    @Test
    void showsTheCodeAsAPictureThatFitsSmallScreens() {
        assertThat(page.locator("[data-picture]").count()).isZero();
        choose("hull-uv", "minor");

        Locator picture = page.locator("[data-picture]");
        assertThat(picture.getAttribute("role")).isEqualTo("img");
        assertThat(picture.getAttribute("aria-label")).contains("Green pedal boat");
        assertThat(picture.boundingBox().width).isEqualTo(260);
        page.setViewportSize(320, 640);
        assertThat(picture.boundingBox().width).isGreaterThan(240);
        assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(320);
        assertQuiet();
    }

    @Test
    void redrawsThePictureForAResultButNotForANote() {
        choose("hull-uv", "minor");
        page.locator("[data-picture]").evaluate("each => each.seen = true");
        page.locator("article[data-check='hull-uv'] textarea").fill("chalk");
        assertThat(page.locator("[data-picture]").evaluate("each => each.seen")).isEqualTo(true);

        choose("hull-uv", "major");

        assertThat(page.locator("[data-picture]").evaluate("each => each.seen")).isNull();
        assertThat(page.locator("[data-picture]").count()).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(
            value = ColorScheme.class,
            names = {"LIGHT", "DARK"})
    void hasNoViolationOfAccessibility(ColorScheme colours) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(colours));
        choose("hin-read", "stop");

        assertThat(Axe.violations(page, "field sheet")).isEmpty();
    }

    @Test
    void printsOnBothPapers() {
        for (String paper : List.of("A4", "Letter")) {
            byte[] pdf = page.pdf(new Page.PdfOptions().setFormat(paper).setMargin(new Margin()));

            assertThat(pdf).hasSizeGreaterThan(20_000);
        }
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(com.microsoft.playwright.options.Media.PRINT));
        assertThat(page.locator("article:visible").count())
                .isEqualTo(FieldCases.checks(BOAT).size());
    }

    private void choose(String check, String outcome) {
        page.locator("section.boat select")
                .selectOption(String.valueOf(FieldCases.checks(BOAT).stream()
                        .map(each -> each.id())
                        .toList()
                        .indexOf(check)));
        page.locator("article[data-check='" + check + "'] input[value='" + outcome + "']")
                .check();
    }

    private void assertQuiet() {
        assertThat(complaints).isEmpty();
        assertThat(page.title()).startsWith("Field sheet");
        assertThat(requests).allSatisfy(url -> assertThat(url).startsWith("file:"));
    }
}
