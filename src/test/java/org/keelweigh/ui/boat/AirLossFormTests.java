package org.keelweigh.ui.boat;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.NumberField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Display;
import org.keelweigh.shortlist.UnitSystem;

class AirLossFormTests extends BoatPageTests {

    private AirLossForm form;

    @BeforeEach
    void openFacts() {
        open(BoatSection.FACTS);
    }

    private void show(UnitSystem units) {
        form = new AirLossForm(new Display(units, "USD"));
        UI.getCurrent().add(form);
    }

    private void type(double first, double warmth, double later, double laterWarmth) {
        double[] values = {first, warmth, later, laterWarmth};
        String[] ids = {"air-first", "air-first-warmth", "air-later", "air-later-warmth"};
        for (int i = 0; i < ids.length; i++) {
            test(find(NumberField.class, form).withTestId(ids[i]).single()).setValue(values[i]);
        }
    }

    private String told() {
        return find(Paragraph.class, form).withTestId("air-verdict").single().getText();
    }

    /** Worked by hand: (13.6 + 14.696)·297.15/287.15 − 14.696 = 14.585 psi, so (15 − 14.585)/15 = 2.8 %. */
    @Test
    void takesTheCoolingOutInEitherUnits() {
        show(UnitSystem.US);
        type(15, 75.2, 13.6, 57.2);
        assertThat(told()).contains("lost 2.8 %").contains("in a day: fine");

        show(UnitSystem.METRIC);
        type(1.0342, 24, 0.9377, 14);
        assertThat(told()).contains("lost 2.8 %").contains("in a day: fine");
        find(RadioButtonGroup.class, form).single().setValue("two hours");
        assertThat(told()).contains("in two hours: minor");
    }

    @Test
    void tellsOfAnEmptyBoardAndOfReadingsThatCannotBe() {
        show(UnitSystem.METRIC);
        type(1, 10, 0, 25);
        assertThat(told()).contains("lost 100.0 %").contains("stop");

        type(0, 10, 0.5, 25);
        assertThat(told()).contains("has to be above 0");
        type(1, 10, 0.5, 400);
        assertThat(told()).contains("−43 and 66 °C");
    }

    @Test
    void standsWithTheCheckThatNeedsIt() {
        boat = editing.add(list, CandidateData.of("Board", BoatKind.INFLATABLE_BOARD), "Dana")
                .id();
        open(BoatSection.INSPECTION);
        tap("more-inf-hold");
        tap("more-inf-valve");

        assertThat(find(AirLossForm.class).all()).hasSize(1);
    }
}
