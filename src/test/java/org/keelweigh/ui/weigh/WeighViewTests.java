package org.keelweigh.ui.weigh;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.BrowserlessApplicationContext;
import com.vaadin.browserless.BrowserlessUIContext;
import com.vaadin.browserless.BrowserlessUserContext;
import com.vaadin.browserless.SpringBrowserlessApplicationContext;
import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.select.SelectTester;
import com.vaadin.flow.component.slider.IntegerSlider;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.NumberFieldTester;
import com.vaadin.flow.component.textfield.TextField;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.PersonId;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.shell.Places;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ApplicationContext;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:weigh-view")
class WeighViewTests extends SpringBrowserlessTest {

    @Autowired
    ShortlistEditing editing;

    @Autowired
    ApplicationContext context;

    private ShortlistId id;

    @BeforeEach
    void beginsAShortlist() {
        id = editing.create(ShortlistData.named("Ours"), "Test").id();
    }

    private void twoBoats() {
        for (double price : new double[] {500, 1900}) {
            editing.add(
                    id,
                    CandidateData.of("Boat at " + (int) price, BoatKind.SIT_ON_TOP)
                            .withListing(new ListingFacts(price, null, null, null, new TreeMap<>(), new TreeMap<>())),
                    "Test");
        }
    }

    private PersonId person(String name) {
        return editing.add(id, PersonData.named(name), "Test").id();
    }

    private PersonData data(PersonId person) {
        Facts facts = editing.facts(id).orElseThrow();
        return facts.person(person).orElseThrow().data();
    }

    private void open() {
        navigate(Places.weigh(id), WeighView.class);
    }

    private void click(String testId) {
        test(find(Button.class).withTestId(testId).single()).click();
    }

    @SuppressWarnings("unchecked")
    private void iAm(String name) {
        Select<Object> who = find(Select.class).withTestId("i-am").single();
        test(who).selectItem(name);
    }

    private void slide(String criterion, int points) {
        IntegerField field =
                find(IntegerField.class).withTestId("points-" + criterion).single();
        test(field).setValue(points);
    }

    @Test
    void letsSomebodyBeginWhereNobodyIsNamed() {
        open();
        test(find(TextField.class).withTestId("first-decider").single()).setValue("Wren");
        click("begin");

        assertThat(editing.facts(id).orElseThrow().people().getFirst().data().name())
                .isEqualTo("Wren");
        assertThat(find(IntegerSlider.class).withTestId("slider-cost").exists()).isTrue();
        assertThat(find(Button.class).withTestId("done").exists()).isFalse();
    }

    @Test
    void showsTheMostImportantStepOfASetAsHundred() {
        person("Wren");
        open();

        assertThat(find(IntegerSlider.class).withTestId("slider-cost").single().getValue())
                .isEqualTo(100);
        assertThat(find(IntegerSlider.class)
                        .withTestId("slider-walk-risk")
                        .single()
                        .getValue())
                .isEqualTo(32);
    }

    @Test
    void keepsWhatWasSlid() {
        PersonId wren = person("Wren");
        open();

        slide("haul", 70);

        assertThat(data(wren).weights())
                .containsEntry("haul", 70.0)
                .containsEntry("cost", 100.0)
                .hasSize(14);
        assertThat(find(IntegerSlider.class).withTestId("slider-haul").single().getValue())
                .isEqualTo(70);
    }

    @Test
    void remindsThatTheMostImportantStepHasHundred() {
        PersonId wren = person("Wren");
        open();
        slide("cost", 30);

        click("make-100");

        assertThat(data(wren).weights().values().stream()
                        .mapToDouble(Double::doubleValue)
                        .max())
                .hasValue(100);
    }

    @Test
    @SuppressWarnings("unchecked")
    void startsFromASetAndCanUndo() {
        PersonId wren = person("Wren");
        open();
        slide("haul", 70);
        Select<Object> sets = find(Select.class).withTestId("weight-set").single();

        test(sets).selectItem("Angler");
        assertThat(data(wren).weightSet()).isEqualTo("angler");
        assertThat(data(wren).weights()).isEmpty();

        test(find(Button.class).withText("Undo").single()).click();
        assertThat(data(wren).weights()).containsEntry("haul", 70.0);
    }

