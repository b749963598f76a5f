package org.keelweigh.ui.shortlists;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Article;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadTester;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.exchange.ShortlistExport;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.UnitSystem;
import org.keelweigh.shortlist.VisitNotes;
import org.keelweigh.ui.shell.AtOnce;
import org.keelweigh.ui.shell.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:shortlists-view")
@Import(AtOnce.class)
class ShortlistsViewTests extends SpringBrowserlessTest {

    @Autowired
    ShortlistEditing editing;

    @BeforeEach
    void emptiesTheStore() {
        editing.shortlists().forEach(each -> editing.delete(each.id(), "Test"));
    }

    private void open() {
        navigate("", ShortlistsView.class);
        roundTrip();
    }

    private void click(String testId) {
        test(find(Button.class).withTestId(testId).single()).click();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    private List<String> names() {
        return editing.shortlists().stream().map(each -> each.data().name()).collect(Collectors.toList());
    }

    @Test
    void offersTheExampleAndOnesOwnWhenNothingIsThere() {
        open();

        assertThat(find(H1.class).single().getText()).startsWith("Which boat");
        assertThat(find(Button.class).withTestId("example-couple").exists()).isTrue();
        assertThat(find(Button.class).withTestId("start").exists()).isTrue();
        assertThat(find(Article.class).exists()).isFalse();
    }

    @Test
    @SuppressWarnings("unchecked")
    void startsAShortlistInUsUnits() {
        open();
        test(find(TextField.class).withTestId("start-name").single()).setValue("Kayaks for two");
        RadioButtonGroup<UnitSystem> units =
                find(RadioButtonGroup.class).withTestId("start-units").single();
        test(units).selectItem("US: lb, ft");
        try {
            click("start");
        } catch (RuntimeException noSuchPageYet) {
            assertThat(noSuchPageYet).hasMessageContaining("list/");
        }

        ShortlistData data = editing.shortlists().getFirst().data();
        assertThat(data.name()).isEqualTo("Kayaks for two");
        assertThat(data.units()).isEqualTo(UnitSystem.US);
        assertThat(data.currency()).isEqualTo("USD");
    }

    @Test
    void asksForANameBeforeItStarts() {
        open();

        click("start");

        assertThat(find(TextField.class).withTestId("start-name").single().isInvalid())
                .isTrue();
        assertThat(editing.shortlists()).isEmpty();
    }

    @Test
    void showsACardWithBoatsLeaderAndLastChange() {
        Shortlist made = editing.create(ShortlistData.named("Ours"), "Ann");
        editing.add(made.id(), CandidateData.of("Green", BoatKind.SIT_ON_TOP), "Bob");
        open();

        assertThat(text(find(Article.class).single()))
                .contains("Ours", "1 boat: Green", "by Bob")
                .containsPattern("Changed [0-9]{4}-[0-9]{2}-[0-9]{2} [0-9]{2}:[0-9]{2}");
        assertThat(find(Paragraph.class).withTestId("leads").single().getText())
                .contains("Green is the only boat here");
    }

    @Test
    void saysThatAShortlistHasNoBoatsYet() {
        editing.create(ShortlistData.named("Ours"), "Ann");
        open();

        assertThat(find(Paragraph.class).withTestId("leads").single().getText()).startsWith("No boats yet");
    }

    @Test
    void renames() {
        editing.create(ShortlistData.named("Ours"), "Ann");
        open();
        click("rename");

        test(find(TextField.class).withTestId("new-name").single()).setValue("Theirs");

        assertThat(names()).containsExactly("Theirs");
        assertThat(text(find(Article.class).single())).contains("Theirs");
    }

    @Test
    void deletesAndCanUndo() {
        editing.create(ShortlistData.named("Ours"), "Ann");
        open();
        click("delete");
        assertThat(names()).isEmpty();

        test(find(Button.class).withText("Undo").single()).click();

        assertThat(names()).containsExactly("Ours");
        assertThat(find(Article.class).exists()).isTrue();
    }

    @Test
    void offersTheShortlistAsAFile() {
        editing.create(ShortlistData.named("Ours"), "Ann");
        open();

        assertThat(find(Anchor.class).withTestId("export").single().getHref()).contains("VAADIN/dynamic");
    }

    @Test
    void refusesABrokenFileWithEveryProblemAndChangesNothing() {
        open();

        upload(
                "{\n\"format\": \"keelweigh-shortlist\",\n\"formatVersion\": 1,\n\"shortlist\": {\"data\": {\"name\": 7}},\n\"people\": 3\n}");

        String told = text(find(Div.class).withTestId("import-result").single());
        assertThat(told)
                .contains("cannot be imported", "problems", "Line 4", "Line 5", "shortlist.data.name", "people");
        assertThat(editing.shortlists()).isEmpty();
    }

    @Test
    void importsWhatWasExported() {
        Shortlist made = editing.create(ShortlistData.named("Ours"), "Ann");
        editing.add(made.id(), CandidateData.of("Green", BoatKind.SIT_ON_TOP), "Ann");
        String exported = ShortlistExport.of(editing.facts(made.id()).orElseThrow(), boat -> VisitNotes.none());
        editing.delete(made.id(), "Ann");
        open();

        try {
            upload(exported);
        } catch (RuntimeException noSuchPageYet) {
            assertThat(noSuchPageYet).hasMessageContaining("list/");
        }

        assertThat(names()).containsExactly("Ours");
        assertThat(editing.facts(editing.shortlists().getFirst().id())
                        .orElseThrow()
                        .candidates()
                        .getFirst()
                        .data()
                        .name())
                .isEqualTo("Green");
    }

    private void upload(String content) {
        Upload upload = find(Upload.class).withTestId("import").single();
        UploadTester<Upload> tester = test(upload);
        tester.upload("ours.json", "application/json", content.getBytes(StandardCharsets.UTF_8));
        roundTrip();
    }

    @Test
    void remembersTheVisitorsName() {
        open();

        test(find(TextField.class).withTestId("visitor").single()).setValue("  Wren ");

        assertThat(Visitor.name()).isEqualTo("Wren");
        assertThat(Visitor.said()).hasValue("Wren");
    }
}
