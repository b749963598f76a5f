package org.keelweigh.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PageAssertions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;
import org.keelweigh.shortlist.ShortlistEditing;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/**
 * What people do, in a real browser against the running program. The program starts once for all journeys, on a database file
 * of their own as people have it; each journey begins without a shortlist. A script error on any page fails the journey.
 */
@Tag("browser")
@ExtendWith(Chromium.class)
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
abstract class Journey {

    /** Long, for machines that do much else at the same time; a quiet one waits for nothing of it. */
    static final double PATIENCE_MS = 60_000;

    /** A whole sentence, in contrast to the words that tell that something is being worked out. */
    private static final Pattern SENTENCE = Pattern.compile("\\.(\\s|$)");

    private static final Path DATA = newFolder();

    @LocalServerPort
    int port;

    @Autowired
    ShortlistEditing editing;

    private final List<AutoCloseable> opened = new ArrayList<>();
    private final List<String> complaints = new ArrayList<>();

    @DynamicPropertySource
    static void keepDataApart(DynamicPropertyRegistry registry) {
        registry.add("keelweigh.data-folder", DATA::toString);
    }

    @BeforeEach
    void beginEmpty() {
        editing.shortlists().forEach(each -> editing.delete(each.id(), "Test"));
    }

    @AfterEach
    void closeAndListen() throws Exception {
        for (AutoCloseable each : opened.reversed()) {
            each.close();
        }
        assertThat(complaints).as("errors that the browser reported").isEmpty();
    }

    /** Starts a browser for this journey alone, with more arguments than usual. */
    final Browser another(String... arguments) {
        Chromium.Running running = Chromium.Running.start(List.of(arguments));
        opened.add(running);
        return running.browser();
    }

    /** Opens a window of a computer. */
    final Page desk(Browser browser) {
        return page(browser, new Browser.NewContextOptions().setViewportSize(1440, 900));
    }

    /** Opens a window of a phone, 390 px wide, with a finger instead of a mouse. */
    final Page phone(Browser browser) {
        return page(
                browser,
                new Browser.NewContextOptions()
                        .setViewportSize(390, 844)
                        .setHasTouch(true)
                        .setIsMobile(true));
    }

    /** Opens a window of a phone that has no network, for files. */
    final Page phoneWithoutNetwork(Browser browser) {
        return page(
                browser,
                new Browser.NewContextOptions()
                        .setViewportSize(390, 844)
                        .setHasTouch(true)
                        .setOffline(true));
    }

    private Page page(Browser browser, Browser.NewContextOptions options) {
        BrowserContext context = browser.newContext(options);
        opened.add(context);
        context.setDefaultTimeout(PATIENCE_MS);
        Page page = context.newPage();
        page.onPageError(complaints::add);
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                complaints.add(message.text() + " at " + message.location());
            }
        });
        return page;
    }

    /** Goes to an address of the program and waits until its page stands. */
    final void visit(Page page, String place) {
        page.navigate("http://localhost:" + port + "/" + place);
        see(page.locator("main h1"));
    }

    /** Loads the example of the couple from the first page and waits for its answer; tells the address of its dashboard. */
    final String lookAtTheExample(Page page) {
        visit(page, "");
        page.getByTestId("example-couple").click();
        arrives(page, "/list/[0-9a-f-]+$");
        waitForAnswer(page);
        return place(page);
    }

    /** Waits until the dashboard answers and has worked out what to check next. */
    final void waitForAnswer(Page page) {
        see(page.locator("#answer h2"));
        assertThat(page.locator("#next-step"))
                .hasText(SENTENCE, new LocatorAssertions.HasTextOptions().setTimeout(PATIENCE_MS));
    }

    /** Tells the address of the page as {@link #visit} takes it. */
    final String place(Page page) {
        return page.url().replaceFirst("^http://[^/]*/", "").replaceFirst("[?#].*$", "");
    }

    static String answer(Page page) {
        return page.locator("#answer .kw-answer-told").innerText();
    }

    static String leader(Page page) {
        return page.locator("#answer h2").innerText().replace(" leads", "");
    }

    /** Leads from a dashboard to a section of the page of a boat. */
    final void openBoat(Page page, String shortlist, String boat, String section) {
        visit(page, shortlist);
        String address = page.locator("#cards a, #side-by-side a")
                .filter(new Locator.FilterOptions().setHasText(boat))
                .first()
                .getAttribute("href");
        visit(page, address.replaceFirst("(boat/[^/]+).*$", "$1/" + section));
    }

    /** Opens the section that something is folded away in, if it is. */
    static void unfold(Locator inside) {
        Locator fold = inside.locator("xpath=ancestor::details[1]");
        if (fold.getAttribute("open") == null) {
            fold.locator("> summary").click();
        }
    }

    static void see(Locator locator) {
        assertThat(locator.first()).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(PATIENCE_MS));
    }

    static void reads(Locator locator, String words) {
        assertThat(locator).containsText(words, new LocatorAssertions.ContainsTextOptions().setTimeout(PATIENCE_MS));
    }

    /** Waits until the text is another one than before. */
    static void changes(Locator locator, String before) {
        assertThat(locator)
                .not()
                .hasText(
                        before,
                        new LocatorAssertions.HasTextOptions()
                                .setTimeout(PATIENCE_MS)
                                .setUseInnerText(true));
    }

    static void arrives(Page page, String pattern) {
        assertThat(page).hasURL(Pattern.compile(pattern), new PageAssertions.HasURLOptions().setTimeout(PATIENCE_MS));
    }

    private static Path newFolder() {
        try {
            return Files.createTempDirectory("keelweigh-journeys");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