    @Test
    void turnsAnOrderIntoPoints() {
        PersonId wren = person("Wren");
        open();
        click("up-repair-risk");

        click("use-order");

        assertThat(data(wren).weights()).containsEntry("repair-risk", 100.0);
        assertThat(data(wren).weights().get("cost")).isBetween(60.0, 75.0);
    }

    @Test
    void warnsWhereTheBoatsAreTooAlike() {
        person("Wren");
        twoBoats();
        open();

        assertThat(warning("room").getText()).contains("do not differ here");
        assertThat(warning("cost").isVisible()).isFalse();
    }

    @Test
    void warnsInTheReadersUnitsOfAStepThatIsSmallOnItsScale() {
        person("Wren");
        for (double lengthM : new double[] {3.2, 3.5}) {
            CandidateData boat = CandidateData.of("Boat of " + lengthM, BoatKind.SIT_ON_TOP);
            editing.add(id, new FieldPath("boat.lengthM").with(boat, lengthM), "Test");
        }
        open();

        assertThat(warning("speed").getText())
                .matches("These boats differ by 0\\.\\d km/h of a scale of 4\\.0 km/h\\. .* hardly matters here\\.");
    }

    private Paragraph warning(String criterion) {
        return find(Paragraph.class)
                .withCondition(each ->
                        ("warning-" + criterion).equals(each.getElement().getAttribute("data-testid")))
                .all()
                .stream()
                .findFirst()
                .orElseGet(() -> {
                    Paragraph hidden = new Paragraph();
                    hidden.setVisible(false);
                    return hidden;
                });
    }

    @Test
    void hidesWhatOthersSaidUntilAllAreDone() {
        PersonId ann = person("Ann");
        PersonId bob = person("Bob");
        twoBoats();
        open();
        assertThat(find(IntegerSlider.class).exists()).isFalse();

        iAm("Ann");
        slide("haul", 83);
        click("done");
        assertThat(find(Paragraph.class).withTestId("waiting").single().getText())
                .contains("Bob");
        assertThat(find(IntegerSlider.class).exists()).isFalse();

        iAm("Bob");
        assertThat(find(IntegerSlider.class).withTestId("slider-haul").single().getValue())
                .isNotEqualTo(83);
        assertThat(find(Section.class).withTestId("revealed").exists()).isFalse();

        click("done");
        assertThat(data(ann).weighed()).isTrue();
        assertThat(data(bob).weighed()).isTrue();
        assertThat(find(Section.class).withTestId("revealed").exists()).isTrue();
        assertThat(find(IntegerSlider.class).exists()).isFalse();

        click("weigh-again");
        assertThat(find(Section.class).withTestId("revealed").exists()).isFalse();
        assertThat(data(bob).weighed()).isFalse();
        assertThat(data(ann).weighed()).isTrue();
    }

    @Test
    void keepsTwoPeopleAtTwoBrowsersBlindToEachOther() {
        person("Ann");
        person("Bob");
        twoBoats();
        try (BrowserlessApplicationContext app = SpringBrowserlessApplicationContext.create(context, WeighView.class);
                BrowserlessUserContext ann = app.newUser();
                BrowserlessUserContext bob = app.newUser()) {
            BrowserlessUIContext annsWindow = ann.newWindow();
            BrowserlessUIContext bobsWindow = bob.newWindow();

            weigh(annsWindow, "Ann", 83);
            weigh(bobsWindow, "Bob", 21);

            bobsWindow.activate();
            assertThat(bobsWindow.find(Section.class).withTestId("revealed").exists())
                    .isTrue();
            annsWindow.activate();
            annsWindow.roundTrip();
            assertThat(annsWindow.find(Section.class).withTestId("revealed").exists())
                    .isTrue();
        }
    }

    @SuppressWarnings("unchecked")
    private void weigh(BrowserlessUIContext window, String name, int points) {
        window.activate();
        window.navigate(Places.weigh(id), WeighView.class);
        Select<Object> who = window.find(Select.class).withTestId("i-am").single();
        window.test(SelectTester.class, who).selectItem(name);
        IntegerField haul =
                window.find(IntegerField.class).withTestId("points-haul").single();
        assertThat(haul.getValue()).isEqualTo(20);
        window.test(NumberFieldTester.class, haul).setValue(points);
        window.test(window.find(Button.class).withTestId("done").single()).click();
    }
}
