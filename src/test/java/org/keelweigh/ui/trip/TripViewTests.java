package org.keelweigh.ui.trip;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.ListingFacts;
import org.keelweigh.fit.Waters;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.PersonData;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.shortlist.UnitSystem;
import org.keelweigh.ui.chart.Tornado;
import org.keelweigh.ui.chart.TornadoData;
import org.keelweigh.ui.format.QuantityField;
import org.keelweigh.ui.shell.AtOnce;
import org.keelweigh.ui.shell.Places;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:trip-view")
@Import(AtOnce.class)
class TripViewTests extends SpringBrowserlessTest {

    @Autowired
    ShortlistEditing editing;

    private ShortlistId id;

    @BeforeEach
    void opensAnEmptyShortlist() {
        id = editing.create(ShortlistData.named("Ours"), "Test").id();
        open();
    }

    private void open() {
        navigate(Places.trip(id), TripView.class);
    }

    private Facts facts() {
        return editing.facts(id).orElseThrow();
    }

    private QuantityField quantity(String path) {
        return find(QuantityField.class).withTestId(path).single();
    }

    private void click(String testId) {
        test(find(Button.class).withTestId(testId).single()).click();
    }

    private static String text(Component component) {
        String own = component instanceof Text text
                ? text.getText()
                : component.getElement().getText();
        return own + " " + component.getChildren().map(TripViewTests::text).collect(Collectors.joining(" "));
    }

    @Test
    void showsWhatIsAssumedWhereItCanBeCorrected() {
        assertThat(find(H1.class).single().getText()).isEqualTo("Trip and people");
        assertThat(quantity("trip.outingsPerYear").getHelperText()).isEqualTo("Assumed: 15 outings a year.");

        test(quantity("trip.outingsPerYear")).setValue("22");

        assertThat(facts().shortlist().data().trip().outingsPerYear()).isEqualTo(22.0);
        assertThat(quantity("trip.outingsPerYear").getHelperText()).isEmpty();
    }

    @Test
    void forgetsAFigureThatIsCleared() {
        test(quantity("trip.outingsPerYear")).setValue("22");

        test(quantity("trip.outingsPerYear")).setValue("");

        assertThat(facts().shortlist().data().trip().outingsPerYear()).isNull();
        assertThat(quantity("trip.outingsPerYear").getHelperText()).startsWith("Assumed");
    }

    @Test
    void refusesTheImpossibleAndKeepsWhatWas() {
        test(quantity("trip.outingsPerYear")).setValue("22");

        test(quantity("trip.outingsPerYear")).setValue("5000");

        assertThat(quantity("trip.outingsPerYear").isInvalid()).isTrue();
        assertThat(quantity("trip.outingsPerYear").getErrorMessage()).contains("between", "366");
        assertThat(facts().shortlist().data().trip().outingsPerYear()).isEqualTo(22.0);
    }

    @Test
    @SuppressWarnings("unchecked")
    void switchesUnitsWithoutLosingADigit() {
        test(quantity("trip.gearMassKg")).setValue("12.3");
        test(quantity("trip.car.lengthM")).setValue("4.317");
        ShortlistData before = facts().shortlist().data();

        RadioButtonGroup<UnitSystem> units =
                find(RadioButtonGroup.class).withTestId("units").single();
        test(units).selectItem("US: lb, ft, in, mi");

        assertThat(quantity("trip.gearMassKg").getValue()).isEqualTo("27.11686");
        assertThat(facts().shortlist().data()).isEqualTo(before.withUnits(UnitSystem.US));

        units = find(RadioButtonGroup.class).withTestId("units").single();
        test(units).selectItem("Metric: kg, m, cm, km");

        assertThat(facts().shortlist().data()).isEqualTo(before);
        assertThat(quantity("trip.gearMassKg").getValue()).isEqualTo("12.3");
        assertThat(quantity("trip.car.lengthM").getValue()).isEqualTo("4.317");
    }

