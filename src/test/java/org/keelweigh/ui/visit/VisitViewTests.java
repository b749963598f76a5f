package org.keelweigh.ui.visit;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.FocusNotifier;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.server.VaadinSession;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.Check;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.picture.PictureReading;
import org.keelweigh.report.FieldCases;
import org.keelweigh.report.FieldCode;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.VisitBook;
import org.keelweigh.shortlist.VisitNotes;
import org.keelweigh.shortlist.VisitOrder;
import org.keelweigh.ui.photo.PhotoStrip;
import org.keelweigh.ui.shell.AtOnce;
import org.keelweigh.ui.shell.Places;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:visit")
@Import(AtOnce.class)
class VisitViewTests extends SpringBrowserlessTest {

    @Autowired
    ShortlistEditing editing;

    @Autowired
    VisitBook book;

    @Autowired
    PhotoAlbum album;

    private Shortlist list;
    private Candidate boat;

    @BeforeEach
    void begin() {
        list = editing.create(ShortlistData.named("Spring"), "Wren");
        boat = editing.add(list.id(), CandidateData.of("Green pedal boat", BoatKind.PEDAL_KAYAK), "Wren");
        editing.add(list.id(), CandidateData.of("Blue canoe", BoatKind.CANOE), "Wren");
    }

    @Test
    void walksRoundTheBoatAndSavesEveryTap() {
        open();
        test($(IntegerField.class).withTestId("minutes").single()).setValue(30);
        click("begin");
        String first = card();

        click("result-fine");

        assertThat(findings()).containsExactly(Finding.of(first, Outcome.FINE));
        assertThat(card()).isNotEqualTo(first);
        assertThat(book.notes(boat.id()).minutes()).isEqualTo(30);
        assertThat(book.notes(boat.id()).startedAt()).isNotNull();
        assertThat(text("progress")).startsWith("1 of ");
    }

    @Test
    void tellsAStopAtOnceAndKeepsTheVerdictInSight() {
        open();
        assertThat(text("standing")).contains("Green pedal boat is ");
        begin("hin-read");

        click("result-stop");

        assertThat(card()).isEqualTo("hin-read");
        assertThat(text("standing")).contains("ruled out").contains("Blue canoe leads");
        assertThat($(Paragraph.class).all())
                .extracting(Paragraph::getText)
                .anySatisfy(words -> assertThat(words).startsWith("Do not buy").contains("may be stolen"));
    }

    @Test
    void ordersByWhatCouldChangeTheChoiceAndSaysWhy() {
        // Between two boats of which the same is known, any fault settles the choice.
        list = editing.create(ShortlistData.named("Twins"), "Wren");
        boat = editing.add(list.id(), CandidateData.of("Green pedal boat", BoatKind.PEDAL_KAYAK), "Wren");
        editing.add(list.id(), CandidateData.of("Red pedal boat", BoatKind.PEDAL_KAYAK), "Wren");
        open();
        @SuppressWarnings("unchecked")
        Select<VisitOrder> order = $(Select.class).withTestId("order").single();
        test(order).selectItem(VisitOrder.CHOICE.label());
        roundTrip();
        assertThat(text("order-reason")).startsWith("First: ").contains("would change the choice in ");

        click("begin");

        assertThat(text("why")).startsWith("Why now: it would change the choice in ");
    }

    @Test
    void comesBackToASkippedCheck() {
        open();
        click("begin");
        String skipped = card();
        click("skip");
        assertThat(card()).isNotEqualTo(skipped);
        assertThat(book.notes(boat.id()).skipped()).containsExactly(skipped);

        click("back");

        assertThat(card()).isEqualTo(skipped);
    }

    @Test
    void goesOnWhereItWasLeft() {
        editing.save(
                new Candidate(
                        boat.id(),
                        boat.shortlist(),
                        boat.version(),
                        boat.data().withFinding(Finding.of("hin-read", Outcome.FINE))),
                "Wren");
        note(notes -> notes.begun(Instant.parse("2026-04-01T10:00:00Z"), 45), "Wren");

        open();

        assertThat(card()).isNotEqualTo("hin-read");
        assertThat(text("progress")).startsWith("1 of ");
    }

    @Test
    void keepsNotesAndPhotosOfACheck() {
        open();
        begin("hull-crack");
        click("result-major");
        TextArea note = $(TextArea.class).withTestId("note").single();
        test(note).setValue("by the seat <b>");
        album.add(boat.id(), "hull-crack", new PictureReading.Accepted(new byte[9], new byte[9], 4, 3), "Wren");
        open();
        begin("hull-crack");

        assertThat(findings().getFirst().note()).isEqualTo("by the seat <b>");
        assertThat($(TextArea.class).withTestId("note").single().getValue()).isEqualTo("by the seat <b>");
        assertThat($(PhotoStrip.class).all().getFirst().getChildren().count()).isEqualTo(1);
    }

    @Test
    void takesTheCodeOfAFieldSheetAndAsksWhereBothChanged() {
        Candidate sheet = boat;
        String code = new FieldCode(FieldCases.INSPECTION)
                .write(sheet, List.of(Finding.of("hull-uv", Outcome.MINOR), Finding.of("hull-crack", Outcome.STOP)));
        editing.save(
                new Candidate(
                        boat.id(),
                        boat.shortlist(),
                        boat.version(),
                        boat.data().withFinding(Finding.of("hull-crack", Outcome.FINE))),
                "Alder");
        open();
        click("step-finish");
        test($(TextField.class).withTestId("field-code").single()).setValue(code);
        click("take-code");

        assertThat(text("field-answer")).isEqualTo("Green pedal boat: 1 taken, 0 the same as here, 1 to choose.");
        assertThat(findings()).contains(Finding.of("hull-uv", Outcome.MINOR), Finding.of("hull-crack", Outcome.FINE));
        click("theirs-hull-crack");
        assertThat(findings()).contains(Finding.of("hull-crack", Outcome.STOP));
    }

