package org.keelweigh.ui.compare;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.keelweigh.ui.chart.BoatSelectedEvent;
import org.keelweigh.ui.chart.DifferenceBarData;
import org.keelweigh.ui.chart.ValueBars;
import org.keelweigh.ui.shell.Places;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

/** The ways to set all points at once on the compare page, and choosing a boat in a drawing. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:ways")
class WaysToWeighTests extends SpringBrowserlessTest {

    @Autowired
    ShortlistEditing editing;

    private ShortlistId list;
    private Candidate cheap;
    private Candidate dear;

    @BeforeEach
    void opensTwoBoats() {
        list = editing.create(ShortlistData.named("Two boats"), "Test").id();
        cheap = editing.add(list, Boats.cheap(), "Test");
        dear = editing.add(list, Boats.dear(), "Test");
        editing.add(list, Boats.person("Wren", "first-timer"), "Test");
        navigate(CompareView.class, Map.of(Places.SHORTLIST, list.toString()));
    }

    private <T extends Component> T byTestId(Class<T> type, String id) {
        return $(type).all().stream()
                .filter(each -> id.equals(each.getTestId()))
                .findFirst()
                .orElseThrow();
    }

    private void click(String testId) {
        test(byTestId(Button.class, testId)).click();
    }

    private void clickText(String text) {
        test($(Button.class).all().stream()
                        .filter(each -> text.equals(each.getText()))
                        .findFirst()
                        .orElseThrow())
                .click();
    }

    private SortedMap<String, Double> saved() {
        return editing.facts(list).orElseThrow().people().getFirst().data().weights();
    }

    private int points(String criterion) {
        return byTestId(IntegerField.class, "points-" + criterion).getValue();
    }

    private String headline() {
        return $(AnswerStrip.class).single().getElement().getTextRecursively();
    }

    private String leader() {
        return $(ValueBars.class)
                .single()
                .getData()
                .orElseThrow()
                .bars()
                .getFirst()
                .name();
    }

    private String paragraph(String id) {
        return $(Paragraph.class).withId(id).single().getText();
    }

    @Test
    void turnsAnOrderIntoPointsAndAnotherAnswer() {
        $(IntegerField.class).all().forEach(each -> test(each)
                .setValue("points-cost".equals(each.getTestId()) ? 100 : 0));
        assertThat(leader()).isEqualTo(cheap.data().name());
        click("put-in-order");
        for (String light : new String[] {"lift", "room"}) {
            while (byTestId(Button.class, "up-" + light).isEnabled()) {
                click("up-" + light);
            }
        }

        click("use-order");

        // Room went to the top last, so lifting is second: rank-order centroid of 14, c2 / c1 = (H14 − 1) / H14 =
        // 0.692.
        assertThat(points("room")).isEqualTo(100);
        assertThat(points("lift")).isEqualTo(69);
        assertThat(saved()).containsEntry("room", 100.0);
        assertThat(leader()).isEqualTo(dear.data().name());
        assertThat(headline()).contains(dear.data().name() + " leads");
    }

    @Test
    void leavesPointsAloneWhenAnOrderIsNotUsed() {
        int before = points("cost");
        click("put-in-order");
        click("up-haul");

        clickText("Leave it as it was");

        assertThat(points("cost")).isEqualTo(before);
        assertThat(saved()).isEmpty();
    }

    @Test
    @SuppressWarnings("unchecked")
    void startsFromASetOfWeightsAndTakesItBack() {
        int before = points("stability");

        test((Select<Object>) byTestId(Select.class, "weight-sets")).selectItem("Angler");

        // The angler's line of weight-sets.csv.
        assertThat(points("cost")).isEqualTo(16);
        assertThat(points("stability")).isEqualTo(14);
        assertThat(saved()).containsEntry("stability", 14.0);

        clickText("Undo");
        assertThat(points("stability")).isEqualTo(before);
    }

    @Test
    void followsAnswersAboutTwoAtATime() {
        click("compare-pairs");
        assertThat(byTestId(Paragraph.class, "pair-progress").getText()).isEqualTo("Question 1 of 13");
        for (int number = 1; number <= 13; number++) {
            click("pair-same");
        }

        click("pair-use");

        assertThat(points("cost")).isEqualTo(100);
        assertThat(points("wait")).isEqualTo(100);
        assertThat(saved()).hasSize(14).containsEntry("delight", 100.0);
        clickText("Undo");
        assertThat(points("delight")).isEqualTo(1);
    }

    @Test
    void explainsTheBoatThatIsChosenInADrawing() {
        CandidateData third = Boats.priced("Third", BoatKind.CANOE, 700);
        Candidate canoe = editing.add(list, third, "Test");
        navigate(CompareView.class, Map.of(Places.SHORTLIST, list.toString()));
        ValueBars bars = $(ValueBars.class).single();
        assertThat(paragraph("why")).doesNotContain("Third");
        String first = leader();

        ComponentUtil.fireEvent(
                bars, new BoatSelectedEvent(bars, true, canoe.id().toString()));

        assertThat(byTestId(Select.class, "why-one").getValue()).isEqualTo(canoe.id());
        assertThat(paragraph("why")).contains("Third").contains(first);
        DifferenceBarData drawn = $(WhySection.class).single().bar().getData().orElseThrow();
        assertThat(drawn.summary()).contains("Third", first, "ahead of");
    }

    @Test
    void doesNotTrustABoatThatADrawingMadeUp() {
        String before = paragraph("why");
        ValueBars bars = $(ValueBars.class).single();

        ComponentUtil.fireEvent(bars, new BoatSelectedEvent(bars, true, "no-such-boat"));

        assertThat(paragraph("why")).isEqualTo(before);
    }

    @Test
    void warnsBesideTheSliderWhereTheBoatsHardlyDiffer() {
        Paragraph warning = byTestId(Paragraph.class, "warning-spares");
        assertThat(warning.getText())
                .isEqualTo("These boats do not differ here: a weight on it tells none of them apart.");

        test(byTestId(IntegerField.class, "points-spares")).setValue(0);

        assertThat(warning.isVisible()).isFalse();
    }
}
