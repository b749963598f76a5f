package org.keelweigh.ui.boat;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.picture.PictureReading;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.ui.chart.ChanceGrid;
import org.springframework.beans.factory.annotation.Autowired;

class InspectionPartTests extends BoatPageTests {

    private static final String CHECK = "hull-uv";
    private static final String MEASURED = "hull-scratch";

    @Autowired
    PhotoAlbum album;

    @BeforeEach
    void openInspection() {
        open(BoatSection.INSPECTION);
    }

    @Test
    void recordsAFindingWithOneTapAndMovesTheCost() {
        String before = words("inspection-money");

        tap("tap-" + CHECK + "-major");

        assertThat(kept().findings()).containsExactly(Finding.of(CHECK, Outcome.MAJOR));
        assertThat(words("inspection-money")).isNotEqualTo(before);
        assertThat(words("inspection-progress")).startsWith("1 of ");
        assertThat(pressed("tap-" + CHECK + "-major")).isEqualTo("true");
        assertThat(pressed("tap-" + CHECK + "-none")).isEqualTo("false");
    }

    @Test
    void takesAFindingBackWithOneTap() {
        tap("tap-" + CHECK + "-major");
        tap("tap-" + CHECK + "-none");

        assertThat(kept().findings()).isEmpty();
        assertThat(words("inspection-progress")).startsWith("0 of ");
    }

    @Test
    void leavesEveryRowWhereItIsOnATap() {
        List<Component> before = checks();

        tap("tap-" + CHECK + "-minor");

        assertThat(checks()).containsExactlyElementsOf(before);
    }

    @Test
    void opensTheFirstZoneWithChecksToMakeAndFoldsTheOthers() {
        List<ZoneFold> zones = zones();

        assertThat(zones).hasSizeGreaterThan(3);
        assertThat(zones.getFirst().isOpen()).isTrue();
        assertThat(zones.stream().skip(1)).noneMatch(NativeDetails::isOpen);
        assertThat(words(zones.getFirst().getSummary())).containsPattern("0 of \\d+ made");
    }

    @Test
    void keepsZonesOpenAndCountsOnATap() {
        ZoneFold hull = (ZoneFold) byId(Component.class, "zone-hull-bottom");
        hull.setOpen(true);

        tap("tap-" + CHECK + "-fine");

        assertThat(zones()).contains(hull);
        assertThat(hull.isOpen()).isTrue();
        assertThat(words(hull.getSummary())).contains("1 of ");
        assertThat(hull.link().getText()).startsWith("Bottom of the hull 1 of ");
    }

    @Test
    void showsTheTenMostWorthwhileFirstAndTheRestOnDemand() {
        tap("order-worth");
        assertThat(checks()).hasSize(10);

        tap("show-rest");
        assertThat(checks()).hasSizeGreaterThan(10);
    }

    @Test
    void ordersByWorthWithoutMakingTheRowsAnew() {
        List<Component> before = checks();

        tap("order-worth");
        tap("show-rest");

        assertThat(checks()).containsExactlyInAnyOrderElementsOf(before).isNotEqualTo(before);
    }

    @Test
    void keepsMethodNoteMeasureAndQuoteWithTheFinding() {
        tap("tap-" + MEASURED + "-minor");
        tap("more-" + MEASURED);
        test(byId(TextField.class, "note-" + MEASURED)).setValue("chalk on the port side");
        test(byId(TextField.class, "measured-" + MEASURED)).setValue("1.5");
        test(byId(TextField.class, "quote-" + MEASURED)).setValue("85");
        @SuppressWarnings("unchecked")
        Select<Method> method = byId(Select.class, "method-" + MEASURED);
        test(method).selectItem("Looked at by a shop or repairer");

        tap("tap-" + MEASURED + "-major");

        Finding finding = kept().findings().getFirst();
        assertThat(finding.outcome()).isEqualTo(Outcome.MAJOR);
        assertThat(finding.note()).isEqualTo("chalk on the port side");
        assertThat(finding.measured()).isEqualTo(1.5);
        assertThat(finding.method()).isEqualTo(Method.REPAIRER);
        assertThat(finding.quote()).isNotNull();
        assertThat(finding.quote().likely()).isEqualTo(85);
    }

