package org.keelweigh.ui.compare;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.chart.ValueBars;
import org.keelweigh.ui.chart.ValueBarsData;
import org.keelweigh.ui.shell.Places;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:compare")
class CompareViewTests extends SpringBrowserlessTest {

    @Autowired
    ShortlistEditing editing;

    private ShortlistId list;

    @BeforeEach
    void beginAList() {
        list = editing.create(ShortlistData.named("Two boats"), "Test").id();
    }

    private Candidate add(CandidateData data) {
        return editing.add(list, data, "Test");
    }

    private CompareView open() {
        return navigate(CompareView.class, Map.of(Places.SHORTLIST, list.toString()));
    }

    private Facts facts() {
        return editing.facts(list).orElseThrow();
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    private String headline() {
        return text($(AnswerStrip.class).single());
    }

    private ValueBarsData bars() {
        return $(ValueBars.class).single().getData().orElseThrow();
    }

    private <T extends Component> T byTestId(Class<T> type, String id) {
        return $(type).all().stream()
                .filter(each -> id.equals(each.getTestId()))
                .findFirst()
                .orElseThrow();
    }

    private Optional<TextField> reasonField() {
        return $(TextField.class).all().stream()
                .filter(each -> String.valueOf(each.getTestId()).startsWith("reason-"))
                .findFirst();
    }

    private void giveAllPointsTo(String criterion) {
        $(IntegerField.class).all().forEach(each -> test(each)
                .setValue(("points-" + criterion).equals(each.getTestId()) ? 100 : 0));
    }

    @Test
    void saysWhichBoatLeadsAndWhy() {
        add(Boats.priced("Dear", BoatKind.SIT_ON_TOP, 1900));
        add(Boats.priced("Bargain", BoatKind.SIT_ON_TOP, 300));

        open();

        assertThat(headline()).contains("Bargain leads").contains("5-year cost").contains("It comes first in");
        assertThat(text($(SureSection.class).single()))
                .contains("How sure it is")
                .contains("weighings");
        assertThat(bars().bars().getFirst().name()).isEqualTo("Bargain");
    }

    @Test
    void followsAMovedWeightAndSavesIt() {
        add(Boats.cheap());
        add(Boats.dear());
        open();

        giveAllPointsTo("cost");
        String byCost = bars().bars().getFirst().name();
        giveAllPointsTo("lift");
        String byLift = bars().bars().getFirst().name();

        assertThat(byCost).isNotEqualTo(byLift);
        assertThat(headline()).contains(byLift + " leads");
        assertThat(facts().people().getFirst().data().weights())
                .containsEntry("lift", 100.0)
                .containsEntry("cost", 0.0);
    }

    @Test
    void triesWeightsOutWhenSeveralDecideAndSavesNothing() {
        editing.add(list, Boats.person("Ann", "light-paddler"), "Test");
        editing.add(list, Boats.person("Ben", "angler"), "Test");
        add(Boats.cheap());
        add(Boats.dear());
        open();

        giveAllPointsTo("lift");

        assertThat(text($(MattersSection.class).single())).contains("A trial");
        assertThat(facts().people())
                .allSatisfy(each -> assertThat(each.data().weights()).isEmpty());
        test(byTestId(Button.class, "back-to-saved")).click();
        assertThat(text($(MattersSection.class).single())).contains("The mean of what each of you said");
        assertThat(text($(TogetherSection.class).single()))
                .contains("Ann would choose")
                .contains("Least regret");
    }

    @Test
    void keepsARuledOutBoatLastUntilSomebodyLiftsItWithAReason() {
        Candidate ruined =
                add(Boats.priced("Ruined", BoatKind.SIT_ON_TOP, 10).withFinding(Finding.of("hin-read", Outcome.STOP)));
        add(Boats.priced("Sound", BoatKind.SIT_ON_TOP, 1500));
        open();
        assertThat(bars().bars().getLast().name()).isEqualTo("Ruined");
        assertThat(bars().bars().getLast().ruledOut()).isNotBlank();
        assertThat(text($(RulingsSection.class).single())).contains("What would lift it");

        for (Optional<TextField> reason = reasonField(); reason.isPresent(); reason = reasonField()) {
            test(reason.get()).setValue("The registry has told us the number.");
            test(byTestId(Button.class, reason.get().getTestId().replace("reason-", "lift-")))
                    .click();
        }

        assertThat(facts().candidate(ruined.id()).orElseThrow().data().liftedRulings())
                .containsValue("The registry has told us the number.");
        assertThat(bars().bars()).allSatisfy(each -> assertThat(each.ruledOut()).isNull());
        assertThat(bars().bars().getFirst().name()).isEqualTo("Ruined");
    }

    @Test
    void asksForAReasonBeforeItLiftsARuling() {
        Candidate ruined =
                add(Boats.priced("Ruined", BoatKind.SIT_ON_TOP, 10).withFinding(Finding.of("hin-read", Outcome.STOP)));
        add(Boats.dear());
        open();

        Button lift = $(Button.class).all().stream()
                .filter(each -> String.valueOf(each.getTestId()).startsWith("lift-"))
                .findFirst()
                .orElseThrow();
        test(lift).click();

        assertThat(facts().candidate(ruined.id()).orElseThrow().data().liftedRulings())
                .isEmpty();
        assertThat($(TextField.class).all()).anyMatch(TextField::isInvalid);
    }

    @Test
    void tellsBestAndWorstInWordsInTheTable() {
        add(Boats.cheap());
        add(Boats.dear());

        open();

        NativeTable table = $(NativeTable.class).withId("side-by-side").single();
        assertThat(text(table)).contains("best").contains("worst").contains("Lifting it on the car");
    }

    @Test
    void tellsAtWhichPriceBoatsTie() {
        add(Boats.cheap());
        add(Boats.dear());

        open();

        assertThat(text($(UnorderedList.class).withId("price-ties").single()))
                .contains("Cormorant")
                .contains("Teal");
        assertThat(text($(UnorderedList.class).withId("rivals").single())).contains("would come first if");
    }

    @Test
    void teachesHowToBeginAndAddsABoat() {
        open();
        assertThat($(H2.class).all().stream().map(CompareViewTests::text)).contains("Put your first boat on the list");

        test(byTestId(Button.class, "add-boat")).click();
        assertThat(byTestId(TextField.class, "boat-name").isInvalid()).isTrue();
        assertThat(facts().candidates()).isEmpty();
    }

    @Test
    void removesABoatAndBringsItBack() {
        Candidate cheap = add(Boats.cheap());
        add(Boats.dear());
        add(Boats.priced("Third", BoatKind.CANOE, 500));
        open();

        test(byTestId(Button.class, "remove-" + cheap.id())).click();
        assertThat(facts().candidates()).hasSize(2);

        test($(Button.class).all().stream()
                        .filter(each -> "Undo".equals(each.getText()))
                        .findFirst()
                        .orElseThrow())
                .click();
        assertThat(facts().candidates()).hasSize(3);
    }
}
