package org.keelweigh.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.JSHandle;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.ShortlistId;

/** Brings the results of a field sheet home by the picture of their code: chosen as a file, or held before a camera. */
class ScanTests extends Journey {

    private static final int FRAMES = 3;

    @TempDir
    Path folder;

    private String address = "";
    private String agreed = "";
    private String disputed = "";

    @Test
    void takesTheCodeFromAPictureThatSomebodyChooses(Browser browser) throws IOException {
        Page page = phone(browser);
        byte[] code = tapOnASheet(browser, page);
        changeMeanwhile();

        page.getByTestId("scan-picture").setInputFiles(new FilePayload("code.png", "image/png", code));

        reads(page.getByTestId("scan-said"), "The code was read from the picture.");
        assertMergeIsOffered(page);
    }

    @Test
    void takesTheCodeFromTheCamera(Browser browser) throws IOException {
        byte[] code = tapOnASheet(browser, phone(browser));
        changeMeanwhile();
        Page page = phone(camera(code));
        openResults(page);

        page.getByTestId("scan-camera").tap();

        reads(page.getByTestId("scan-said"), "The code was read; the camera is off.");
        assertThat(page.locator("kw-code-scan video").isVisible()).isFalse();
        assertThat(page.getByTestId("scan-camera").innerText()).isEqualTo("Scan the code");
        assertMergeIsOffered(page);
    }

    @Test
    void switchesTheCameraOffOnRequestAndWhenThePageIsLeft(Browser browser) throws IOException {
        Page page = desk(camera(null));
        openAnyResults(page);
        Locator button = page.getByTestId("scan-camera");
        button.focus();
        page.keyboard().press("Enter");
        reads(page.getByTestId("scan-said"), "The camera is on.");
        see(page.locator("kw-code-scan video"));
        assertThat(Axe.violations(page, "scanning")).isEmpty();
        JSHandle first = track(page);
        assertThat(first.evaluate("each => each.readyState")).isEqualTo("live");

        page.keyboard().press("Enter");

        reads(page.getByTestId("scan-said"), "The camera is off.");
        assertThat(first.evaluate("each => each.readyState")).isEqualTo("ended");
        button.click();
        reads(page.getByTestId("scan-said"), "The camera is on.");
        JSHandle second = track(page);
        page.getByTestId("step-walk").click();
        see(page.locator("section.kw-check"));
        assertThat(second.evaluate("each => each.readyState")).isEqualTo("ended");
    }

    @Test
    void saysWhatToDoWhereThereIsNoCodeAndNoCamera(Browser browser) throws IOException {
        Page page = phone(browser);
        openAnyResults(page);
        Locator said = page.getByTestId("scan-said");

        page.getByTestId("scan-camera").tap();
        reads(said, "or type it.");
        page.getByTestId("scan-picture").setInputFiles(new FilePayload("wall.jpg", "image/jpeg", frame(null)));
        reads(said, "No code was found in this picture.");
        page.getByTestId("scan-picture")
                .setInputFiles(new FilePayload("a.png", "image/png", "no picture".getBytes(StandardCharsets.UTF_8)));
        reads(said, "The browser cannot read this file as a picture.");
        page.evaluate("Object.defineProperty(window, 'isSecureContext', { get: () => false })");
        page.getByTestId("scan-camera").tap();
        reads(said, "browsers allow that only on pages opened with https");
        assertThat(page.getByTestId("field-answer").innerText()).isEmpty();
    }

    /** Takes a sheet from the visit of an example's boat, taps two results on it offline, and tells how its code looks. */
    private byte[] tapOnASheet(Browser browser, Page page) throws IOException {
        openAnyResults(page);
        Download download = page.waitForDownload(
                () -> page.getByText("Field sheet for this boat").click());
        Path file = folder.resolve("sheet.html");
        download.saveAs(file);
        Page sheet = phoneWithoutNetwork(browser);
        sheet.navigate(file.toUri().toString());
        agreed = tap(sheet, "fine");
        sheet.getByText("Next check").locator("visible=true").tap();
        disputed = tap(sheet, "major");
        return sheet.locator("[data-picture]").screenshot();
    }

    private static String tap(Page sheet, String outcome) {
        Locator card = sheet.locator("article:visible");
        card.locator("input[value='" + outcome + "']").check();
        return card.getAttribute("data-check");
    }

    /** Somebody at home says otherwise about a check that was made on the sheet too. */
    private void changeMeanwhile() {
        Candidate boat = boat();
        Finding fine = Finding.of(disputed, Outcome.FINE);
        editing.save(
                new Candidate(
                        boat.id(), boat.shortlist(), boat.version(), boat.data().withFinding(fine)),
                "Alder");
    }

    private void assertMergeIsOffered(Page page) {
        reads(page.getByTestId("field-answer"), ": 1 taken, 0 the same as here, 1 to choose.");
        assertThat(outcome(agreed)).isEqualTo(Outcome.FINE);
        assertThat(outcome(disputed)).isEqualTo(Outcome.FINE);
        see(page.getByTestId("mine-" + disputed));
        page.getByTestId("theirs-" + disputed).click();
        page.getByTestId("theirs-" + disputed)
                .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
        assertThat(outcome(disputed)).isEqualTo(Outcome.MAJOR);
    }

    private void openAnyResults(Page page) {
        lookAtTheExample(page);
        page.locator("#next-step a").click();
        arrives(page, "/visit/");
        address = place(page);
        openResults(page);
    }

    private void openResults(Page page) {
        visit(page, address);
        page.getByTestId("step-finish").click();
        see(page.getByTestId("scan-camera"));
    }

    private Outcome outcome(String check) {
        return boat().data().findings().stream()
                .filter(each -> each.check().equals(check))
                .map(Finding::outcome)
                .findFirst()
                .orElseThrow();
    }

    private Candidate boat() {
        List<String> parts = List.of(address.split("/"));
        ShortlistId list = new ShortlistId(UUID.fromString(parts.get(1)));
        return editing.facts(list)
                .orElseThrow()
                .candidate(new CandidateId(UUID.fromString(parts.get(3))))
                .orElseThrow();
    }

    /** Starts a browser before whose camera a picture is held; without one it sees a wall. */
    private Browser camera(byte[] picture) throws IOException {
        Path frames = folder.resolve("camera.mjpeg");
        try (OutputStream out = Files.newOutputStream(frames)) {
            for (int i = 0; i < FRAMES; i++) {
                out.write(frame(picture));
            }
        }
        return another(
                "--use-fake-device-for-media-stream",
                "--use-fake-ui-for-media-stream",
                "--use-file-for-fake-video-capture=" + frames);
    }

    /** What a camera of 640 by 480 sees: the picture a little askew on a grey table. */
    private static byte[] frame(byte[] picture) throws IOException {
        BufferedImage seen = new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = seen.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.setColor(Color.GRAY);
        pen.fillRect(0, 0, seen.getWidth(), seen.getHeight());
        if (picture != null) {
            pen.rotate(Math.toRadians(7), 320, 240);
            pen.drawImage(ImageIO.read(new ByteArrayInputStream(picture)), 160, 80, 320, 320, null);
        }
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(seen, "jpg", out);
        return out.toByteArray();
    }

    private static JSHandle track(Page page) {
        return page.evaluateHandle("document.querySelector('kw-code-scan video').srcObject.getTracks()[0]");
    }
}