    @Test
    void takesAScannedCodeLikeATypedOne() {
        String code = new FieldCode(FieldCases.INSPECTION).write(boat, List.of(Finding.of("hull-uv", Outcome.MINOR)));
        open();
        click("step-finish");

        $(FieldReturn.class).single().takeScanned(code);

        assertThat(text("field-answer")).isEqualTo("Green pedal boat: 1 taken, 0 the same as here, 0 to choose.");
        assertThat(findings()).containsExactly(Finding.of("hull-uv", Outcome.MINOR));
        assertThat($(TextField.class).withTestId("field-code").single().getValue())
                .isEqualTo(code);
    }

    @Test
    void refusesAHostileScannedTextInASentence() {
        open();
        click("step-finish");

        $(FieldReturn.class).single().takeScanned("<img src=x>".repeat(500));

        assertThat(text("field-answer")).startsWith("A code has digits and letters only");
        assertThat(findings()).isEmpty();
    }

    @Test
    void refusesAHostileResultsFileInASentence() {
        open();
        click("step-finish");

        $(FieldReturn.class).single().take("<script>".getBytes(StandardCharsets.UTF_8));

        assertThat(text("field-answer")).contains("not a file of field results");
        assertThat(findings()).isEmpty();
    }

    @Test
    void saysSoWhenThereIsNoSuchBoat() {
        UI.getCurrent().navigate(Places.visit(list.id(), CandidateId.fresh()));

        assertThat($(H1.class).single().getText()).isEqualTo("There is no such boat");
    }

    @Test
    void goesOnWithOrderAndCheckWhereAReloadFoundIt() {
        open();
        @SuppressWarnings("unchecked")
        Select<VisitOrder> order = $(Select.class).withTestId("order").single();
        test(order).selectItem(VisitOrder.WORTH.label());
        click("begin");
        String first = card();
        click("skip");
        click("result-major");
        String here = card();
        assertThat(here).isNotEqualTo(first);

        open();

        assertThat(card()).isEqualTo(here);
        assertThat(book.notes(boat.id()).skipped()).containsExactly(first);
        click("step-prepare");
        @SuppressWarnings("unchecked")
        Select<VisitOrder> again = $(Select.class).withTestId("order").single();
        assertThat(again.getValue()).isEqualTo(VisitOrder.WORTH);
    }

    @Test
    void keepsWhatTwoPeopleNoteAndAsksWhereBothNotedTheSame() {
        open();
        TextField place = $(TextField.class).withTestId("place").single();
        TextField present = $(TextField.class).withTestId("present").single();
        note(notes -> new FieldPath("present").with(notes, "Alder and Finch"), "Alder");
        hearOthers();
        assertThat(present.getValue()).isEqualTo("Alder and Finch");

        test(place).setValue("Old boathouse");
        assertThat(book.notes(boat.id()).place()).isEqualTo("Old boathouse");
        assertThat(book.notes(boat.id()).present()).isEqualTo("Alder and Finch");

        ComponentUtil.fireEvent(place, new FocusNotifier.FocusEvent<>(place, true));
        note(notes -> new FieldPath("place").with(notes, "New boathouse"), "Alder");
        hearOthers();
        assertThat(place.getValue()).isEqualTo("Old boathouse");
        test(place).setValue("Slipway");

        assertThat(book.notes(boat.id()).place()).isEqualTo("New boathouse");
        assertThat(place.getValue()).isEqualTo("New boathouse");
        test($(Button.class).withText("Use mine").single()).click();
        assertThat(book.notes(boat.id()).place()).isEqualTo("Slipway");
        assertThat(place.getValue()).isEqualTo("Slipway");
    }

    /** What others changed is shown when the page's lock is let go. */
    private static void hearOthers() {
        VaadinSession session = VaadinSession.getCurrent();
        session.unlock();
        session.lock();
    }

    private void note(UnaryOperator<VisitNotes> edit, String who) {
        VisitNotes now = book.notes(boat.id());
        book.save(boat.id(), now, edit.apply(now), who);
    }

    private void open() {
        UI.getCurrent().navigate(Places.visit(list.id(), boat.id()));
    }

    private void begin(String check) {
        click("step-walk");
        @SuppressWarnings("unchecked")
        ComboBox<Check> jump = $(ComboBox.class).single();
        Check item = jump.getListDataView()
                .getItems()
                .filter(each -> each.id().equals(check))
                .findFirst()
                .orElseThrow();
        test(jump).selectItem(jump.getItemLabelGenerator().apply(item));
    }

    private String card() {
        String id = $(CheckCard.class).single().getTestId();
        return id.substring("check-".length());
    }

    private void click(String testId) {
        test($(Button.class).withTestId(testId).single()).click();
        roundTrip();
    }

    private String text(String testId) {
        return $(Component.class).withTestId(testId).single().getElement().getText();
    }

    private List<Finding> findings() {
        return editing.facts(list.id())
                .flatMap(facts -> facts.candidate(boat.id()))
                .orElseThrow()
                .data()
                .findings();
    }
}
