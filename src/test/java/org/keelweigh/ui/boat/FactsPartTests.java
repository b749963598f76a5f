package org.keelweigh.ui.boat;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.boat.SeatFacts;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.FieldPath;

class FactsPartTests extends BoatPageTests {

    @BeforeEach
    void openFacts() {
        open(BoatSection.FACTS);
    }

    @Test
    void showsTheAssumptionUntilSomebodyCorrectsIt() {
        TextField length = byId(TextField.class, "field-boat.lengthM");
        assertThat(length.getHelperText()).startsWith("Assumed: ").contains(" m, usual for a pedal-drive kayak");

        type("boat.lengthM", "3.66 m");

        assertThat(kept().boat().lengthM()).isEqualTo(3.66);
        assertThat(length.getHelperText()).isEmpty();
    }

    @Test
    void showsTheAssumptionAgainWhenAValueIsTakenBack() {
        type("boat.lengthM", "3.66");
        TextField length = type("boat.lengthM", "");

        assertThat(kept().boat().lengthM()).isNull();
        assertThat(length.getHelperText()).startsWith("Assumed: ");
    }

    @ParameterizedTest
    @CsvSource({
        "listing.askingPrice, -1, too little",
        "boat.lengthM, 40, too much",
        "boat.lengthM, 144, If you meant 144 inches",
        "boat.bareMassKg, about twenty, not a quantity that can be read",
        "boat.modelYear, 2050, lies in the future",
        "boat.modelYear, 2019.5, whole number"
    })
    void refusesTheImpossibleWithASentence(String field, String typed, String sentence) {
        TextField input = type(field, typed);

        assertRefused(input, sentence);
        assertThat(facts().candidate(boat).orElseThrow().version()).isZero();
    }

    @Test
    void keepsAVeryLightBoatButAsksAboutIt() {
        TextField mass = type("boat.bareMassKg", "4");

        assertThat(kept().boat().bareMassKg()).isEqualTo(4);
        assertThat(mass.getHelperText()).startsWith("Look again: 4.0 kg is not very heavy");
    }

    @Test
    void keepsWhatWasRefusedInItsFieldWhenAnotherFieldIsSaved() {
        TextField price = type("listing.askingPrice", "-1");
        type("boat.lengthM", "3.6");

        assertThat(price.getValue()).isEqualTo("-1");
        assertThat(price.isInvalid()).isTrue();
    }

    @Test
    void offersTheUsualMaterialsOfAKindFirst() {
        @SuppressWarnings("unchecked")
        Select<HullMaterial> material = byId(Select.class, "field-boat.material");
        @SuppressWarnings("unchecked")
        Select<BoatKind> kind = byId(Select.class, "field-boat.kind");
        test(kind).selectItem("Inflatable paddleboard");

        assertThat(kept().boat().kind()).isEqualTo(BoatKind.INFLATABLE_BOARD);
        assertThat(material.getListDataView().getItems().findFirst()).contains(HullMaterial.DROP_STITCH);
        assertThat(material.getHelperText()).contains("Assumed: drop-stitch fabric");
    }

    @Test
    void readsALengthInFeetWithoutLoss() {
        TextField length = type("boat.lengthM", "12 ft");

        assertThat(kept().boat().lengthM()).isEqualTo(12 * 0.3048);
        assertThat(length.getValue()).isEqualTo("3.6576");
    }

    @Test
    void takesNothingFromAListingWithoutAYes() {
        test(byId(TextArea.class, "paste-text"))
                .setValue("Pedal kayak, 12 ft long, asking $950. Two paddles included.");
        tap("paste-read");

        assertThat(words("proposal-length_m")).contains("Length 3.66 m").contains("12 ft");
        assertThat(kept().boat().lengthM()).isNull();

        press("proposal-length_m", "Take it");
        press("proposal-asking_price", "Leave it");

        assertThat(kept().boat().lengthM()).isEqualTo(12 * 0.3048);
        assertThat(kept().listing().askingPrice()).isNull();
        assertThat(words("proposal-length_m")).contains("Taken.");
        assertThat(byId(TextField.class, "field-boat.lengthM").getValue()).isEqualTo("3.6576");
    }

    @Test
    void tellsAClashOfTwoEditorsAndKeepsWhatWasTyped() {
        Candidate seen = facts().candidate(boat).orElseThrow();
        editing.save(
                new Candidate(boat, list, seen.version(), new FieldPath("boat.lengthM").with(seen.data(), 3.2)),
                "Robin");

        type("boat.lengthM", "3.66");

        assertThat(noted()).contains("Robin changed the same field (length)", "it is 3.20 m now, and yours is 3.66 m.");
        assertThat(kept().boat().lengthM()).isEqualTo(3.2);

        test($(Button.class).withText("Use mine").single()).click();

        assertThat(kept().boat().lengthM()).isEqualTo(3.66);
    }

    @Test
    void keepsTheSeatsWithTheirPlaces() {
        test(byId(TextField.class, "seat-width-0")).setValue("48 cm");

        assertThat(kept().boat().seats()).containsExactly(new SeatFacts(null, 0.48));
        assertThat(byId(TextField.class, "seat-station-0").getHelperText()).startsWith("Assumed: ");
    }

    @Test
    void countsWhatComesWithTheBoat() {
        Checkbox vest = byId(Checkbox.class, "gear-vest");
        test(vest).click();
        assertThat(kept().listing().included()).containsEntry("vest", 1);

        test(vest).click();
        assertThat(kept().listing().included()).isEmpty();
    }

    @Test
    void keepsBothEditsWhenTheyAreAboutDifferentFields() {
        Candidate seen = facts().candidate(boat).orElseThrow();
        editing.save(
                new Candidate(boat, list, seen.version(), new FieldPath("boat.beamM").with(seen.data(), 0.9)), "Robin");

        type("boat.lengthM", "3.66");

        assertThat(noted()).contains("Both edits are kept");
        assertThat(kept().boat().lengthM()).isEqualTo(3.66);
        assertThat(kept().boat().beamM()).isEqualTo(0.9);
    }

    private String noted() {
        Notification note = $(Notification.class).last();
        return words(note) + note.getElement().getProperty("text", "");
    }

    private void press(String proposal, String button) {
        NativeButton found = all(byId(Component.class, proposal))
                .filter(NativeButton.class::isInstance)
                .map(NativeButton.class::cast)
                .filter(each -> each.getText().equals(button))
                .findFirst()
                .orElseThrow();
        test(found).click();
    }
}