    @Test
    @SuppressWarnings("unchecked")
    void keepsTheWater() {
        Select<String> water = find(Select.class).withTestId("trip.mainWater").single();

        test(water).selectItem(Waters.LAKE_CHOP.label());

        assertThat(facts().shortlist().data().trip().mainWater()).isEqualTo(Waters.LAKE_CHOP);
    }

    @Test
    void addsAndRemovesAStretchAndCanUndo() {
        click("add-stretch");
        test(quantity("trip.launches[0].distanceM")).setValue("80");
        assertThat(facts().shortlist().data().trip().launches())
                .singleElement()
                .satisfies(each -> assertThat(each.distanceM()).isEqualTo(80.0));

        click("remove-stretch-0");
        assertThat(facts().shortlist().data().trip().launches()).isEmpty();

        test(find(Button.class).withText("Undo").single()).click();
        assertThat(facts().shortlist().data().trip().launches()).hasSize(1);
        assertThat(quantity("trip.launches[0].distanceM").getValue()).isEqualTo("80");
    }

    @Test
    void addsAndRemovesAPersonAndCanUndo() {
        click("add-person");
        test(find(TextField.class).withTestId("name").single()).setValue("Wren");
        test(quantity("massKg")).setValue("84");
        assertThat(facts().people().getFirst().data())
                .isEqualTo(new FieldPath("massKg").with(PersonData.named("Wren"), 84.0));

        click("remove-person");
        assertThat(facts().people()).isEmpty();

        test(find(Button.class).withText("Undo").single()).click();
        assertThat(facts().people()).hasSize(1);
    }

    @Test
    void tellsHowToTestALiftSafely() {
        click("add-person");

        assertThat(text((Component) getCurrentView())).contains("How to test a lift", "water can", "If it hurts, stop");
    }

    @Test
    void keepsAPersonsNameWhenItIsEmptied() {
        click("add-person");

        test(find(TextField.class).withTestId("name").single()).setValue(" ");

        assertThat(find(TextField.class).withTestId("name").single().isInvalid())
                .isTrue();
        assertThat(facts().people().getFirst().data().name()).isEqualTo("Person 1");
    }

    @Test
    void showsWhatSomebodyElseTypedMeanwhile() {
        Shortlist now = facts().shortlist();
        editing.save(
                new Shortlist(now.id(), now.version(), new FieldPath("trip.outingsPerYear").with(now.data(), 40.0)),
                "Ann");
        roundTrip();

        assertThat(quantity("trip.outingsPerYear").getValue()).isEqualTo("40");
    }

    @Test
    void namesTheChoiceThatWouldChangeTheLeader() {
        editing.add(id, priced("Green", 500), "Test");
        editing.add(id, priced("Red", 501), "Test");
        open();

        click("unknowns");

        roundTrip();
        Div result = find(Div.class).withTestId("unknowns-result").single();
        assertThat(text(result))
                .contains(
                        "Green: drive (assumed paddle or oars only): would change the leader if it were “electric motor”.");
        assertThat(find(Tornado.class).single().getData().orElseThrow().bars())
                .extracting(TornadoData.Bar::flip)
                .anySatisfy(flip -> assertThat(flip).startsWith("at “"));
    }

    @Test
    void tellsWhichUnknownsMatter() {
        editing.add(id, priced("Green", 500), "Test");
        editing.add(id, priced("Red", 700), "Test");
        open();

        click("unknowns");

        roundTrip();
        Div result = find(Div.class).withTestId("unknowns-result").single();
        assertThat(text(result)).contains("Green leads Red by");
        assertThat(find(Tornado.class).single().getData().orElseThrow().bars()).isNotEmpty();
    }

    @Test
    void saysThatTwoBoatsAreNeededForThat() {
        click("unknowns");

        roundTrip();
        Div result = find(Div.class).withTestId("unknowns-result").single();
        assertThat(text(result)).contains("fewer than two boats");
    }

    private static CandidateData priced(String name, double price) {
        return CandidateData.of(name, BoatKind.SIT_ON_TOP)
                .withListing(new ListingFacts(price, null, null, null, new TreeMap<>(), new TreeMap<>()));
    }
}
