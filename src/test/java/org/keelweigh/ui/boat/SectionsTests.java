package org.keelweigh.ui.boat;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.textfield.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.ui.chart.CartDrawing;
import org.keelweigh.ui.chart.CostFan;
import org.keelweigh.ui.shell.Places;

class SectionsTests extends BoatPageTests {

    @ParameterizedTest
    @EnumSource(BoatSection.class)
    void showsEverySectionForEveryKindOfBoat(BoatSection section) {
        for (BoatKind kind : BoatKind.values()) {
            list = editing.create(ShortlistData.named("Spring"), "Dana").id();
            boat = editing.add(list, CandidateData.of("A " + kind.label(), kind), "Dana")
                    .id();
            open(section);

            assertThat(words("section-" + section.code())).isNotBlank().doesNotContain("NaN", "Infinity", "∞", "null");
            assertThat(all(UI.getCurrent()).filter(H1.class::isInstance)).hasSize(1);
            assertThat(current()).isEqualTo(section.label());
        }
    }

    @Test
    void saysSoWhenTheBoatIsUnknown() {
        UI.getCurrent().navigate(Places.boat(list, CandidateId.fresh(), "facts"));

        assertThat(words(one(BoatView.class))).contains("There is no such boat on this shortlist");
    }

    @Test
    void leadsToTheNeighboursInTheSameSection() {
        CandidateId next = editing.add(list, CandidateData.of("Red boat", BoatKind.CANOE), "Dana")
                .id();
        open(BoatSection.COSTS);

        assertThat(all(UI.getCurrent())
                        .filter(Anchor.class::isInstance)
                        .map(Anchor.class::cast)
                        .map(Anchor::getHref))
                .contains(Places.boat(list, next, "costs"));
    }

    @Test
    void renamesTheBoatButRefusesNoName() {
        open(BoatSection.FACTS);
        tap("boat-rename");
        TextField name = byId(TextField.class, "boat-name");
        test(name).setValue(" ");
        assertRefused(name, "A name is needed.");

        test(name).setValue("Blue boat");

        assertThat(kept().name()).isEqualTo("Blue boat");
        assertThat(all(UI.getCurrent()).filter(H1.class::isInstance).map(each -> ((H1) each).getText()))
                .containsExactly("Blue boat");
    }

    @Test
    void removesTheBoatAndTakesThatBack() {
        open(BoatSection.FACTS);
        tap("boat-remove");
        assertThat(facts().candidates()).isEmpty();

        com.vaadin.flow.component.button.Button undo = $(com.vaadin.flow.component.button.Button.class)
                .withText("Undo")
                .single();
        test(undo).click();

        assertThat(facts().candidates()).hasSize(1);
    }

    @Test
    void liftsARulingOnlyForAWrittenReason() {
        keep(kept().withFinding(Finding.of("hin-read", Outcome.STOP)));
        open(BoatSection.FACTS);
        assertThat(words("boat-place")).contains("ruled out");
        assertThat(words("boat-rulings")).contains("What would lift it");

        tap("lift-identity");
        assertThat(kept().liftedRulings()).isEmpty();

        test(byId(TextField.class, "lift-reason-identity")).setValue("The office wrote that it replaced the number.");
        tap("lift-identity");

        assertThat(kept().liftedRulings()).containsKey("identity");
        assertThat(words("boat-rulings")).contains("Lifted because: The office wrote");
    }

    @Test
    void tellsTheCostLineByLineWithItsReasons() {
        open(BoatSection.COSTS);

        assertThat(words("section-costs")).contains("Buying it", "Making it ready", "Using it", "Selling it again");
        assertThat(words("cost-summary")).contains("in 8 of 10 futures");
        assertThat(words("cost-figures")).contains("Before the first launch", "An outing");
        CostFan fan = one(CostFan.class);
        assertThat(fan.getData().orElseThrow().boats()).hasSize(1);
        assertThat(fan.getData().orElseThrow().boats().getFirst().years()).hasSize(6);
    }

    @Test
    void drawsTheBoatOnItsCartAndKeepsTheCautions() {
        open(BoatSection.HAUL);

        assertThat(one(CartDrawing.class).getData().orElseThrow().scenes()).hasSize(1);
        assertThat(words("haul-verdict")).contains("Takes: ").contains("Test with a light load first.");
        assertThat(words("section-haul")).contains("lifting index", "rating needed", "Where to set the axle");
    }

    @Test
    void drawsNoCartForABoatInItsBag() {
        boat = editing.add(list, CandidateData.of("Roll", BoatKind.INFLATABLE_BOARD), "Dana")
                .id();
        open(BoatSection.HAUL);

        assertThat(one(CartDrawing.class).getParent().orElseThrow().isVisible()).isFalse();
    }

    @Test
    void saysWhatIsNeededForFitThatIsNotKnown() {
        open(BoatSection.FIT);

        assertThat(words("section-fit")).contains("not known", "Needed: You: The width across the hips");
    }

    private void keep(CandidateData data) {
        Candidate now = facts().candidate(boat).orElseThrow();
        editing.save(new Candidate(boat, list, now.version(), data), "Dana");
    }

    private <C extends Component> C one(Class<C> type) {
        return all(UI.getCurrent())
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst()
                .orElseThrow();
    }

    private static String current() {
        return all(UI.getCurrent())
                .filter(Anchor.class::isInstance)
                .filter(each -> "page".equals(each.getElement().getAttribute("aria-current")))
                .map(each -> ((Anchor) each).getText())
                .findFirst()
                .orElse("");
    }
}