    @Test
    void refusesAMeasureThatIsNoNumber() {
        tap("tap-" + MEASURED + "-minor");
        tap("more-" + MEASURED);
        TextField measured = byId(TextField.class, "measured-" + MEASURED);
        test(measured).setValue("a lot");

        assertRefused(measured, "not a quantity that can be read");
        assertThat(kept().findings().getFirst().measured()).isNull();
    }

    @Test
    void takesTheChosenMethodForNewTaps() {
        @SuppressWarnings("unchecked")
        Select<Method> method = byId(Select.class, "inspection-method");
        test(method).selectItem("Seen in the listing's pictures");

        tap("tap-" + CHECK + "-fine");

        assertThat(kept().findings().getFirst().method()).isEqualTo(Method.LISTING_PHOTOS);
    }

    @Test
    void showsTheChancesNowAgainstBeforeOnDemand() {
        answer("sun-seat-tears", "Yes");
        tap("more-" + CHECK);
        tap("chances-" + CHECK);

        ChanceGrid grid = (ChanceGrid) all(UI.getCurrent())
                .filter(ChanceGrid.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertThat(grid.getData().orElseThrow().panels()).hasSize(2);
        assertThat(grid.getData().orElseThrow().summary()).contains("before anything was seen", "(likelier)");
    }

    @Test
    void tellsAHistoryOnceItsSignsAreSeen() {
        answer("sun-chalk", "Yes");
        answer("sun-seat-tears", "Yes");
        answer("sun-colour-step", "Yes");

        assertThat(words("histories")).contains("stored in the sun").contains("times as likely");
        assertThat(kept().listing().signals()).containsEntry("sun-chalk", true);

        answer("sun-chalk", "Not looked");
        assertThat(kept().listing().signals()).doesNotContainKey("sun-chalk");
    }

    private void answer(String sign, String answer) {
        test(all(byId(Component.class, "sign-" + sign))
                        .filter(NativeButton.class::isInstance)
                        .map(NativeButton.class::cast)
                        .filter(each -> each.getText().equals(answer))
                        .findFirst()
                        .orElseThrow())
                .click();
        settle();
    }

    private String pressed(String testId) {
        return byId(NativeButton.class, testId).getElement().getAttribute("aria-pressed");
    }

    private static List<ZoneFold> zones() {
        return all(UI.getCurrent())
                .filter(ZoneFold.class::isInstance)
                .map(ZoneFold.class::cast)
                .toList();
    }

    private static List<Component> checks() {
        return all(UI.getCurrent()).filter(CheckRow.class::isInstance).toList();
    }

    @Test
    void showsThePhotosOfACheckInItsDetails() {
        PictureReading.Accepted picture = new PictureReading.Accepted(new byte[9], new byte[9], 4, 3);
        album.add(boat, CHECK, picture, "Dana");
        album.add(boat, "hull-crack", picture, "Dana");
        open(BoatSection.INSPECTION);
        tap("more-" + CHECK);

        assertThat($(Image.class).all()).hasSize(1);
        assertThat($(Image.class).single().getAlt()).hasValue("Photo: Sun damage");

        album.add(boat, CHECK, picture, "Alder");
        settle();

        assertThat($(Image.class).all()).hasSize(2);
    }

    @Test
    void asksForAMeasureOnlyWhereSomethingIsMeasuredAndNamesItsUnit() {
        tap("tap-" + CHECK + "-minor");
        tap("more-" + CHECK);
        tap("tap-" + MEASURED + "-minor");
        tap("more-" + MEASURED);

        assertThat(byId(TextField.class, "measured-" + CHECK).isVisible()).isFalse();
        assertThat(byId(TextField.class, "measured-" + MEASURED).getLabel()).isEqualTo("Measured, mm");
    }
}
